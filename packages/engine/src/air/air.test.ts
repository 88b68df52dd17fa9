import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { densityAltitudeM } from './density-altitude.ts';
import { dewPointOf, dryPressurePa, vapourPressurePa } from './moist-air.ts';
import { powerFactor } from './power-factor.ts';
import { geopotentialM, standardAir, stationPressurePa } from './standard-air.ts';

const air = (celsius: number, hPa: number, dew = -40) => ({
  temperatureK: 273.15 + celsius,
  pressurePa: 100 * hPa,
  dewPointK: 273.15 + dew,
});
const someAir = fc
  .record({
    celsius: fc.integer({ min: -20, max: 45 }),
    hPa: fc.integer({ min: 700, max: 1040 }),
    below: fc.integer({ min: 1, max: 30 }),
  })
  .map(({ celsius, hPa, below }) => air(celsius, hPa, celsius - below));

describe('densityAltitudeM() and powerFactor()', () => {
  test('densityAltitudeM() and powerFactor() rise with heat, damp and height', () => {
    fc.assert(
      fc.property(someAir, (one) => {
        const thinner = [
          { ...one, temperatureK: one.temperatureK + 3 },
          { ...one, dewPointK: one.dewPointK + 1 },
          { ...one, pressurePa: one.pressurePa - 500 },
        ];
        for (const other of thinner) {
          expect(densityAltitudeM(other)).toBeGreaterThan(densityAltitudeM(one));
          expect(powerFactor(other).factor).toBeGreaterThan(powerFactor(one).factor);
        }
        expect(dryPressurePa(one)).toBeLessThan(one.pressurePa);
      }),
    );
  });

  test('powerFactor() says where it is no more than a hint, and always that it is not for boost', () => {
    const inside = powerFactor(air(25, 990));
    expect(inside).toMatchObject({ inRange: true, notes: [expect.stringMatching(/turbocharger/)] });
    for (const outside of [air(14.9, 990), air(35.1, 990), air(25, 899), air(25, 1051)]) {
      const { inRange, notes } = powerFactor(outside);
      expect(inRange).toBe(false);
      expect(notes).toHaveLength(2);
      expect(notes[1]).toMatch(/no more than a hint/);
    }
    // dry counts: 905 hPa of which 42 are vapour
    expect(powerFactor(air(34, 905, 30)).inRange).toBe(false);
    expect(powerFactor(air(34, 905)).inRange).toBe(true);
  });
});

describe('standardAir()', () => {
  test('standardAir() falls without a step, through the tropopause too', () => {
    fc.assert(
      fc.property(fc.integer({ min: -5000, max: 19_990 }), (metres) => {
        const [low, high] = [standardAir(metres), standardAir(metres + 10)];
        expect(high.pressurePa).toBeLessThan(low.pressurePa);
        expect(high.densityKgM3).toBeLessThan(low.densityKgM3);
        expect(high.pressurePa / low.pressurePa).toBeGreaterThan(0.998);
        expect(high.temperatureK).toBeLessThanOrEqual(low.temperatureK);
      }),
    );
    expect(geopotentialM(11_019)).toBeCloseTo(11_000, 0);
  });
});

describe('what is no air', () => {
  test.each([
    [
      'Celsius for kelvin',
      () => densityAltitudeM({ ...air(20, 990), temperatureK: 20 }),
      /air temperature of 20 K: it should be 180 to 335 K; give the temperature in the shade/,
    ],
    [
      'hectopascals for pascals',
      () => powerFactor({ ...air(20, 990), pressurePa: 990 }),
      /air pressure of 990 Pa.*not the one reduced to sea level/,
    ],
    [
      'a dew point above the air',
      () => densityAltitudeM(air(20, 990, 21)),
      /dew point of 294.15 K.*at most the air temperature/,
    ],
    ['no number', () => vapourPressurePa(Number.NaN), /dew point of NaN/],
    [
      'per cent for a share',
      () => dewPointOf(293.15, 45),
      /relative humidity of 45.*so that 45 % is 0.45/,
    ],
    ['dry as nothing', () => dewPointOf(293.15, 0), /relative humidity of 0/],
    ['feet for metres', () => standardAir(40_000), /altitude of 40000 m.*1 ft is 0.3048 m/],
    [
      'hectopascals at sea level',
      () => stationPressurePa(1013, 0),
      /at sea level of 1013 Pa.*1 hPa is 100 Pa/,
    ],
    ['a place in the clouds', () => stationPressurePa(101_325, 9000), /altitude of 9000 m/],
  ] as const)('is refused with how to mend it: %s', (_, ask, words) => {
    expect(ask).toThrow(RangeError);
    expect(ask).toThrow(words);
  });
});
