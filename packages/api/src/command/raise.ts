import { carsWithPartsOf } from '@quartermark/db';
import { todayIn } from '@quartermark/engine/calendar';
import { wantRecompute } from '@quartermark/jobs/outbox';
import type { Writing } from './run-command.ts';

/**
 * Raises a car's input version and asks for its countdowns anew, and for those of the cars that carry a
 * part which was on it before.
 */
export async function raise({ tx, garage, now }: Writing, carId: string): Promise<number> {
  const others = await carsWithPartsOf(tx, garage.id, carId, todayIn(now, garage.zone));
  const version = (await wantRecompute(tx, garage.id, [carId, ...others])).get(carId);
  if (version === undefined)
    throw new Error(
      `could not raise the version of car ${carId}: it is not in garage ${garage.id}`,
    );
  return version;
}
