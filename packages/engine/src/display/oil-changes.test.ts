import { expect, test } from 'vitest';
import { carBook, km, type Line } from '../../test/car-book.ts';
import { analyseBook } from '../readers/index.ts';
import { garageAnswer } from './garage-answer.ts';
import { needsAHand } from './garage-row.ts';
import { LANE_BYTES_MAX, laneOf } from './lane-of.ts';
import { laneLevelWords } from './likely-level-words.ts';
import { oilChanges } from './oil-changes.ts';
import { urgencyOf } from './urgency-of.ts';
import { whatChanged } from './what-changed.ts';

const check = (on: string, odo: number, fraction: number): Line => ({
  kind: 'oilCheck',
  on,
  odometer: km(odo),
  level: { how: 'fraction', fraction, step: 0.25 },
});
const LOGGED: Line[] = [
  check('2026-03-01', 40_000, 1),
  check('2026-03-20', 40_900, 0.75),
  check('2026-04-20', 41_900, 0.5),
  check('2026-05-20', 42_900, 0.25),
  { kind: 'oilTopUp', on: '2026-05-20', time: '18:00', volume: { text: '0.75', unit: 'l' } },
  check('2026-06-12', 43_600, 0.75),
];
const facts = {
  unit: 'km',
  distanceUnit: 'km',
  volumeUnit: 'l',
  drySump: false,
  items: [],
} as const;
const bookOf = (lines: readonly Line[]) => carBook(lines, { profile: { oilSpanL: 1 } });
const of = (lines: readonly Line[]) => analyseBook(bookOf(lines));
const NONE: Line = { kind: 'oilCheck', on: '2026-06-14', level: { how: 'none' } };

test('oilChanges() tells the likely level and the next look after a reading, and the reading no more', () => {
  const lines = whatChanged(of(LOGGED.slice(0, -1)), of(LOGGED), facts);
  expect(lines.find((line) => line.startsWith('Oil'))).toMatch(
    /^Oil level now likely .*, 0\.\d L below MAX\. Look again within [\d,]+ km, by the odometer at 4\d,\d{3} km, or by Fri 19 June\.$/,
  );
  expect(lines.filter((line) => line.includes('on the stick'))).toEqual([]);
});

test('oilChanges() says first what cannot wait', () => {
  const [first, level] = oilChanges(of(LOGGED), of([...LOGGED, NONE]), facts);
  expect(first).toMatch(/^No oil on the stick when last read, 14 June 2026: do not start it\./);
  expect(level).not.toContain('Look again');
});

test('oilChanges() says what would help while there are too few, beside the reading itself', () => {
  const lines = whatChanged(of([]), of(LOGGED.slice(0, 1)), facts);
  expect(lines.join(' ')).toContain('Oil level: too few readings yet');
  expect(lines).toContain('Oil on the stick: not on record → at MAX.');
});

test('oilChanges() is quiet where nothing about the oil was written', () => {
  expect(oilChanges(of(LOGGED), of(LOGGED), facts)).toEqual([]);
  const driven: Line = { kind: 'odometer', on: '2026-06-14', odometer: km(43_700) };
  expect(oilChanges(of(LOGGED), of([...LOGGED, driven]), facts)).toEqual([]);
});

test('laneOf() carries the likely level in hundredths, and what cannot wait', () => {
  const book = bookOf(LOGGED);
  const lane = laneOf(book, analyseBook(book), null);
  const { low = 9, likely = 9, high = -9 } = lane.oil?.level ?? {};
  expect(low).toBeLessThan(likely);
  expect(likely).toBeLessThan(high);
  for (const value of [low, likely, high]) expect(value).toBe(Math.round(value * 100) / 100);
  expect(lane.oil?.stop).toBeNull();
  expect(laneLevelWords({ low, likely, high })).toMatch(/^likely .*, (between|close to) /);
  const dry = bookOf([...LOGGED, NONE]);
  expect(laneOf(dry, analyseBook(dry), null).oil?.stop).toBe('none');
  const empty = bookOf([]);
  expect(laneOf(empty, analyseBook(empty), null).oil).toBeNull();
  expect(JSON.stringify(lane).length).toBeLessThan(LANE_BYTES_MAX);
});

const row = (lines: readonly Line[]) => {
  const book = bookOf(lines);
  const analysis = analyseBook(book);
  const lane = laneOf(book, analysis, null);
  return {
    name: 'Tern',
    unit: 'km' as const,
    lane,
    laidUp: false,
    asOf: '2026-06-15',
    overdue: 0,
    dueSoon: 0,
    notOnRecord: 0,
  };
};

test('garageAnswer() counts a car without oil on the stick, and says what to do', () => {
  const rows = [row([...LOGGED, NONE])];
  expect(needsAHand(rows[0] as (typeof rows)[number])).toBe(true);
  expect(garageAnswer({ cars: 1, needsAHand: 1, rows })).toBe(
    'One car needs a hand today: Tern (oil). Oil: Tern none on the stick. Look at it by the manual’s procedure before the next start.',
  );
  expect(needsAHand(row(LOGGED))).toBe(false);
});

test('urgencyOf() puts oil that cannot wait before whatever has run out, and after what forbids driving', () => {
  const [dry, fine] = [of([...LOGGED, NONE]), of(LOGGED)];
  const wheelsOff: Line = { kind: 'wheels', on: '2026-06-14', change: 'off' };
  expect(urgencyOf(dry)).toBeLessThan(0);
  expect(urgencyOf(fine)).toBeGreaterThan(0);
  expect(urgencyOf(of([...LOGGED, wheelsOff]))).toBeLessThan(urgencyOf(dry));
});
