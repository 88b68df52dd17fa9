import { tellGarage } from '@quartermark/db';
import { wantRecompute } from '@quartermark/jobs/outbox';
import type { Writing } from './run-command.ts';

/**
 * After something of the garage changed that counts for several cars: their figures are counted anew,
 * and those who look on are told. Call it once, last.
 *
 * @param cars ids, with doubles; ids of no car here are left out
 * @returns the version of the only car it concerns; 0 where it concerns none or several
 */
export async function raiseCars({ tx, garage }: Writing, cars: readonly string[]): Promise<number> {
  await tellGarage(tx, garage.id);
  const versions = await wantRecompute(tx, garage.id, [...new Set(cars)]);
  const [only, ...others] = versions.values();
  return only === undefined || others.length > 0 ? 0 : only;
}
