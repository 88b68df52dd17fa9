import { AIR_TEMPERATURE, DEW_POINT, STATION_PRESSURE, within } from './within.ts';

/** The air of a place: K and Pa. `pressurePa` is that of the place, not the one reduced to sea level. */
export type MoistAir = { temperatureK: number; pressurePa: number; dewPointK: number };

const ZERO_CELSIUS_K = 273.15;
/** of the formula of the National Weather Service: Pa, K */
const AT_ZERO_PA = 611;
const SLOPE = 7.5;
const OFFSET_K = 237.7;

/**
 * Checks air that somebody gave.
 *
 * @throws RangeError outside 180 to 335 K or 40 to 110 kPa, and for a dew point above the temperature
 */
export function checkedAir(air: MoistAir): MoistAir {
  const temperatureK = within(air.temperatureK, AIR_TEMPERATURE);
  const pressurePa = within(air.pressurePa, STATION_PRESSURE);
  const dewPointK = within(air.dewPointK, { ...DEW_POINT, to: temperatureK });
  return { temperatureK, pressurePa, dewPointK };
}

/**
 * Pressure of the water vapour in air, Pa: e = 6.11 hPa x 10^(7.5 Td / (237.7 + Td)), Td in C.
 *
 * @param dewPointK K, 180 to 335
 * @throws RangeError outside
 * Source: National Weather Service, density altitude sheet.
 * @example vapourPressurePa(293.15) // 2334.07
 */
export function vapourPressurePa(dewPointK: number): number {
  const celsius = within(dewPointK, DEW_POINT) - ZERO_CELSIUS_K;
  return AT_ZERO_PA * 10 ** ((SLOPE * celsius) / (OFFSET_K + celsius));
}

/**
 * Dew point of air whose relative humidity is known, by the same formula turned round.
 *
 * @param temperatureK K
 * @param relativeHumidity 0.01 to 1
 * @throws RangeError outside
 * @example dewPointOf(303.15, 1) // 303.15
 */
export function dewPointOf(temperatureK: number, relativeHumidity: number): number {
  const share = within(relativeHumidity, {
    what: 'relative humidity',
    unit: '(1 is saturated)',
    from: 0.01,
    to: 1,
    give: 'a share, so that 45 % is 0.45',
  });
  const vapour = share * vapourPressurePa(within(temperatureK, AIR_TEMPERATURE));
  const power = Math.log10(vapour / AT_ZERO_PA);
  return ZERO_CELSIUS_K + (OFFSET_K * power) / (SLOPE - power);
}

/** Pressure of the air without its water vapour, Pa. @throws RangeError as `checkedAir()` */
export function dryPressurePa(air: MoistAir): number {
  const { pressurePa, dewPointK } = checkedAir(air);
  return pressurePa - vapourPressurePa(dewPointK);
}
