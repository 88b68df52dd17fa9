import { wantRecompute } from '@quartermark/jobs/outbox';
import type { Writing } from './run-command.ts';

/** Raises a car's input version and asks for its countdowns anew; 0 for what concerns no car. */
export async function raise({ tx, garage }: Writing, carId: string | null): Promise<number> {
  if (carId === null) return 0;
  const version = (await wantRecompute(tx, garage.id, [carId])).get(carId);
  if (version === undefined)
    throw new Error(
      `could not raise the version of car ${carId}: it is not in garage ${garage.id}`,
    );
  return version;
}
