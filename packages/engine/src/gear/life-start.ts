import { parseDay } from '../calendar/day-number.ts';
import type { GearInput } from '../log/gear.ts';
import type { FitEntry } from './fit-windows.ts';
import { type Merged, startOfDay } from './merge-timelines.ts';

/** Where a component's life begins, new. Without a day: it lies new on the shelf, nobody said since when. */
export type LifeStart = { position: number; day: { number: number; on: string } | null };

export type LifeFacts = {
  gear: GearInput;
  asOf: string;
  /** in order */
  fits: readonly FitEntry[];
  merged: Merged;
};

/**
 * When a component was new, at or before a place: at the last fit that says so, since what came before
 * belonged to the part it replaced; else, for a part that came new and whose first fit does not say
 * otherwise, on the day it has been here since or at that first fit, whichever is earlier.
 *
 * @param upTo a place in the merged timeline
 * @returns null for a part whose earlier life nobody knows
 */
export function lifeStart(facts: LifeFacts, upTo = Number.POSITIVE_INFINITY): LifeStart | null {
  const { gear, fits, merged } = facts;
  const madeNew = fits.findLast(
    (fit) =>
      fit.condition === 'new' && fit.change !== 'off' && (merged.places.get(fit.id) ?? 0) <= upTo,
  );
  const first = fits[0];
  const own = cameNew(gear, first);
  const since = own ? sinceOf(facts, first) : null;
  if (madeNew !== undefined && (madeNew !== first || since === null)) return at(madeNew, merged);
  if (!own) return null;
  if (since !== null) return { position: startOfDay(merged.timeline, since), day: dayOf(since) };
  return first === undefined
    ? { position: Number.NEGATIVE_INFINITY, day: null }
    : at(first, merged);
}

function at({ id, on }: FitEntry, { places }: Merged): LifeStart {
  return { position: places.get(id) ?? Number.NEGATIVE_INFINITY, day: dayOf(on) };
}

function dayOf(on: string) {
  return { number: parseDay(on), on };
}

/** The day it has been here since, unless that lies ahead or after its first fit. */
function sinceOf({ gear, asOf }: LifeFacts, first: FitEntry | undefined): string | null {
  const since = gear.kind === 'component' ? gear.since : undefined;
  if (since === undefined || since > asOf) return null;
  return first !== undefined && first.on < since ? null : since;
}

/** It came new and was first fitted as such: a part first heard of when it moved or came off was not. */
function cameNew(gear: GearInput, first: FitEntry | undefined): boolean {
  if (gear.kind !== 'component' || gear.condition !== 'new') return false;
  return first === undefined || (first.change === 'on' && first.condition !== 'used');
}
