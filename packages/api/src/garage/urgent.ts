import { urgentCars } from '@quartermark/db';
import { urgentFact } from '@quartermark/engine/display';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import type { UrgentCar } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const garageUrgentInput = z.strictObject({ garageId: id });

/** More than anybody reads at the head of a page; the garage's own list has them all. */
const CARS_MAX = 50;

/** What everybody who uses a car has to know at once, the worst first. */
export function garageUrgent(
  world: World,
  asker: Asker,
  { garageId }: z.output<typeof garageUrgentInput>,
): Promise<UrgentCar[]> {
  return inGarage(world, asker, garageId, async (tx) => {
    const rows = await urgentCars(tx, garageId, CARS_MAX);
    return rows.flatMap(({ carId, name, ...known }) => {
      const fact = urgentFact(known);
      return fact === null ? [] : [{ carId, name, ...fact }];
    });
  });
}
