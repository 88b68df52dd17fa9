import { expect, test } from 'vitest';
import { carBook, km, type Line } from '../../test/car-book.ts';
import type { BookDraft } from '../log/index.ts';
import { judgeSaid } from './judge-said.ts';
import type { SaidLine } from './result.ts';
import { limitsText } from './said-of.ts';

type Item = BookDraft['items'][number];
const oil: Item = {
  id: 'oil',
  name: 'Engine oil',
  limits: [{ measure: 'km', value: 10_000, unit: 'km' }],
};
const with20k: Item = { ...oil, limits: [{ measure: 'km', value: 20_000, unit: 'km' }] };

const reading = (on: string, value: number): Line => ({
  kind: 'odometer',
  on,
  odometer: km(value),
});
const service = (on: string, value?: number): Line => ({
  kind: 'service',
  on,
  items: ['oil'],
  ...(value !== undefined && { odometer: km(value) }),
});
// 100 km a day for 150 days from 1 January: 10,000 km are full on 11 April, the hundredth day
const hundredADay = [service('2026-01-01', 20_000), reading('2026-05-31', 35_000)];

function judged(
  lines: Line[],
  said: Partial<SaidLine>,
  item: Item = oil,
  more: Parameters<typeof carBook>[1] = {},
) {
  const book = carBook(lines, { items: [item], ...more });
  const [own] = book.items;
  const line: SaidLine = {
    car: 'car',
    item: item.id,
    saidOn: '2026-02-01',
    since: '2026-01-01',
    early: '2026-04-01',
    likely: '2026-04-15',
    late: '2026-05-01',
    binding: 'km',
    limits: own === undefined ? '' : limitsText(own),
    engineVersion: 3,
    afterwards: false,
    ...said,
  };
  const [found] = judgeSaid(book, [line]);
  if (found === undefined) throw new Error('nothing was judged');
  const { said: _, ...verdict } = found;
  return verdict;
}

test('judgeSaid() finds the day a limit was reached, and whether it lies inside of what was said', () => {
  expect(judged(hundredADay, {})).toEqual({
    outcome: 'inside',
    reachedOn: '2026-04-11',
    doneOn: null,
    knownUntil: '2026-05-31',
    daysOff: -4,
    daysOutside: 0,
    atLeast: false,
  });
});

test.each([
  ['its early day', { early: '2026-04-11' }, 'inside', 0],
  ['a day before the early one', { early: '2026-04-12' }, 'earlier', 1],
  ['its late day', { likely: '2026-04-05', late: '2026-04-11' }, 'inside', 0],
  ['a day after the late one', { likely: '2026-04-05', late: '2026-04-10' }, 'later', 1],
  ['any day, where no late one lay within three years', { late: null }, 'inside', 0],
] as const)('judgeSaid() judges a limit reached on %s', (_, said, outcome, daysOutside) => {
  expect(judged(hundredADay, said)).toMatchObject({ outcome, daysOutside, atLeast: false });
});

test('judgeSaid() takes "perhaps due already" at its word', () => {
  // said on 15 April, when only readings up to March were there: due by now, or at the latest by May
  const said = { saidOn: '2026-04-15', early: '2026-04-15', likely: '2026-04-15' };
  expect(judged(hundredADay, said)).toMatchObject({ outcome: 'inside', daysOff: -4 });
});

test('judgeSaid() counts what lasted longer as a miss, by at least as many days as are known', () => {
  const said = { likely: '2026-05-20', late: '2026-05-30' };
  expect(judged(hundredADay, said, with20k)).toMatchObject({
    outcome: 'later',
    reachedOn: null,
    daysOff: 11,
    daysOutside: 1,
    atLeast: true,
  });
});

test('judgeSaid() leaves open what has not passed its late day, that day included', () => {
  for (const late of ['2026-06-15', '2026-07-01', null])
    expect(judged(hundredADay, { late }, with20k)).toMatchObject({
      outcome: 'open',
      daysOff: null,
    });
});

test('judgeSaid() does not call late what nobody has read since', () => {
  // the late day passed on 10 June, the last reading is of 31 May
  const verdict = judged(hundredADay, { late: '2026-06-10' }, with20k);
  expect(verdict).toMatchObject({ outcome: 'notKnown', knownUntil: '2026-05-31', daysOff: null });
});

test('judgeSaid() takes counts as known through today, for the log holds them all', () => {
  const pads: Item = { ...oil, id: 'oil', limits: [{ measure: 'sessions', value: 8 }] };
  const day = (on: string): Line => ({ kind: 'session', use: 'circuit', on, sessions: 4 });
  const lines = [service('2026-01-01'), day('2026-04-04')];
  expect(judged(lines, { late: '2026-06-10' }, pads)).toMatchObject({
    outcome: 'later',
    knownUntil: '2026-06-15',
    daysOutside: 5,
    atLeast: true,
  });
  expect(judged([...lines, day('2026-04-18')], {}, pads)).toMatchObject({
    outcome: 'inside',
    reachedOn: '2026-04-18',
    daysOff: 3,
  });
});

test('judgeSaid() gives no verdict on what was done before it was due', () => {
  const early = [...hundredADay, service('2026-03-01', 25_900)];
  expect(judged(early, {})).toMatchObject({
    outcome: 'doneFirst',
    doneOn: '2026-03-01',
    reachedOn: null,
    daysOff: null,
  });
});

test('judgeSaid() counts use up to the next service and none after it', () => {
  // 10,000 km are full on 11 April; the service of that day lies behind them, that of the 10th before
  const on11 = [...hundredADay, service('2026-04-11', 30_000)];
  expect(judged(on11, {})).toMatchObject({ outcome: 'inside', doneOn: '2026-04-11' });
  const on10 = [...hundredADay, service('2026-04-10', 29_900)];
  expect(judged(on10, {})).toMatchObject({ outcome: 'doneFirst', reachedOn: null });
});

test('judgeSaid() counts a service after the late day as a miss: it lasted longer', () => {
  const late = [...hundredADay, service('2026-05-10', 32_900)];
  expect(judged(late, {}, with20k)).toMatchObject({
    outcome: 'later',
    doneOn: '2026-05-10',
    daysOutside: 9,
    atLeast: true,
  });
});

test('judgeSaid() cannot tell where a service came without a reading and none came after', () => {
  const lines = [
    service('2026-01-01', 20_000),
    reading('2026-02-01', 23_100),
    service('2026-03-01'),
  ];
  expect(judged(lines, {})).toMatchObject({ outcome: 'notKnown', knownUntil: '2026-02-01' });
  const read = [...lines, reading('2026-05-01', 26_000)];
  expect(judged(read, {})).toMatchObject({ outcome: 'doneFirst', doneOn: '2026-03-01' });
});

test('judgeSaid() cannot tell across use that the log does not hold', () => {
  const lines: Line[] = [
    service('2026-01-01', 20_000),
    { kind: 'meterReplaced', on: '2026-03-01', meter: 'odometer', newFirst: km(0) },
    reading('2026-05-31', 5_000),
  ];
  expect(judged(lines, {})).toMatchObject({ outcome: 'notKnown', reachedOn: null });
  // the exchange belongs to the next interval, and does not blur this one
  const done = [...lines, service('2026-02-15', 24_000)];
  expect(judged(done, {})).toMatchObject({ outcome: 'doneFirst' });
  // reached on the new meter alone, on 27 May or before: on which day is not known
  const more = [lines[0], lines[1], reading('2026-05-31', 11_000)].filter((it) => it !== undefined);
  expect(judged(more, {})).toMatchObject({ outcome: 'notKnown', daysOff: null });
});

const yearly = (months: number): Item => ({
  ...oil,
  limits: [{ measure: 'months', value: months }],
});

test('judgeSaid() takes a day of the calendar as reached only once it has passed', () => {
  const said = { early: '2026-04-01', likely: '2026-04-01', late: '2026-04-01', binding: 'months' };
  const begun = service('2026-01-01');
  const outcome = (next: string) => judged([begun, service(next)], said, yearly(3)).outcome;
  expect(outcome('2026-04-01')).toBe('doneFirst');
  expect(outcome('2026-04-02')).toBe('inside');
  expect(judged([begun], said, yearly(3))).toMatchObject({
    outcome: 'inside',
    reachedOn: '2026-04-01',
    daysOff: 0,
  });
  const later = { early: '2026-06-15', likely: '2026-06-15', late: '2026-06-15' };
  expect(
    judged([service('2025-12-15')], { ...later, since: '2025-12-15' }, yearly(6)).outcome,
  ).toBe('open');
});

test('judgeSaid() goes by whichever limit came first', () => {
  const both: Item = { ...oil, limits: [...oil.limits, { measure: 'days', value: 90 }] };
  expect(judged(hundredADay, { early: '2026-03-20' }, both)).toMatchObject({
    outcome: 'inside',
    reachedOn: '2026-04-01',
  });
});

test('judgeSaid() does not take a day of the calendar for the first while use may have come before it', () => {
  const both: Item = { ...with20k, limits: [...with20k.limits, { measure: 'days', value: 160 }] };
  // 160 days are full on 10 June; use is known through 31 May
  const of = (early: string, likely: string, late: string) =>
    judged(hundredADay, { early, likely, late }, both).outcome;
  expect(of('2026-06-01', '2026-06-10', '2026-06-12')).toBe('inside');
  expect(of('2026-06-02', '2026-06-10', '2026-06-12')).toBe('notKnown');
  expect(of('2026-05-01', '2026-05-20', '2026-06-09')).toBe('notKnown');
  expect(of('2026-05-01', '2026-05-20', '2026-05-31')).toBe('later');
  expect(of('2026-06-11', '2026-06-12', '2026-06-13')).toBe('earlier');
  // laid up since, so that nothing can have been driven
  const asleep = { layUps: [{ id: 'w', start: '2026-06-01' }] };
  const said = { early: '2026-06-10', likely: '2026-06-10', late: '2026-06-10' };
  expect(judged(hundredADay, said, both, asleep).outcome).toBe('inside');
});

test('judgeSaid() counts limits for hard use from the day they were switched on', () => {
  const hard: Item = {
    ...with20k,
    severe: {
      classes: ['circuit'],
      measure: 'km',
      share: 0.01,
      limits: [{ measure: 'km', value: 5_000, unit: 'km' }],
    },
  };
  const circuit: Line = {
    kind: 'session',
    use: 'circuit',
    on: '2026-04-20',
    distance: km(200),
    sessions: 4,
  };
  // 5,000 km were full on 20 February, but the schedule for hard use began on 20 April
  expect(judged([...hundredADay, circuit], {}, hard)).toMatchObject({
    outcome: 'inside',
    reachedOn: '2026-04-20',
  });
  expect(judged(hundredADay, { late: null }, hard)).toMatchObject({ outcome: 'open' });
});

test('judgeSaid() finds a label’s day without a service', () => {
  const belt: Item = { ...oil, limits: [{ measure: 'date', value: '2026-04-30' }] };
  const said = { since: null, early: '2026-04-30', likely: '2026-04-30', late: '2026-04-30' };
  expect(judged([], said, belt)).toMatchObject({ outcome: 'inside', reachedOn: '2026-04-30' });
});

test('judgeSaid() does not compare with other limits, nor with another service than it was said of', () => {
  expect(judged(hundredADay, { limits: '[]' }).outcome).toBe('changed');
  expect(judged(hundredADay, { since: '2026-01-02' }).outcome).toBe('changed');
  // a service that nobody had recorded when it was said
  const found = [...hundredADay, service('2026-01-20', 21_900)];
  expect(judged(found, {}).outcome).toBe('changed');
});

test('judgeSaid() ends with the car’s stay: what happens to it elsewhere is not known here', () => {
  const sold: Line = { kind: 'handover', on: '2026-03-01', what: 'sold' };
  const verdict = judged([...hundredADay, sold], {});
  expect(verdict).toMatchObject({ outcome: 'notKnown', knownUntil: '2026-03-01', reachedOn: null });
});

test('judgeSaid() leaves out what is no longer on the list', () => {
  const book = carBook(hundredADay, { items: [oil] });
  expect(judgeSaid(book, [{ item: 'gone' } as SaidLine])).toEqual([]);
});
