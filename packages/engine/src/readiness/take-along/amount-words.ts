import { formatVolume } from '../../display/format-quantity.ts';
import { LITRES_PER_UNIT, type VolumeUnit } from '../../log/units.ts';

/** Where the number may be too low, for somebody who packs. */
const WAY_UNKNOWN = 'The way is not counted: nobody said how far it is.';

/**
 * A volume that is likely, and one that is rarely exceeded, rounded so that neither claims too much: the
 * likely one to the nearest step, the other up.
 *
 * @param step of the unit, as 0.1
 * @example likelyWords({ likelyL: 1.42, cautiousL: 2.03 }, 'l', 0.1) // "Likely 1.4 L, no more than 2.1 L nine times in ten"
 */
export function likelyWords(
  { likelyL, cautiousL }: { likelyL: number; cautiousL: number },
  unit: VolumeUnit,
  step: number,
): string {
  const most = Math.ceil(roundOff(cautiousL / LITRES_PER_UNIT[unit] / step)) * step;
  const words = formatVolume(most * LITRES_PER_UNIT[unit], unit);
  return `Likely ${roughWords(likelyL, unit, step)}, no more than ${words} nine times in ten`;
}

/** @example roughWords(0.02, 'l', 0.1) // "less than 0.1 L" */
export function roughWords(litres: number, unit: VolumeUnit, step: number): string {
  const steps = Math.round(litres / LITRES_PER_UNIT[unit] / step);
  const words = formatVolume(Math.max(1, steps) * step * LITRES_PER_UNIT[unit], unit);
  return steps < 1 ? `less than ${words}` : words;
}

/** That the way is left out where nobody said how far it is; nothing where it is known. */
export function wayWords(wayKm: number | null): string[] {
  return wayKm === null ? [WAY_UNKNOWN] : [];
}

/** Divisions leave a trace that rounding up would take for a step more. */
const roundOff = (value: number) => Math.round(value * 1e6) / 1e6;
