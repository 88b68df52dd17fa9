import { LITRES_PER_UNIT, type VolumeUnit } from '../log/units.ts';
import { formatNumber } from './format-number.ts';
import { formatVolume } from './format-quantity.ts';

/** A volume to one decimal: more would claim what a stick cannot show. @example formatRough(0.41, 'l') // "0.4 L" */
export function formatRough(litres: number, unit: VolumeUnit): string {
  const value = litres / LITRES_PER_UNIT[unit];
  if (unit === 'ml') return formatVolume(Math.round(litres * 10) / 10, unit);
  return formatVolume((Math.round(value * 10) / 10) * LITRES_PER_UNIT[unit], unit);
}

/**
 * A number to two digits, at most two decimals, at least one.
 *
 * @param value >= 0
 * @example twoDigits(0.333) // "0.33"
 * @example twoDigits(1.26) // "1.3"
 */
export function twoDigits(value: number): string {
  if (value < 0.005) return '0';
  return formatNumber(value, value < 0.995 ? 2 : 1);
}
