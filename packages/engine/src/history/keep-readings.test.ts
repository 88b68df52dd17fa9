import { describe, expect, it } from 'vitest';
import { keepReadings } from './keep-readings.ts';

function keep(pairs: [day: number, value: number][], perDay = 2000) {
  const points = pairs.map(([day, value], position) => ({ position, day, reading: value, value }));
  const { kept, rejected, tooFast } = keepReadings(points, perDay);
  const values = (list: typeof kept) => list.map(({ value }) => value);
  return { kept: values(kept), rejected: values(rejected), tooFast: values(tooFast) };
}

describe('keepReadings()', () => {
  it('keeps a last value of exactly 2,000 km a day, counting both days', () => {
    expect(
      keep([
        [0, 1000],
        [1, 5000],
      ]).tooFast,
    ).toEqual([]);
    expect(
      keep([
        [0, 1000],
        [1, 5001],
      ]).tooFast,
    ).toEqual([5001]);
  });

  it('sets equal typos at the end aside together', () => {
    expect(
      keep([
        [0, 1000],
        [1, 1100],
        [2, 111_000],
        [3, 111_000],
      ]),
    ).toEqual({
      kept: [1000, 1100],
      rejected: [],
      tooFast: [111_000, 111_000],
    });
  });

  it('sets at most three values aside', () => {
    const found = keep([
      [0, 0],
      [1, 10_000],
      [2, 20_000],
      [3, 30_000],
      [4, 40_000],
    ]);
    expect(found.tooFast).toEqual([40_000, 30_000, 20_000]);
    expect(found.kept).toEqual([0, 10_000]);
  });

  it('leaves a single value alone, whatever it is', () => {
    expect(keep([[0, 999_999]]).kept).toEqual([999_999]);
  });

  it('judges hours by 24 a day', () => {
    expect(
      keep(
        [
          [0, 100],
          [0, 124],
        ],
        24,
      ).tooFast,
    ).toEqual([]);
    expect(
      keep(
        [
          [0, 100],
          [0, 124.5],
        ],
        24,
      ).tooFast,
    ).toEqual([124.5]);
  });

  it('rejects what does not fit the longest run', () => {
    expect(
      keep([
        [0, 100],
        [5, 900],
        [9, 200],
        [12, 300],
      ]),
    ).toEqual({
      kept: [100, 200, 300],
      rejected: [900],
      tooFast: [],
    });
  });
});
