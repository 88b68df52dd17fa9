import { carsFittedWith, tellGarage } from '@quartermark/db';
import { todayIn } from '@quartermark/engine/calendar';
import { wantRecompute } from '@quartermark/jobs/outbox';
import { raise } from './raise.ts';
import type { Writing } from './run-command.ts';

/** Whose a changed thing is: a car's, or that of a component, a piece of equipment or a person. */
export type Owner = { carId: string | null; gearId: string | null };

/**
 * After something of a car changed, its figures are counted anew; after something of a piece changed,
 * those of the car it is on, and those who look on are told.
 *
 * @returns the version of the owning car; 0 where a car does not own it
 */
export async function raiseOf(writing: Writing, { carId, gearId }: Owner): Promise<number> {
  if (carId !== null) return raise(writing, carId);
  const { tx, garage, now } = writing;
  await tellGarage(tx, garage.id);
  if (gearId === null) return 0;
  const cars = await carsFittedWith(tx, garage.id, [gearId], todayIn(now, garage.zone));
  if (cars.length > 0) await wantRecompute(tx, garage.id, cars);
  return 0;
}
