import { mostAmount, roughAmount } from '../../display/take-amount.ts';
import type { VolumeUnit } from '../../log/units.ts';
import type { Litres } from './oil-amount.ts';

/** Where the number may be too low, for somebody who packs. */
const WAY_UNKNOWN = 'The way is not counted: nobody said how far it is.';

/**
 * A volume that is likely, and one that is rarely exceeded.
 *
 * @param step to which both are rounded, in the unit
 * @example likelyWords({ likelyL: 1.42, cautiousL: 2.03 }, 'l', 0.1) // "Likely 1.4 L, no more than 2.1 L nine times in ten"
 */
export function likelyWords(
  { likelyL, cautiousL }: Litres,
  unit: VolumeUnit,
  step: number,
): string {
  const most = mostAmount(cautiousL, unit, step);
  return `Likely ${roughAmount(likelyL, unit, step)}, no more than ${most} nine times in ten`;
}

/** That the way is left out where nobody said how far it is; nothing where it is known. */
export function wayWords(wayKm: number | null): string[] {
  return wayKm === null ? [WAY_UNKNOWN] : [];
}
