import { checkedAir, type MoistAir, vapourPressurePa } from './moist-air.ts';

const METRES_PER_FOOT = 0.3048;
/** Pa of one inch of mercury, conventional. */
const PASCALS_PER_INCH = 3386.389;
/** of the formula of the National Weather Service: ft, Rankine per inHg */
const SCALE_FT = 145_366;
const RANKINE_PER_INCH = 17.326;
const EXPONENT = 0.235;
/** Molar mass of water over that of dry air, as the sheet has it. */
const WATER_OVER_AIR = 0.622;

/**
 * Density altitude: how high the standard atmosphere is as thin as this air, m.
 *
 * Virtual temperature Tv = T / (1 - (e/p)(1 - 0.622)); with R = 1.8 Tv in degrees Rankine and P in inHg,
 * DA = 145,366 ft x (1 - (17.326 P / R)^0.235). Some tens of feet above what the density itself gives.
 *
 * @param air of the place: K, Pa (not reduced to sea level), dew point in K
 * @throws RangeError for air that is none, see `checkedAir()`
 * Source: National Weather Service, density altitude sheet.
 * @example densityAltitudeM({ temperatureK: 303.15, pressurePa: 100_000, dewPointK: 293.15 }) // 757
 */
export function densityAltitudeM(air: MoistAir): number {
  const { temperatureK, pressurePa, dewPointK } = checkedAir(air);
  const vapourShare = vapourPressurePa(dewPointK) / pressurePa;
  const virtualK = temperatureK / (1 - vapourShare * (1 - WATER_OVER_AIR));
  // the sheet goes from C to F and adds 459.69, so its zero is 0.02 degrees off
  const rankine = 1.8 * (virtualK - 273.15) + 32 + 459.69;
  const inches = pressurePa / PASCALS_PER_INCH;
  return SCALE_FT * (1 - ((RANKINE_PER_INCH * inches) / rankine) ** EXPONENT) * METRES_PER_FOOT;
}
