import { addDays } from '@quartermark/engine/calendar';
import type { EntryDraft, GearDraft, ItemDraft } from '@quartermark/engine/log';
import { gearEntryId, gearId, gearItemId } from './record-id.ts';
import type { SeedGear, SeedStep } from './seed-garage.ts';

type Bare<T> = T extends unknown ? Omit<T, 'id' | 'on' | 'zone'> : never;

/** An entry about gear: on some day at some time, about a piece, a car or both. */
export type GearEntry = Bare<EntryDraft> & { day: number };

/**
 * Steps of the garage's own book, in order of day and time.
 *
 * @param first number of the first record; the rest follow in the order given
 */
export function gearSteps(
  day: string,
  zone: string,
  first: number,
  entries: readonly GearEntry[],
): SeedStep[] {
  return entries
    .map(({ day: offset, ...entry }, index) => ({
      at: `${addDays(day, offset)} ${entry.time ?? '12:00'}`,
      step: {
        entry: {
          ...entry,
          id: gearEntryId(first + index),
          on: addDays(day, offset),
          zone,
        } as EntryDraft,
      },
    }))
    .toSorted((a, b) => a.at.localeCompare(b.at))
    .map(({ step }) => step);
}

export function pieceOf(
  key: string,
  number: number,
  gear: GearDraft,
  items: readonly ItemDraft[] = [],
): SeedGear {
  return {
    key,
    id: gearId(number),
    gear,
    items: items.map((item, index) => ({ id: gearItemId(number, index + 1), item })),
  };
}
