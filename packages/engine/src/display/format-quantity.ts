import type { AmountMeasure } from '../log/item.ts';
import { type DistanceUnit, KM_PER_UNIT, LITRES_PER_UNIT, type VolumeUnit } from '../log/units.ts';
import { formatNumber } from './format-number.ts';

const VOLUME_NAME: Record<VolumeUnit, string> = {
  l: 'L',
  ml: 'ml',
  usQt: 'US qt',
  usGal: 'US gal',
  impQt: 'imp qt',
  impGal: 'imp gal',
};

/** The sign of a unit of volume. @example volumeSign('usQt') // "US qt" */
export function volumeSign(unit: VolumeUnit): string {
  return VOLUME_NAME[unit];
}

/**
 * A distance in the reader's unit, whole from 10 upwards, one decimal below.
 *
 * @param km kilometres, any finite number
 * @example formatDistance(16093.44, 'mi') // "10,000 mi"
 */
export function formatDistance(km: number, unit: DistanceUnit): string {
  const value = km / KM_PER_UNIT[unit];
  return `${formatNumber(value, Math.abs(value) < 9.95 ? 1 : 0)} ${unit}`;
}

/** Hours with at most one decimal. @example formatHours(18.25) // "18.3 h" */
export function formatHours(hours: number): string {
  return `${formatNumber(hours, 1)} h`;
}

/**
 * A volume in the reader's unit with at most two decimals (none for millilitres).
 *
 * @param litres litres, any finite number
 * @example formatVolume(0.946352946, 'usQt') // "1 US qt"
 */
export function formatVolume(litres: number, unit: VolumeUnit): string {
  return `${formatNumber(litres / LITRES_PER_UNIT[unit], unit === 'ml' ? 0 : 2)} ${VOLUME_NAME[unit]}`;
}

/** A count with its noun; one decimal where weights made it one. @example formatCount(1, 'session') // "1 session" */
export function formatCount(count: number, singular: string, plural = `${singular}s`): string {
  const text = formatNumber(count, 1);
  return `${text} ${text === '1' ? singular : plural}`;
}

/** An amount of any measure that grows with use, with its unit. @example formatAmount('launches', 3, 'km') // "3 launches" */
export function formatAmount(measure: AmountMeasure, amount: number, unit: DistanceUnit): string {
  switch (measure) {
    case 'km':
      return formatDistance(amount, unit);
    case 'hours':
      return formatHours(amount);
    case 'sessions':
      return formatCount(amount, 'session');
    case 'launches':
      return formatCount(amount, 'launch', 'launches');
  }
}
