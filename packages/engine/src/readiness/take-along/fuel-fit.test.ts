import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seededNumbers } from '../../../test/seeded-numbers.ts';
import { fitFuel, isTold, litresFor, type Stretch, student90 } from './fuel-fit.ts';

const stretch = (roadKm: number, hardKm: number, litres: number): Stretch => ({
  roadKm,
  hardKm,
  litres,
});
/** 9 L and 40 L on 100 km. */
const exact = [
  [400, 0],
  [250, 80],
  [500, 0],
  [100, 200],
  [300, 40],
].map(([road = 0, hard = 0]) => stretch(road, hard, 0.09 * road + 0.4 * hard));

describe('fitFuel()', () => {
  test('fitFuel() finds what the stretches were made of, and is then sure of it', () => {
    const fit = fitFuel(exact);
    expect(fit?.rates.roadKm).toBeCloseTo(0.09, 12);
    expect(fit?.rates.hardKm).toBeCloseTo(0.4, 12);
    expect(fit).toMatchObject({ degrees: 3, meanKm: 374 });
    const litres = fit && litresFor(fit, { roadKm: 200, hardKm: 100 });
    expect(litres?.likelyL).toBeCloseTo(58, 9);
    expect(litres?.cautiousL).toBeCloseTo(58, 6);
  });

  test('fitFuel() leaves the residuals at right angles to what was driven', () => {
    const amount = fc.integer({ min: 1, max: 600 });
    const stretches = fc.array(fc.tuple(amount, amount, amount), { minLength: 4, maxLength: 12 });
    fc.assert(
      fc.property(stretches, (all) => {
        const those = all.map(([road, hard, litres]) => stretch(road, hard, litres));
        const fit = fitFuel(those);
        if (fit === null) return;
        for (const key of ['roadKm', 'hardKm'] as const) {
          const rate = fit.rates[key];
          const along = those.reduce((sum, one) => {
            const { roadKm = 0, hardKm = 0 } = fit.rates;
            return sum + one[key] * (one.litres - roadKm * one.roadKm - hardKm * one.hardKm);
          }, 0);
          if (rate === undefined) expect(along).toBeLessThan(1e-6 * 600 ** 2 * all.length);
          else expect(Math.abs(along)).toBeLessThan(1e-6 * 600 ** 2 * all.length);
          expect(rate ?? 1).toBeGreaterThan(0);
        }
      }),
    );
  });

  test('fitFuel() says nothing of a class that was never driven, or would give fuel back', () => {
    const road = fitFuel([stretch(400, 0, 36), stretch(500, 0, 44), stretch(300, 0, 28)]);
    expect(road?.rates).toEqual({ roadKm: expect.closeTo(44_800 / 500_000, 12) });
    const back = fitFuel([stretch(400, 0, 40), stretch(300, 100, 20), stretch(500, 50, 40)]);
    expect(back?.rates.hardKm).toBeUndefined();
    expect(back?.rates.roadKm).toBeCloseTo(42_000 / 500_000, 12);
    expect(back?.degrees).toBe(2);
  });

  test('fitFuel() tells no classes apart that always came in the same proportion', () => {
    const same = [1, 2, 3, 4].map((n) => stretch(100 * n, 50 * n, 30 * n));
    expect(fitFuel(same)).toBeNull();
    const nearly = same.map((one, at) => ({ ...one, hardKm: one.hardKm + (at % 2) / 10 }));
    expect(fitFuel(nearly)).toBeNull();
    expect(fitFuel([])).toBeNull();
    expect(fitFuel(exact.slice(0, 2))).toBeNull();
  });
});

describe('isTold()', () => {
  test('isTold() asks of a rate that it stands out from its standard error three times over', () => {
    // rate 0.1; left over +-d on two of four equal stretches: s^2 = 4 d^2 / 3, se = s / 200
    const scattered = (d: number) =>
      fitFuel([
        stretch(100, 0, 10 + d),
        stretch(100, 0, 10 - d),
        stretch(100, 0, 10 + d),
        stretch(100, 0, 10 - d),
      ]);
    const standsOutAt = (200 * 0.1) / 3 / Math.sqrt(4 / 3);
    const told = (d: number) => {
      const fit = scattered(d);
      return fit && isTold(fit, 'roadKm');
    };
    expect(told(standsOutAt - 0.01)).toBe(true);
    expect(told(standsOutAt + 0.01)).toBe(false);
    const fit = scattered(1);
    expect(fit && isTold(fit, 'hardKm')).toBe(false);
  });

  test('isTold() takes no few kilometres of autocross for a rate of hard use', () => {
    const noisy = [
      [561, 5, 37],
      [364, 5, 36],
      [432, 0, 27],
      [922, 6, 68],
      [425, 6, 32],
      [534, 0, 28],
      [463, 0, 34],
      [486, 5, 59],
    ].map(([road = 0, hard = 0, litres = 0]) => stretch(road, hard, litres));
    const fit = fitFuel(noisy);
    expect(fit?.rates.hardKm).toBeGreaterThan(1);
    expect(fit && [isTold(fit, 'roadKm'), isTold(fit, 'hardKm')]).toEqual([true, false]);
  });
});

describe('litresFor()', () => {
  test('litresFor() widens by Student’s t for the drive’s own length and for unsure rates', () => {
    const fit = fitFuel([
      stretch(400, 0, 36),
      stretch(500, 0, 44),
      stretch(300, 0, 28),
      stretch(400, 0, 35),
    ]);
    if (fit === null) throw new Error('no fit');
    const rate = (400 * 36 + 500 * 44 + 300 * 28 + 400 * 35) / 660_000;
    const left = [36 - 400 * rate, 44 - 500 * rate, 28 - 300 * rate, 35 - 400 * rate];
    const s2 = left.reduce((sum, one) => sum + one * one, 0) / 3;
    const wide = (km: number, long: number) => 1.638 * Math.sqrt(s2 * (long + km ** 2 / 660_000));
    const short = litresFor(fit, { roadKm: 100, hardKm: 0 });
    expect(short.cautiousL - short.likelyL).toBeCloseTo(wide(100, 1), 2);
    const turned = fitFuel(fit.stretches.map((one) => stretch(0, one.roadKm, one.litres)));
    expect(turned && litresFor(turned, { roadKm: 0, hardKm: 100 })).toEqual(short);
    const far = litresFor(fit, { roadKm: 1600, hardKm: 0 });
    expect(far.cautiousL - far.likelyL).toBeCloseTo(wide(1600, 4), 2);
  });

  test('litresFor() is enough about nine times in ten where its model holds', () => {
    const next = seededNumbers(7);
    const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
    const make = (roadKm: number, hardKm: number) =>
      stretch(roadKm, hardKm, 0.09 * roadKm + 0.4 * hardKm + 3 * normal());
    let enough = 0;
    const cases = 2000;
    for (let at = 0; at < cases; at += 1) {
      const past = [make(400, 0), make(250, 80), make(450, 0), make(150, 150), make(350, 40)];
      const fit = fitFuel(past);
      const really = make(150, 150).litres;
      if (fit && really <= litresFor(fit, { roadKm: 150, hardKm: 150 }).cautiousL) enough += 1;
    }
    // three standard deviations of 2,000
    expect(Math.abs(enough / cases - 0.9)).toBeLessThan(3 * Math.sqrt(0.09 / cases));
  });
});

test('student90() has the first degrees of a printed table, and the series after them', () => {
  const table = [3.078, 1.886, 1.638, 1.533, 1.476, 1.44];
  for (const [at, t] of table.entries()) expect(student90(at + 1)).toBeCloseTo(t, 2);
});
