import { describe, expect, test } from 'vitest';
import { carBook, km } from '../../test/car-book.ts';
import type { BookDraft } from '../log/book.ts';
import { analyseBook } from '../readers/analyse-book.ts';
import { type AddedUse, addedUse } from './added-use.ts';
import { eventOutlooks } from './event-outlooks.ts';
import { firstToRunOut } from './first-to-run-out.ts';
import { whatIf } from './what-if.ts';

const fluid = (left: number, more: object = {}): NonNullable<BookDraft['items']>[number] => ({
  id: 'fluid',
  name: 'Brake fluid',
  limits: [{ measure: 'sessions', value: left }],
  baseline: { on: '2026-05-01', historyComplete: true },
  ...more,
});
const label = (on: string) => ({
  id: 'label',
  name: 'Harness',
  limits: [{ measure: 'date' as const, value: on }],
});
const unsure = {
  id: 'unsure',
  name: 'Belts',
  limits: [{ measure: 'months' as const, value: 60 }],
};
const day = (sessions: number, start = '2026-06-20', end?: string): AddedUse =>
  addedUse.parse({ sort: 'circuit', start, ...(end && { end }), use: { sessions } });
const session = (on: string) => ({ kind: 'session' as const, use: 'circuit' as const, on });

describe('whatIf()', () => {
  test('whatIf() with nothing added changes nothing', () => {
    const answer = whatIf(carBook([session('2026-05-10')], { items: [fluid(18)] }), []);
    expect(answer.outlooks).toEqual([]);
    expect(answer.lines.map(({ changed }) => changed)).toEqual([false]);
  });

  test('whatIf() brings the likely day to the added day where that reaches the limit', () => {
    const book = carBook([session('2026-05-10')], { items: [fluid(18), label('2027-01-01')] });
    const { lines, outlooks } = whatIf(book, [day(40)]);
    const [first, other] = lines;
    expect(first).toMatchObject({ name: 'Brake fluid', changed: true });
    expect(first?.before.dates.likely).not.toBe('2026-06-20');
    expect(first?.after.dates).toMatchObject({ early: '2026-06-20', likely: '2026-06-20' });
    expect(other).toMatchObject({ name: 'Harness', changed: false });
    expect(outlooks[0]?.runsOut).toMatchObject([{ id: 'fluid', how: 'likely' }]);
    expect(outlooks[0]?.lasts).toBe(1);
  });

  test('whatIf() leaves the book as it was, and its planned events in force', () => {
    const event = {
      id: 'e',
      start: '2026-06-17',
      use: 'circuit' as const,
      sessions: 30,
      attend: 1,
    };
    const book = carBook([], { items: [fluid(18)], planned: [event] });
    const kept = JSON.stringify(book);
    const { lines } = whatIf(book, [day(4)]);
    expect(JSON.stringify(book)).toBe(kept);
    expect(lines[0]?.before.dates.likely).toBe('2026-06-17');
    expect(lines[0]?.after.dates.likely).toBe('2026-06-17');
    expect(lines[0]?.changed).toBe(false);
  });
});

describe('outlookOf()', () => {
  test('outlookOf() gives the last day for the work, a day before the event, and when to order', () => {
    const items = [fluid(18, { leadDays: 2 })];
    const [outlook] = whatIf(carBook([], { items }), [day(40)]).outlooks;
    expect(outlook?.runsOut).toMatchObject([
      { latestWork: '2026-06-19', parts: { kind: 'orderBy', day: '2026-06-17', feasible: true } },
    ]);
    const late = whatIf(carBook([], { items: [fluid(18, { leadDays: 9 })] }), [day(40)]);
    expect(late.outlooks[0]?.runsOut[0]?.parts).toMatchObject({ feasible: false });
  });

  test('outlookOf() says of parts nothing where they take no days, and tells of an order that stands', () => {
    const ask = (more: Parameters<typeof carBook>[1]) =>
      whatIf(carBook([], more), [day(40)]).outlooks[0]?.runsOut[0]?.parts;
    expect(ask({ items: [fluid(18)] })).toBeNull();
    const orders = [{ id: 'o', item: 'fluid', on: '2026-06-10', expected: '2026-06-18' }];
    expect(ask({ items: [fluid(18, { leadDays: 2 })], orders })).toMatchObject({ kind: 'ordered' });
    const others = [{ ...orders[0], id: 'o', item: 'other', on: '2026-06-10' }];
    expect(ask({ items: [fluid(18, { leadDays: 2 })], orders: others })).toMatchObject({
      kind: 'orderBy',
    });
  });

  test('outlookOf() calls an interval too short that not even work on the eve would last', () => {
    const [outlook] = whatIf(carBook([], { items: [fluid(18)] }), [day(40)]).outlooks;
    expect(outlook?.runsOut).toMatchObject([{ tooShort: true, notBefore: null }]);
    // 12 sessions on one day and 12 a fortnight later: only work after the first lasts through the second
    const planned = [
      { id: 'e', start: '2026-06-20', use: 'circuit' as const, sessions: 12, attend: 1 },
    ];
    const book = carBook([], { items: [fluid(18)], planned });
    const two = whatIf(book, [day(12, '2026-07-04')]).outlooks[0]?.runsOut[0];
    expect(two).toMatchObject({ how: 'likely', tooShort: false });
    expect(two?.notBefore && two.notBefore >= '2026-06-20' && two.notBefore < '2026-07-04').toBe(
      true,
    );
  });

  test('outlookOf() keeps what nobody can say apart from what lasts', () => {
    const [outlook] = whatIf(carBook([], { items: [unsure, label('2030-01-01')] }), [
      day(4),
    ]).outlooks;
    expect(outlook).toEqual({
      id: 'added-1',
      runsOut: [],
      notKnown: [{ id: 'unsure', name: 'Belts', reasonCode: 'noBaseline' }],
      lasts: 1,
    });
  });

  test('outlookOf() says of what has run out that it has, without a last day for the work', () => {
    const book = carBook([], { items: [label('2026-06-01')] });
    expect(whatIf(book, [day(4)]).outlooks[0]?.runsOut).toEqual([
      {
        id: 'label',
        name: 'Harness',
        how: 'already',
        latestWork: null,
        notBefore: null,
        tooShort: false,
        parts: null,
        leadDays: 0,
      },
    ]);
  });

  test('outlookOf() takes the last day of a label as good, the day after as not', () => {
    const ask = (on: string) =>
      whatIf(carBook([], { items: [label(on)] }), [day(4, '2026-06-20', '2026-06-21')]).outlooks[0];
    expect(ask('2026-06-21')).toMatchObject({ runsOut: [], lasts: 1 });
    expect(ask('2026-06-20')?.runsOut).toMatchObject([{ how: 'likely' }]);
  });
});

test('firstToRunOut() names each item once, with the first event in which it runs out', () => {
  const book = carBook([], { items: [fluid(18), label('2026-06-25')] });
  const { outlooks } = whatIf(book, [day(20, '2026-07-11'), day(20, '2026-06-20')]);
  expect(firstToRunOut(outlooks)).toMatchObject([
    { id: 'fluid', outlookId: 'added-2' },
    { id: 'label', outlookId: 'added-1' },
  ]);
});

describe('eventOutlooks()', () => {
  const oil = {
    id: 'oil',
    name: 'Engine oil',
    limits: [{ measure: 'km' as const, value: 1_000, unit: 'km' as const }],
    baseline: { on: '2026-06-01', odometer: km(20_000), historyComplete: true },
  };
  const readings = [
    { kind: 'odometer' as const, on: '2026-06-01', odometer: km(20_000) },
    { kind: 'odometer' as const, on: '2026-06-15', odometer: km(20_500) },
  ];

  test('eventOutlooks() counts the use that is planned, and days alone where none is', () => {
    const planned = [{ id: 'e', start: '2026-06-20', use: 'circuit' as const, sessions: 40 }];
    const events = [
      { id: 'e', start: '2026-06-20', end: '2026-06-20' },
      { id: 'later', start: '2026-08-20', end: '2026-08-22' },
    ];
    const book = carBook(readings, { items: [fluid(18), oil], planned });
    const [next, later] = eventOutlooks(book, events);
    expect(next?.runsOut).toMatchObject([{ id: 'fluid' }, { id: 'oil' }]);
    expect(later?.runsOut.map(({ id }) => id).sort()).toEqual(['fluid', 'oil']);
    const [unplanned] = eventOutlooks(carBook(readings, { items: [fluid(18), oil] }), events);
    expect(unplanned).toMatchObject({ id: 'e', runsOut: [], lasts: 2 });
  });

  test('eventOutlooks() still tells of an event on its last day', () => {
    const today = { id: 'now', start: '2026-06-14', end: '2026-06-15' };
    const [outlook] = eventOutlooks(carBook(readings, { items: [oil] }), [today]);
    expect(outlook).toMatchObject({ runsOut: [], notKnown: [], lasts: 1 });
  });

  test('eventOutlooks() of days without use leaves the dates as they are', () => {
    const book = carBook([...readings, session('2026-06-05')], { items: [fluid(18), oil] });
    const plain = analyseBook(book).items.map(({ dueDate }) => dueDate);
    const days = [{ id: 'x', start: '2026-06-20', end: '2026-06-20' }];
    const asked = analyseBook(book, { toDays: days });
    expect(asked.items.map(({ dueDate }) => dueDate)).toEqual(plain);
    expect(asked.items.map(({ atEvent }) => atEvent?.map(({ id }) => id))).toEqual([['x'], ['x']]);
  });
});

describe('addedUse', () => {
  const wrong = (line: object) =>
    addedUse.safeParse(line).error?.issues.map(({ path }) => path.join('.'));
  test('addedUse refuses what an event could not have, and a line without an amount', () => {
    const line = { sort: 'circuit', start: '2026-06-20', use: { sessions: 4 } };
    expect(wrong(line)).toBeUndefined();
    expect(wrong({ ...line, end: '2026-06-19' })).toEqual(['end']);
    expect(wrong({ ...line, use: { launches: 4 } })).toEqual(['use.launches']);
    expect(wrong({ ...line, use: {} })).toEqual(['use']);
    expect(wrong({ ...line, use: { sessions: 0 } })).toEqual(['use']);
    expect(wrong({ ...line, use: { sessions: 301 } })).toEqual(['use.sessions']);
  });
});
