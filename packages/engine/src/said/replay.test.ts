import { expect, test } from 'vitest';
import { carBook, km, type Line } from '../../test/car-book.ts';
import { addDays } from '../calendar/add.ts';
import type { Book, BookDraft } from '../log/index.ts';
import { analyseBook } from '../readers/analyse-book.ts';
import { judgeSaid } from './judge-said.ts';
import { replay, replayDays } from './replay.ts';
import { saidOf } from './said-of.ts';

const item = (id: string, more: Partial<BookDraft['items'][number]> = {}) => ({
  id,
  name: id,
  limits: [{ measure: 'km' as const, value: 10_000, unit: 'km' as const }],
  ...more,
});
const reading = (on: string, value: number): Line => ({
  kind: 'odometer',
  on,
  odometer: km(value),
});
const oil = (on: string, value: number): Line => ({
  kind: 'service',
  on,
  items: ['oil'],
  odometer: km(value),
});

// a steady commuter: 40 km a day, read every two weeks for two years
const commuter = (): Line[] => [
  oil('2024-06-16', 10_000),
  ...Array.from({ length: 52 }, (_, at) =>
    reading(addDays('2024-06-30', 14 * at), 10_560 + 560 * at),
  ),
  oil('2025-04-01', 21_560),
];

test('replayDays() names the first of each of twelve months before a day', () => {
  expect(replayDays('2026-06-15')).toHaveLength(12);
  expect(replayDays('2026-06-15').at(0)).toBe('2025-07-01');
  expect(replayDays('2026-06-15').at(-1)).toBe('2026-06-01');
  // today is not among them
  expect(replayDays('2026-06-01').at(0)).toBe('2025-06-01');
  expect(replayDays('2026-06-01').at(-1)).toBe('2026-05-01');
});

/** The book as it really was on a day: what had been written down by then. */
function bookThen(lines: Line[], day: string, more: Parameters<typeof carBook>[1]): Book {
  return carBook(
    lines.filter(({ on }) => on <= day),
    { ...more, asOf: day },
  );
}

test('replay() says what the product would have said on that day', () => {
  const more = { items: [item('oil')] };
  const days = replayDays('2026-06-15');
  const book = carBook(commuter(), more);
  const said = replay(book, days);
  // it was over on 7 December, and what is over has no day ahead
  expect(said.map(({ saidOn }) => saidOn)).toEqual(days.slice(0, 6));
  for (const line of said) {
    const then = bookThen(commuter(), line.saidOn, more);
    expect([{ ...line, afterwards: false }]).toEqual(saidOf(then, analyseBook(then)));
    expect(line.afterwards).toBe(true);
  }
  // and it was about right: 250 days from 1 April 2025
  expect(said[0]?.since).toBe('2025-04-01');
  const outcomes = judgeSaid(book, said).map(({ outcome, reachedOn }) => [outcome, reachedOn]);
  expect(outcomes[0]).toEqual(['inside', '2025-12-07']);
});

test('replay() knows nothing of what was written down later', () => {
  const lines = commuter();
  const more = { items: [item('oil')] };
  const days = ['2025-08-01'];
  const [plain] = replay(carBook(lines, more), days);
  const later: Line[] = [
    reading('2025-08-02', 39_000),
    { kind: 'session', use: 'circuit', on: '2025-08-02', sessions: 40 },
    { kind: 'incident', on: '2025-08-02', what: 'softPedal' },
    { kind: 'handover', on: '2025-09-01', what: 'sold' },
  ];
  const changed = carBook([...lines, ...later], {
    items: [item('oil', { dueSince: '2025-08-02', triggers: { incidents: ['softPedal'] } })],
    layUps: [{ id: 'w', start: '2025-08-02', end: '2026-03-01' }],
    profile: { status: 'away' },
  });
  expect(plain).toBeDefined();
  expect(replay(changed, days)).toEqual([plain]);
});

test('replay() does not know when a lay-up ended', () => {
  const lines = commuter().filter(({ on }) => on <= '2025-11-01');
  const on = (end?: string) =>
    replay(
      carBook(lines, {
        items: [item('oil')],
        layUps: [{ id: 'w', start: '2025-11-02', ...(end !== undefined && { end }) }],
      }),
      ['2025-12-01'],
    );
  expect(on('2025-12-02')).toEqual(on());
  expect(on('2025-11-20')).not.toEqual(on());
});

test('replay() has no starting point that lies later, and says nothing before the log begins', () => {
  const start = { on: '2025-06-01', odometer: km(1_000), historyComplete: true };
  const book = carBook([reading('2025-06-01', 1_000), reading('2026-06-01', 9_000)], {
    items: [item('belt', { baseline: start })],
  });
  expect(
    replay(book, ['2025-05-31', '2025-06-02', '2026-01-01']).map((line) => line.saidOn),
  ).toEqual(['2025-06-02', '2026-01-01']);
  const later = { ...book, items: [item('belt', { baseline: { ...start, on: '2026-02-01' } })] };
  const parsed = carBook([reading('2025-06-01', 1_000)], { items: later.items });
  expect(replay(parsed, ['2026-01-01'])).toEqual([]);
});

test('saidOf() says nothing of what is overdue, not wholly known, done for good or not driven here', () => {
  const lines = commuter();
  const lineOf = (more: Partial<BookDraft['items'][number]>, extra: Line[] = []) => {
    const book = carBook([...lines, ...extra], { items: [item('oil', more)], asOf: '2025-09-01' });
    const { status, items } = analyseBook(book);
    return [saidOf(book, analyseBook(book)).length, status, items[0]?.state];
  };
  expect(lineOf({})).toEqual([1, 'inUse', 'fine']);
  const short = { limits: [{ measure: 'km' as const, value: 100, unit: 'km' as const }] };
  expect(lineOf(short)).toEqual([0, 'inUse', 'overdue']);
  const before = { baseline: { on: '2020-01-01' } };
  const unknown = carBook([reading('2025-08-01', 1_000)], { items: [item('oil', before)] });
  expect(analyseBook(unknown).items[0]?.limits[0]?.known).toBe(false);
  expect(saidOf(unknown, analyseBook(unknown))).toEqual([]);
  expect(lineOf({ once: true })).toEqual([0, 'inUse', 'fine']);
  const lent: Line = { kind: 'handover', on: '2025-08-30', what: 'lent' };
  expect(lineOf({}, [lent])).toEqual([0, 'away', 'fine']);
});
