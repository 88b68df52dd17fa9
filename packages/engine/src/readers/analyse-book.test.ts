import { expect, test } from 'vitest';
import { book } from '../log/book.ts';
import { canonicalJson } from '../log/canonical-json.ts';
import { isAmountLimit } from '../wear/result.ts';
import { analyseBook } from './analyse-book.ts';

const zone = 'Europe/Lisbon';

function bookOf(limits: object[], drafts: object[]) {
  const entries = drafts.map((draft, index) => ({
    id: `e${index}`,
    on: '2026-05-02',
    zone,
    recorded: index,
    ...draft,
  }));
  return book.parse({
    format: 'log/1',
    asOf: '2026-06-01',
    garage: { zone },
    car: { id: 'c', unit: 'km' },
    items: [{ id: 'x', name: 'X', role: 'engineOil', limits }],
    layUps: [],
    planned: [],
    entries,
  });
}

function accrued(limit: object, drafts: object[]): number | undefined {
  const found = analyseBook(bookOf([limit], drafts)).items[0]?.limits[0];
  return found && isAmountLimit(found) ? found.accrued : undefined;
}

const sessions = { measure: 'sessions', value: 16 };
const circuit = { kind: 'session', use: 'circuit', sessions: 4, time: '09:00' };
const flush = { kind: 'service', items: ['x'] };

test('analyseBook() counts sessions at 09:00 after work done at 07:00, and none after work at 17:00', () => {
  expect(accrued(sessions, [circuit, { ...flush, time: '07:00' }])).toBe(4);
  expect(accrued(sessions, [circuit, { ...flush, time: '17:00' }])).toBe(0);
});

test('analyseBook() lets the person say which came first', () => {
  const { time: _, ...untimed } = circuit;
  expect(accrued(sessions, [untimed, { ...flush, dayOrder: 'beforeDriving' }])).toBe(4);
  expect(accrued(sessions, [untimed, { ...flush, dayOrder: 'afterDriving' }])).toBe(0);
});

test('analyseBook() starts engine oil anew at an oil change', () => {
  const change = { kind: 'oilChange', filterRenewed: false, on: '2026-05-03' };
  expect(accrued(sessions, [{ ...flush, on: '2026-05-01' }, circuit, change])).toBe(0);
});

test('analyseBook() counts the distance of a drag-strip day by passes, not by launches', () => {
  const day = { kind: 'strip', passes: [{}, {}, {}], launches: 5 };
  const drafts = [{ ...flush, on: '2026-05-01', historyComplete: true }, day];
  expect(accrued({ measure: 'km', value: 100, unit: 'km' }, drafts)).toBeCloseTo(2.4, 9);
  expect(accrued({ measure: 'launches', value: 100 }, drafts)).toBe(5);
});

test('analyseBook() sorts the flags of levels in among the others', () => {
  const check = { kind: 'oilCheck', level: { how: 'fromMax', litres: -0.2 } };
  const later = { kind: 'odometer', odometer: { text: '5', unit: 'km' }, on: '2026-06-02' };
  const { flags } = analyseBook(bookOf([sessions], [check, later]));
  expect(flags.map(({ code, entry }) => [code, entry])).toEqual([
    ['future', 'e1'],
    ['valueIgnored', 'e0'],
  ]);
});

test('analyseBook() gives the same canonical answer for entries in any order', () => {
  const log = bookOf([sessions], [flush, circuit, { ...circuit, time: '11:00' }]);
  const turned = { ...log, entries: log.entries.toReversed() };
  expect(canonicalJson(analyseBook(turned))).toBe(canonicalJson(analyseBook(log)));
});

test('analyseBook() needs no days for parts that lie on the shelf, until the item was done with them', () => {
  const orderByWith = (orders: object[], ...more: object[]) => {
    const used = [flush, { ...circuit, on: '2026-05-10' }, ...more];
    const log = bookOf([{ measure: 'sessions', value: 6 }], used);
    const day = { id: 'day', start: '2026-06-21', use: 'circuit', sessions: 4, attend: 1 };
    const items = log.items.map((item) => ({ ...item, leadDays: 10 }));
    const planned = book.parse({ ...log, items, planned: [day], orders });
    return analyseBook(planned, { toEvents: true }).items[0]?.atEvent?.[0];
  };
  const order = { id: 'o', item: 'x', on: '2026-05-12' };
  const without = orderByWith([]);
  expect(without?.latestWorkDate).toEqual(expect.any(String));
  expect(without?.orderBy).not.toBe(without?.latestWorkDate);
  expect(orderByWith([order])?.orderBy).toBe(without?.orderBy);
  const here = [{ ...order, arrived: '2026-05-20' }];
  expect(orderByWith(here)?.orderBy).toBe(without?.latestWorkDate);
  expect(orderByWith([{ ...here[0], item: 'y' }])?.orderBy).toBe(without?.orderBy);
  const done = { ...flush, on: '2026-05-25' };
  const again = { ...circuit, on: '2026-05-28' };
  const after = orderByWith(here, done, again);
  expect(after?.orderBy).not.toBe(after?.latestWorkDate);
});
