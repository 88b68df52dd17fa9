import { describe, expect, it } from 'vitest';
import { EVERYDAY_PRIOR, OCCASION_PRIOR, seasonProfile } from './season-profile.ts';

const months = (values: Record<number, number>, others = 0) =>
  new Float64Array(12).map((_, month) => values[month] ?? others);
const rounded = (profile: Float64Array) => Array.from(profile, (it) => Math.round(it * 1e6) / 1e6);

describe('seasonProfile()', () => {
  // twelve months of 30 days and 360 km, all in one of them: a level of 1 a day, so that month has
  // (360 + 30)/(30 + 30) = 6.5 and each other 30/60 = 0.5; then a quarter, a half and a quarter
  it('shrinks to the prior and smooths over the neighbours, by hand', () => {
    expect(
      rounded(seasonProfile(months({ 5: 360 }), months({}, 30), EVERYDAY_PRIOR, null)),
    ).toEqual([0.5, 0.5, 0.5, 0.5, 2, 3.5, 2, 0.5, 0.5, 0.5, 0.5, 0.5]);
  });

  it('goes round the turn of the year', () => {
    expect(
      rounded(seasonProfile(months({ 0: 360 }), months({}, 30), EVERYDAY_PRIOR, null)),
    ).toEqual([3.5, 2, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 2]);
  });

  // smoothing leaves (1 + cos 30 degrees)/2 = 0.933013 of the swing
  it.each([
    { hemisphere: 'N' as const, most: 6, least: 0 },
    { hemisphere: 'S' as const, most: 0, least: 6 },
  ])(
    'is the prior alone without use: $hemisphere peaks in month $most',
    ({ hemisphere, most, least }) => {
      for (const days of [0, 30]) {
        const profile = seasonProfile(months({}), months({}, days), OCCASION_PRIOR, hemisphere);
        expect(profile[most]).toBeCloseTo(1 + 0.6 * 0.9330127, 7);
        expect(profile[least]).toBeCloseTo(1 - 0.6 * 0.9330127, 7);
        expect(profile[3]).toBeCloseTo(1, 12);
      }
    },
  );

  it('is flat where nobody knows the hemisphere and nothing was used', () => {
    expect(rounded(seasonProfile(months({}), months({}, 30), OCCASION_PRIOR, null))).toEqual(
      Array(12).fill(1),
    );
  });

  // 31 days of July with 62 km: as much a day as the prior expects of any level
  it('stays with the prior for months that were never seen', () => {
    const prior = seasonProfile(months({}), months({}), EVERYDAY_PRIOR, 'N');
    const seen = seasonProfile(months({ 6: 62 }), months({ 6: 31 }), EVERYDAY_PRIOR, 'N');
    expect(rounded(seen)).toEqual(rounded(prior));
  });

  it('does not depend on the unit', () => {
    const use = months({ 3: 40, 6: 120, 7: 10 });
    const days = months({ 3: 30, 6: 31, 7: 31, 11: 14 });
    const one = seasonProfile(use, days, OCCASION_PRIOR, 'N');
    const other = seasonProfile(
      use.map((it) => it * 1.609344),
      days,
      OCCASION_PRIOR,
      'N',
    );
    expect(rounded(other)).toEqual(rounded(one));
  });
});
