import { BRAKE_FLUIDS, boilingTest, NEW_FLUID_MINIMA } from '@quartermark/engine/fluids';
import { celsius } from '@quartermark/engine/units';
import { expect, test } from 'vitest';
import figures from './data/brake-fluid.json' with { type: 'json' };

/** Sources stand in the data file beside the figures. */
const rows = figures.rows.map((row) => ({
  ...row,
  fluid: row.fluid as (typeof BRAKE_FLUIDS)[number],
}));

test('BRAKE_FLUIDS are those of the rule', () => {
  expect(rows.map(({ fluid }) => fluid)).toEqual([...BRAKE_FLUIDS]);
});

test.each(rows)('NEW_FLUID_MINIMA of $fluid are those of the rule, in both degrees', (row) => {
  expect(NEW_FLUID_MINIMA[row.fluid]).toEqual({ dryC: row.dryC, wetC: row.wetC });
  // printed in whole degrees Fahrenheit
  expect(Math.abs(celsius(row.dryF, 'f') - row.dryC)).toBeLessThan(0.6);
  expect(Math.abs(celsius(row.wetF, 'f') - row.wetC)).toBeLessThan(0.6);
});

test.each(rows)('boilingTest() of $fluid turns at its minima', ({ fluid, dryC, wetC }) => {
  const where = (boilingC: number) => boilingTest(fluid, boilingC).where;
  expect([dryC, dryC - 1, wetC, wetC - 1].map(where)).toEqual([
    'asNew',
    'between',
    'between',
    'belowWet',
  ]);
});
