import { fitFuel, litresFor } from '@quartermark/engine/readiness';
import { expect, test } from 'vitest';
import figures from './data/least-squares.json' with { type: 'json' };

/** Certified fits through the origin; sources stand in the data file beside the figures. */
const sets = Object.entries({ NoInt1: figures.noint1, NoInt2: figures.noint2 });

test.each(sets)('fitFuel() has the certified rate and residuals of %s', (_, set) => {
  const stretches = set.x.map((km, at) => ({ roadKm: km, hardKm: 0, litres: set.y[at] ?? 0 }));
  const fit = fitFuel(stretches);
  if (fit === null) throw new Error('no fit');
  const [coefficient = 0] = set.coefficients;
  const [deviation = 0] = set.standardDeviations;
  expect(Math.abs((fit.rates.roadKm ?? 0) / coefficient - 1)).toBeLessThan(1e-13);
  expect(Math.abs(Math.sqrt(fit.varianceL2) / set.residualStandardDeviation - 1)).toBeLessThan(
    1e-9,
  );
  expect(fit.degrees).toBe(set.degreesOfFreedom);
  // beyond the scatter of its own length, what is unsure of a drive is the certified deviation of the rate
  const km = 1000 * fit.meanKm;
  const { likelyL, cautiousL } = litresFor(fit, { roadKm: km, hardKm: 0 });
  const student = { 2: 1.8856180832, 10: 1.3721836411 }[fit.degrees] ?? 0;
  const own = fit.varianceL2 * 1000;
  const found = Math.sqrt(((cautiousL - likelyL) / student) ** 2 - own) / km;
  expect(Math.abs(found / deviation - 1)).toBeLessThan(2e-3);
});
