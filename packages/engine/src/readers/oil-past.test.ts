import { expect, test } from 'vitest';
import { carBook, type Line } from '../../test/car-book.ts';
import { analyseBook } from './analyse-book.ts';
import { oilPast } from './oil-past.ts';

const check = (on: string, km: number, fraction: number): Line => ({
  kind: 'oilCheck',
  on,
  odometer: { text: String(km), unit: 'km' },
  level: { how: 'fraction', fraction },
});
const LINES: Line[] = [
  check('2026-03-01', 40_000, 1),
  check('2026-03-20', 40_900, 0.75),
  { kind: 'session', on: '2026-04-01', use: 'circuit', sessions: 4 },
  check('2026-04-02', 41_400, 0.25),
  { kind: 'oilTopUp', on: '2026-04-02', volume: { text: '0.5', unit: 'l' } },
  check('2026-06-12', 42_500, 0.5),
];

test('oilPast() tells each entry with what was driven up to it, road and circuit apart', () => {
  const past = oilPast(carBook(LINES));
  expect(past.map(({ totalKm }) => Math.round(totalKm))).toEqual([0, 900, 1374, 1400, 1400, 2500]);
  // four sessions of 40 km, and twelve of thirteen days of the 340 km left for the road
  expect(past[2]?.drive.circuit).toBeCloseTo(0.16, 9);
  expect(past[3]?.drive.circuit).toBe(0);
  const all = past.reduce((sum, { drive }) => sum + drive.road + drive.circuit, 0);
  expect(all).toBeCloseTo(2.5, 9);
});

test('oilPast() raises the level by what was poured in', () => {
  const bottle = oilPast(carBook(LINES)).at(-2);
  expect((bottle?.after.mean ?? 0) - (bottle?.before.mean ?? 0)).toBeCloseTo(0.5, 1);
});

test('analyseBook() keeps a ledger: a level and rates from six lines of a notebook', () => {
  const { oil } = analyseBook(carBook(LINES));
  expect(oil.status).not.toBe('none');
  expect(oil.level.p10).toBeLessThan(oil.level.p50);
  expect(oil.roadRate.p05).toBeGreaterThan(0);
  expect(oil.hardRate.fromPrior).toBe(false);
  expect(oil.lowNow).toBe(false);
});

test('analyseBook() says at once that there is none on the stick', () => {
  const none: Line = { kind: 'oilCheck', on: '2026-06-13', level: { how: 'none' } };
  expect(analyseBook(carBook([...LINES, none])).oil.lowNow).toBe(true);
});

test('analyseBook() gives the same ledger for a shuffled log', () => {
  const book = carBook(LINES);
  const shuffled = { ...book, entries: book.entries.toReversed() };
  expect(analyseBook(shuffled).oil).toEqual(analyseBook(book).oil);
});
