import {
  densityAltitudeM,
  dewPointOf,
  geopotentialM,
  powerFactor,
  standardAir,
  stationPressurePa,
  vapourPressurePa,
} from '@quartermark/engine/air';
import { celsius } from '@quartermark/engine/units';
import { describe, expect, test } from 'vitest';
import altitudes from './data/density-altitude.json' with { type: 'json' };
import corrections from './data/power-correction.json' with { type: 'json' };
import atmosphere from './data/standard-atmosphere.json' with { type: 'json' };

/** Sources stand in the data files beside the figures. */
const FOOT_M = 0.3048;
const kelvin = (degrees: number) => degrees + 273.15;
/** As good as dry: 0.03 Pa of vapour. */
const DRY_K = 200;

describe('density altitude', () => {
  const rows = altitudes.rows.map((row) => {
    const air = {
      temperatureK: kelvin(row.T_C),
      pressurePa: 100 * row.p_hPa,
      dewPointK: kelvin(row.Td_C),
    };
    return { ...row, air };
  });

  test.each(rows)('densityAltitudeM() of $T_C C, $p_hPa hPa is $DA_ft ft by the sheet', (row) => {
    // 0.1 ft: how many pascals an inch of mercury has is agreed on to six digits
    expect(Math.abs(densityAltitudeM(row.air) / FOOT_M - row.DA_ft)).toBeLessThan(0.1);
    expect(vapourPressurePa(row.air.dewPointK) / 100).toBeCloseTo(row.e_hPa, 9);
  });

  test.each(rows)('densityAltitudeM() of $T_C C, $p_hPa hPa is where the air is as thin', (row) => {
    const height = densityAltitudeM(row.air);
    const thin = standardAir(row.DA_ft_fromMoistDensity * FOOT_M).densityKgM3;
    expect(thin).toBeCloseTo(row.moistDensity_kgm3, 4);
    // the sheet's formula lies 14 to 19 ft above the density
    const above = height / FOOT_M - row.DA_ft_fromMoistDensity;
    expect(above).toBeGreaterThan(13);
    expect(above).toBeLessThan(20);
  });

  test('densityAltitudeM() agrees with a pilot’s rule of thumb to 50 ft', () => {
    const { pressureAltitudeFt, airC, densityAltitudeFt } = altitudes.ruleOfThumb;
    const { pressurePa } = standardAir(pressureAltitudeFt * FOOT_M);
    const air = { temperatureK: kelvin(airC), pressurePa, dewPointK: DRY_K };
    expect(Math.abs(densityAltitudeM(air) / FOOT_M - densityAltitudeFt)).toBeLessThan(50);
  });

  test.each(Object.entries(altitudes.saturation.Pa))(
    'vapourPressurePa() at %s C is within 0.6 %% of the saturation table',
    (degrees, pascals) => {
      const found = vapourPressurePa(kelvin(Number(degrees)));
      expect(Math.abs(found / pascals - 1)).toBeLessThan(0.006);
    },
  );

  test('dewPointOf() undoes vapourPressurePa()', () => {
    const half = vapourPressurePa(dewPointOf(kelvin(30), 0.5)) / vapourPressurePa(kelvin(30));
    expect(half).toBeCloseTo(0.5, 12);
    expect(dewPointOf(kelvin(30), 1)).toBeCloseTo(kelvin(30), 9);
  });
});

describe('standard atmosphere', () => {
  test.each(atmosphere.publishedRows)('standardAir() at $geometric_m m is as published', (row) => {
    const found = standardAir(geopotentialM(row.geometric_m));
    // the table's own rounding, to six digits
    expect(Math.abs(found.temperatureK - row.T_K)).toBeLessThan(0.002);
    expect(Math.abs(found.pressurePa / row.p_Pa - 1)).toBeLessThan(3e-5);
    expect(Math.abs(found.densityKgM3 / row.rho_kgm3 - 1)).toBeLessThan(3e-5);
    expect(Math.abs(geopotentialM(row.geometric_m) - row.geopotential_m)).toBeLessThan(0.6);
  });

  test.each(atmosphere.computedRows)(
    'standardAir() at $H_m m is what the constants give',
    (row) => {
      const found = standardAir(row.H_m);
      expect(found.temperatureK).toBeCloseTo(row.T_K, 9);
      expect(Math.abs(found.pressurePa / row.p_Pa - 1)).toBeLessThan(1e-12);
      expect(Math.abs(found.densityKgM3 / row.rho_kgm3 - 1)).toBeLessThan(1e-12);
    },
  );

  test.each(Object.entries(atmosphere.ashrae.pressure_Pa))(
    'standardAir() at %s m has the whole pascals of ASHRAE',
    (metres, pascals) => {
      const found = standardAir(Number(metres));
      expect(Math.abs(found.pressurePa - pascals)).toBeLessThan(1);
      const { temperature_C } = atmosphere.ashrae;
      const degrees = temperature_C[metres as keyof typeof temperature_C];
      expect(Math.abs(found.temperatureK - kelvin(degrees))).toBeLessThan(0.051);
    },
  );

  test('stationPressurePa() is the standard atmosphere on a standard day, and moves with the report', () => {
    for (const { H_m, p_Pa } of atmosphere.computedRows.filter(
      (row) => row.H_m >= -250 && row.H_m <= 5000,
    ))
      expect(Math.abs(stationPressurePa(101_325, H_m) / p_Pa - 1)).toBeLessThan(1e-9);
    expect(stationPressurePa(99_000, 0)).toBeCloseTo(99_000, 6);
    expect(stationPressurePa(102_000, 1500)).toBeGreaterThan(stationPressurePa(101_325, 1500));
  });
});

describe('SAE J1349', () => {
  const airOf = (airC: number, dryHpa: number) => {
    const vapour = vapourPressurePa(DRY_K);
    return { temperatureK: kelvin(airC), pressurePa: 100 * dryHpa + vapour, dewPointK: DRY_K };
  };

  test.each(corrections.rows)('powerFactor() of $airC C and $dryHpa hPa dry is $factor', (row) => {
    expect(powerFactor(airOf(row.airC, row.dryHpa)).factor).toBeCloseTo(row.factor, 9);
  });

  test('powerFactor() is 1 at the reference in Fahrenheit too, and not by the misprinted constant', () => {
    const { referenceF, referenceInHg, constant, misprinted } = corrections.fahrenheit;
    const inFahrenheit = (degrees: number, inches: number, of: number) =>
      1.18 * (referenceInHg / inches) * Math.sqrt((degrees + 460) / of) - 0.18;
    const ours = (degrees: number, inches: number) =>
      powerFactor(airOf(celsius(degrees, 'f'), inches * 33.86389)).factor;
    expect(ours(referenceF, referenceInHg)).toBeCloseTo(1, 3);
    for (const [degrees, inches] of [
      [60, 29.9],
      [77, 29.23],
      [95, 27.5],
    ] as const) {
      expect(
        Math.abs(ours(degrees, inches) - inFahrenheit(degrees, inches, constant)),
      ).toBeLessThan(0.001);
      expect(inFahrenheit(degrees, inches, misprinted) - ours(degrees, inches)).toBeGreaterThan(
        0.03,
      );
    }
  });
});
