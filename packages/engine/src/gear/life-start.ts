import { parseDay } from '../calendar/day-number.ts';
import type { GearInput } from '../log/gear.ts';
import type { FitEntry } from './fit-windows.ts';
import { type Merged, startOfDay } from './merge-timelines.ts';

/** Where a component's life begins, new. */
export type LifeStart = { position: number; day: number; on: string };

/**
 * When the component was new, at or before a place: at the last fit that says so, since what came
 * before belonged to the part it replaced; else, for a part that came new and whose first fit does not
 * say otherwise, on the day it has been here since or at that first fit, whichever is earlier.
 *
 * @param fits in order
 * @param upTo a place in the merged timeline
 * @returns null for a part whose earlier life nobody knows
 */
export function lifeStart(
  gear: GearInput,
  fits: readonly FitEntry[],
  { timeline, places }: Merged,
  upTo: number,
): LifeStart | null {
  const placeOf = ({ id }: FitEntry) => places.get(id) ?? Number.POSITIVE_INFINITY;
  const at = (fit: FitEntry): LifeStart => ({
    position: placeOf(fit),
    day: parseDay(fit.on),
    on: fit.on,
  });
  const madeNew = fits.findLast(
    (fit) => fit.condition === 'new' && fit.change !== 'off' && placeOf(fit) <= upTo,
  );
  const first = fits[0];
  const own = cameNew(gear, first);
  const since = own && gear.kind === 'component' ? gear.since : undefined;
  const bySince =
    since === undefined || (first !== undefined && first.on < since)
      ? null
      : { position: startOfDay(timeline, since), day: parseDay(since), on: since };
  if (madeNew !== undefined && (madeNew !== first || bySince === null)) return at(madeNew);
  if (!own) return null;
  return bySince ?? (first === undefined ? null : at(first));
}

/** It came new and was first fitted as such: a part first heard of when it moved or came off was not. */
function cameNew(gear: GearInput, first: FitEntry | undefined): boolean {
  if (gear.kind !== 'component' || gear.condition !== 'new') return false;
  return first === undefined || (first.change === 'on' && first.condition !== 'used');
}
