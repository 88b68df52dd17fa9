import { insertCar } from '@quartermark/db';
import { carInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { raise } from '../command/raise.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { refuse } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const addCarInput = z.strictObject({ ...commandFields, carId: id, car: carInput });

type AddCar = z.output<typeof addCarInput>;

/** Adds a car to the garage. */
export function addCar(world: World, asker: Asker, input: AddCar): Promise<Written> {
  return runCommand(world, asker, 'car.add', input, async (writing) => {
    await writeCar(writing, input);
    return { id: input.carId, revision: 1, version: await raise(writing, input.carId) };
  });
}

/** The writing part, without raising the car's version. */
export async function writeCar(
  { tx, garage, now, by }: Writing,
  { carId, car }: Pick<AddCar, 'carId' | 'car'>,
): Promise<void> {
  if (!(await insertCar(tx, { garageId: garage.id, id: carId, car, at: now, by })))
    throw refuse('idInUse', 'carId', 'A car with this id is in the garage already; open it there.');
}
