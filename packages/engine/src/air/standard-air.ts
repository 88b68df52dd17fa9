import { within } from './within.ts';

/** Air at rest: K, Pa, kg/m3. */
export type StandardAir = { temperatureK: number; pressurePa: number; densityKgM3: number };

/** Defining constants: K, Pa, K/m, m/s2, J/(kg K), m. */
const SEA_LEVEL_K = 288.15;
const SEA_LEVEL_PA = 101_325;
const LAPSE_K_M = -0.0065;
const GRAVITY = 9.80665;
const GAS_CONSTANT = 287.05287;
const EARTH_RADIUS_M = 6_356_766;
const TROPOPAUSE_M = 11_000;
const LOWEST_M = -5004;
const HIGHEST_M = 20_000;

/**
 * The standard atmosphere at a geopotential altitude.
 *
 * Up to 11,000 m T = 288.15 - 0.0065 H and p = p0 (T/T0)^(-g/(L R)); above that T stays and
 * p = p11 exp(-g (H - 11,000)/(R T)). Density = p / (R T).
 *
 * @param geopotentialM m, -5,004 to 20,000
 * @throws RangeError outside
 * Source: ICAO Doc 7488/3 (1993); U.S. Standard Atmosphere, 1976, the same up to 32 km.
 * @example standardAir(1000) // { temperatureK: 281.65, pressurePa: 89874.6, densityKgM3: 1.11164 }
 */
export function standardAir(geopotentialM: number): StandardAir {
  const altitudeM = within(geopotentialM, {
    what: 'altitude',
    unit: 'm',
    from: LOWEST_M,
    to: HIGHEST_M,
    give: 'metres above sea level, 1 ft is 0.3048 m',
  });
  const low = Math.min(altitudeM, TROPOPAUSE_M);
  const temperatureK = SEA_LEVEL_K + LAPSE_K_M * low;
  const belowPa = SEA_LEVEL_PA * (temperatureK / SEA_LEVEL_K) ** EXPONENT;
  const fall = (-GRAVITY * (altitudeM - low)) / (GAS_CONSTANT * temperatureK);
  const pressurePa = belowPa * Math.exp(fall);
  return { temperatureK, pressurePa, densityKgM3: pressurePa / (GAS_CONSTANT * temperatureK) };
}

const EXPONENT = -GRAVITY / (LAPSE_K_M * GAS_CONSTANT);

/** Geopotential altitude of a height above sea level: r H / (r + H), both m. @example geopotentialM(11_019) // 11,000 */
export function geopotentialM(heightM: number): number {
  return (EARTH_RADIUS_M * heightM) / (EARTH_RADIUS_M + heightM);
}

/**
 * Pressure of a place, from the one that weather reports give for it reduced to sea level (QNH), Pa: the
 * standard atmosphere laid so that its sea level has the reported pressure.
 *
 * @param seaLevelPa 87,000 to 110,000 Pa
 * @param altitudeM of the place, -450 to 5,000 m
 * @throws RangeError outside
 * Source: the definition of the altimeter setting, ICAO Doc 7488/3 for the atmosphere.
 * @example stationPressurePa(101_325, 1000) // 89874.6
 */
export function stationPressurePa(seaLevelPa: number, altitudeM: number): number {
  const reported = within(seaLevelPa, {
    what: 'air pressure at sea level',
    unit: 'Pa',
    from: 87_000,
    to: 110_000,
    give: 'what the weather report says, 1 hPa is 100 Pa',
  });
  const place = within(altitudeM, {
    what: 'altitude',
    unit: 'm',
    from: -450,
    to: 5000,
    give: 'metres of the place above sea level, 1 ft is 0.3048 m',
  });
  const asHighM = (SEA_LEVEL_K / LAPSE_K_M) * ((reported / SEA_LEVEL_PA) ** (1 / EXPONENT) - 1);
  return standardAir(asHighM + place).pressurePa;
}
