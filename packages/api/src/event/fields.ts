import { readCar } from '@quartermark/db';
import type { EventInput } from '@quartermark/engine/log';
import { id } from '../asked.ts';
import type { Writing } from '../command/run-command.ts';
import { badField } from '../refused.ts';

/** Every car that goes is a car of this garage. */
export async function checkCars({ tx, garage }: Writing, { cars }: EventInput): Promise<void> {
  for (const [index, carId] of cars.entries()) {
    const known = id.safeParse(carId).success && (await readCar(tx, garage.id, carId));
    if (!known)
      throw badField(
        `event.cars.${index}`,
        `cars: ${carId} is no car of this garage; choose from its list`,
      );
  }
}
