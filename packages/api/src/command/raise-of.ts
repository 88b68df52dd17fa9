import { tellGarage } from '@quartermark/db';
import { raise } from './raise.ts';
import type { Writing } from './run-command.ts';

/**
 * After something of a car changed (its figures are counted anew), or of the garage itself (those who
 * look on are told).
 *
 * @param carId null: it concerns no car
 * @returns the car's version; 0 where it concerns none
 */
export async function raiseOf(writing: Writing, carId: string | null): Promise<number> {
  if (carId !== null) return raise(writing, carId);
  await tellGarage(writing.tx, writing.garage.id);
  return 0;
}
