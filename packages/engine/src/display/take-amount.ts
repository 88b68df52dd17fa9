import { LITRES_PER_UNIT, type VolumeUnit } from '../log/units.ts';
import { formatVolume } from './format-quantity.ts';

/** To what amounts that are taken along are rounded, in their unit: oil is poured by tenths. */
export const TAKE_STEP = { oil: 0.1, fuel: 1 } as const;

/** Fuel is bought in gallons where oil is in quarts. @example fuelUnit('usQt') // "usGal" */
export function fuelUnit(unit: VolumeUnit): VolumeUnit {
  if (unit === 'usQt') return 'usGal';
  return unit === 'impQt' ? 'impGal' : unit;
}

/** A likely volume, to the nearest step. @example roughAmount(0.02, 'l', 0.1) // "less than 0.1 L" */
export function roughAmount(litres: number, unit: VolumeUnit, step: number): string {
  const steps = Math.round(litres / LITRES_PER_UNIT[unit] / step);
  const words = formatVolume(Math.max(1, steps) * step * LITRES_PER_UNIT[unit], unit);
  return steps < 1 ? `less than ${words}` : words;
}

/** A volume that is seldom exceeded, rounded up, so that it stays so. @example mostAmount(2.03, 'l', 0.1) // "2.1 L" */
export function mostAmount(litres: number, unit: VolumeUnit, step: number): string {
  const steps = Math.ceil(roundOff(litres / LITRES_PER_UNIT[unit] / step));
  return formatVolume(steps * step * LITRES_PER_UNIT[unit], unit);
}

/** Divisions leave a trace that rounding up would take for a step more. */
const roundOff = (value: number) => Math.round(value * 1e6) / 1e6;
