import { describe, expect, it, test } from 'vitest';
import { carBook, km, type Line } from '../../test/car-book.ts';
import { analyseBook, oilYearAgo } from '../readers/index.ts';
import {
  type ComparedRow,
  changeWords,
  comparedAnswer,
  oilChangeOf,
  oilLimitWords,
} from './oil-compared.ts';
import { type OilLine, oilLineOf } from './oil-line.ts';
import { LITRES_PER_1000_KM, US_QUARTS_PER_1000_MI } from './oil-rate-words.ts';

const dayOf = (at: number) => new Date(Date.UTC(2024, 8, 1 + 8 * at)).toISOString().slice(0, 10);

/** A reading every eight days and 500 km from September 2024 on, oil added below two fifths. */
function logged(rateAt: (at: number) => number): Line[] {
  let level = 1;
  return Array.from({ length: 81 }, (_, at): Line => {
    if (at > 0) level -= 0.5 * rateAt(at);
    const fraction = Math.round(level * 8) / 8;
    const odometer = km(10_000 + 500 * at);
    if (level >= 0.4)
      return {
        kind: 'oilCheck',
        on: dayOf(at),
        odometer,
        level: { how: 'fraction', fraction, step: 0.125 },
      };
    level += 0.5;
    return {
      kind: 'oilTopUp',
      on: dayOf(at),
      odometer,
      volume: { text: '0.5', unit: 'l' },
      levelBefore: { how: 'fraction', fraction, step: 0.125 },
    };
  });
}
const profile = { oilSpanL: 1 };
function lineOf(lines: readonly Line[], asOf = '2026-06-15'): OilLine {
  const book = carBook(lines, { profile, asOf });
  return oilLineOf(analyseBook(book).oil, oilYearAgo(book));
}
// the 36th reading is of June 2025
const worse = lineOf(logged((at) => (at < 40 ? 0.2 : 0.5)));
const steady = lineOf(logged(() => 0.3));
const better = lineOf(logged((at) => (at < 40 ? 0.6 : 0.2)));
const row = (name: string, line: OilLine | null): ComparedRow => ({ name, line });

describe('oilYearAgo()', () => {
  it('says what the same log would have said on the same civil date a year before', () => {
    const book = carBook(
      logged(() => 0.3),
      { profile },
    );
    const ago = oilYearAgo(book);
    expect(ago?.on).toBe('2025-06-15');
    const then = analyseBook({ ...book, asOf: '2025-06-15' }).oil;
    expect(ago?.answer.roadRate.p50).toBeCloseTo(then.roadRate.p50, 3);
    expect(ago?.answer.hardRate.fromPrior).toBe(true);
  });

  it('is null where nothing of the oil is on record from then, and clamps the end of February', () => {
    expect(
      oilYearAgo(
        carBook(
          logged(() => 0.3),
          { asOf: '2025-08-01', profile },
        ),
      ),
    ).toBeNull();
    const leap = carBook([{ kind: 'oilCheck', on: '2022-01-01', level: { how: 'over' } }], {
      asOf: '2024-02-29',
    });
    expect(oilYearAgo(leap)?.on).toBe('2023-02-28');
  });
});

describe('oilLineOf()', () => {
  it('has the change as a multiple with its band', () => {
    expect(worse.change?.likely).toBeGreaterThan(1.8);
    expect(worse.change?.likely).toBeLessThan(3.5);
    expect(worse.change?.low).toBeLessThan(worse.change?.likely ?? 0);
    expect(steady.change?.likely).toBeGreaterThan(0.8);
    expect(steady.change?.likely).toBeLessThan(1.25);
  });

  it('has no rate and no change of too few readings, and no hard use that was never logged', () => {
    const few = lineOf(logged(() => 0.3).slice(0, 2));
    expect(few).toMatchObject({
      status: 'none',
      road: null,
      hard: null,
      level: null,
      change: null,
    });
    expect(steady.hard).toBeNull();
    expect(steady.ago?.hard).toBeNull();
  });
});

test.each([
  [worse, 'more', /^uses more than a year ago: 0\.\d+ then, 0\.\d+ L per 1,000 km now$/],
  [steady, 'same', /^no change to be told from a year ago: 0\.\d+ then, 0\.\d+ L/],
  [better, 'less', /^uses less than a year ago: 0\.\d+ then/],
  [{ ...steady, ago: null, change: null }, 'unknown', /^no rate from a year ago/],
  [null, 'unknown', /^being worked out$/],
] as const)('oilChangeOf() and changeWords() of a car: case %#', (line, change, words) => {
  expect(oilChangeOf(line)).toBe(change);
  expect(changeWords(line, LITRES_PER_1000_KM)).toMatch(words);
});

describe('comparedAnswer()', () => {
  const answer = (...rows: ComparedRow[]) => comparedAnswer(rows, LITRES_PER_1000_KM);

  it('names the cars that got worse, with then and now', () => {
    expect(answer(row('Tern', worse), row('Wren', steady))).toMatch(
      /^Got worse since June 2025: Tern, 0\.\d+ then, 0\.\d+ L per 1,000 km now\.$/,
    );
    expect(comparedAnswer([row('Tern', worse)], US_QUARTS_PER_1000_MI)).toContain(
      'US qt per 1,000 mi now',
    );
  });

  it('says where it is only likely, after those where it is sure', () => {
    const change = { low: 0.9, likely: 1.4, high: 2.18 };
    const likely = { ...worse, change };
    expect(oilChangeOf(likely)).toBe('likelyMore');
    expect(oilChangeOf({ ...worse, change: { low: 0.9, likely: 1.2, high: 1.6 } })).toBe('same');
    expect(answer(row('Wren', likely))).toMatch(
      /^Likely worse than in June 2025, not yet surely: Wren, /,
    );
    expect(answer(row('Tern', worse), row('Wren', likely))).toMatch(
      /^Got worse since June 2025: Tern, .* now\. Likely too, not yet surely: Wren, .* now\.$/,
    );
  });

  it('says that none did, and where there is nothing to compare with', () => {
    expect(answer(row('Wren', steady), row('Lark', better))).toMatch(
      /^No car uses more oil than in June 2025, as far as can be told\.$/,
    );
    expect(answer(row('Wren', { ...steady, ago: null, change: null }))).toBe(
      'No car has a rate from a year ago to compare with yet.',
    );
    expect(answer(row('Wren', null))).toBe('Too few readings yet to compare any car.');
    expect(answer()).toBe('No car to compare.');
  });
});

test('oilLimitWords() holds the likely use and its band against the owner’s limit', () => {
  const at = (low: number, likely: number, high: number) => ({
    ...steady,
    road: { low, likely, high },
  });
  const words = (line: OilLine) => oilLimitWords(line, 0.5, LITRES_PER_1000_KM);
  expect(words(at(0.6, 0.7, 0.8))).toBe('over your limit of 0.5 L per 1,000 km');
  expect(words(at(0.4, 0.6, 0.8))).toMatch(/^likely over/);
  expect(words(at(0.2, 0.4, 0.6))).toMatch(/^may be over/);
  expect(words(at(0.2, 0.3, 0.4))).toMatch(/^within/);
  expect(oilLimitWords(steady, null, LITRES_PER_1000_KM)).toBeNull();
});
