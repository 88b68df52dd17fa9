import { describe, expect, it } from 'vitest';
import { cutSection } from './cut-section.ts';

/** One reading every ten days. */
function cut(values: number[], fullScaleKm: number | null = null) {
  const points = values.map((reading, index) => ({
    position: index,
    day: index * 10,
    reading,
    value: reading,
  }));
  const { segments, lowTypos, unloggedExchanges, rollOvers } = cutSection(points, fullScaleKm);
  return {
    segments: segments.map((segment) => segment.map(({ value }) => value)),
    lowTypos: lowTypos.map(({ reading }) => reading),
    exchanges: unloggedExchanges.map(({ lastOld, firstNew }) => [
      lastOld.reading,
      firstNew.reading,
    ]),
    rollOvers: rollOvers.map(({ reading }) => reading),
  };
}

const NOTHING = { lowTypos: [], exchanges: [], rollOvers: [] };

describe('cutSection()', () => {
  it('leaves a drop of exactly 300 km to the longest run', () => {
    const values = [1400, 1500, 1200, 1210, 1220];
    expect(cut(values)).toEqual({ ...NOTHING, segments: [values] });
    expect(cut([1400, 1500, 1199, 1210, 1220]).lowTypos).toEqual([1199]);
  });

  it('returns with a reading 300 km below the one it dropped from, not lower', () => {
    expect(cut([88_000, 88_400, 8_850, 88_100]).lowTypos).toEqual([8_850]);
    expect(cut([88_000, 88_400, 8_850, 88_099]).lowTypos).toEqual([]);
  });

  it('does not take a lower reading of the same day for a sign that it goes on', () => {
    const point = (position: number, day: number, reading: number) => ({
      position,
      day,
      reading,
      value: reading,
    });
    const points = [point(0, 9, 10), point(1, 9, 88_000), point(2, 20, 40), point(3, 30, 90)];
    expect(cutSection(points, null).unloggedExchanges).toHaveLength(1);
  });

  it('drops a low typo up to the reading that returns', () => {
    expect(cut([88_000, 88_400, 8_850, 89_000])).toEqual({
      ...NOTHING,
      segments: [[88_000, 88_400, 89_000]],
      lowTypos: [8_850],
    });
  });

  it('drops two low typos in a row, if the third returns', () => {
    const found = cut([88_000, 88_400, 8_850, 8_900, 89_000]);
    expect(found.lowTypos).toEqual([8_850, 8_900]);
    expect(found.segments).toEqual([[88_000, 88_400, 89_000]]);
  });

  it('goes on after a high typo and leaves it to the longest run', () => {
    expect(cut([10_000, 10_500, 105_000, 11_000, 11_400])).toEqual({
      ...NOTHING,
      segments: [[10_000, 10_500, 105_000, 11_000, 11_400]],
    });
  });

  it('sees an exchange nobody logged where the readings stay low', () => {
    expect(cut([88_000, 88_400, 20, 450, 900])).toEqual({
      ...NOTHING,
      segments: [
        [88_000, 88_400],
        [20, 450, 900],
      ],
      exchanges: [[88_400, 20]],
    });
  });

  it('waits with an exchange until something follows the drop', () => {
    expect(cut([88_000, 88_400, 20])).toEqual({ ...NOTHING, segments: [[88_000, 88_400, 20]] });
  });

  it('counts on over a roll-over of known digits, even at the last reading', () => {
    expect(cut([99_500, 99_900, 150], 100_000)).toEqual({
      ...NOTHING,
      segments: [[99_500, 99_900, 100_150]],
      rollOvers: [150],
    });
  });

  it('counts on over two roll-overs', () => {
    const found = cut([9_000, 9_800, 400, 2_000, 4_000, 6_000, 9_700, 300], 10_000);
    expect(found.segments).toEqual([
      [9_000, 9_800, 10_400, 12_000, 14_000, 16_000, 19_700, 20_300],
    ]);
    expect(found.rollOvers).toEqual([400, 300]);
  });

  it('takes a drop of half the full scale or less for an exchange', () => {
    expect(cut([4_000, 5_010, 10, 500], 10_000).exchanges).toEqual([[5_010, 10]]);
    expect(cut([4_000, 5_011, 10, 500], 10_000).rollOvers).toEqual([10]);
  });

  it('takes a roll-over that would mean more than 1,000 km a day for an exchange', () => {
    // 11 days: 11,000 km at most; from 99,000 to 10,001 it would be 11,001
    expect(cut([98_000, 99_000, 10_000, 10_400], 100_000).rollOvers).toEqual([10_000]);
    expect(cut([98_000, 99_000, 10_001, 10_400], 100_000).exchanges).toEqual([[99_000, 10_001]]);
  });

  it('looks like an exchange where the digits are not known', () => {
    expect(cut([99_500, 99_900, 150, 600]).exchanges).toEqual([[99_900, 150]]);
  });

  it('starts no segment for nothing', () => {
    expect(cut([])).toEqual({ ...NOTHING, segments: [[]] });
  });
});
