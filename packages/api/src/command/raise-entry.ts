import { carsFittedWith, carsWithPartsOf, gearIdOf, tellGarage } from '@quartermark/db';
import { todayIn } from '@quartermark/engine/calendar';
import type { EntryInput } from '@quartermark/engine/log';
import { wantRecompute } from '@quartermark/jobs/outbox';
import type { Writing } from './run-command.ts';

/** The cars that carry the pieces which these entries are about. Ask before and after an entry is written. */
export function carsCarrying(
  { tx, garage, now }: Writing,
  entries: readonly EntryInput[],
): Promise<string[]> {
  const pieces = new Set(entries.flatMap((entry) => gearIdOf(entry) ?? []));
  return carsFittedWith(tx, garage.id, [...pieces], todayIn(now, garage.zone));
}

/**
 * After an entry was written: the figures of its car are counted anew, and of the cars that carry what it
 * is about, or did before it. Those who look on are told.
 *
 * @param carried `carsCarrying()` from before and after
 * @returns the version of the entry's own car; 0 where it has none
 */
export async function raiseEntry(
  writing: Writing,
  carId: string | null,
  carried: readonly string[],
): Promise<number> {
  const { tx, garage, now } = writing;
  const today = todayIn(now, garage.zone);
  const others = carId === null ? [] : await carsWithPartsOf(tx, garage.id, carId, today);
  const cars = new Set([...(carId === null ? [] : [carId]), ...carried, ...others]);
  if (carId === null) await tellGarage(tx, garage.id);
  if (cars.size === 0) return 0;
  const versions = await wantRecompute(tx, garage.id, [...cars]);
  return carId === null ? 0 : (versions.get(carId) ?? 0);
}
