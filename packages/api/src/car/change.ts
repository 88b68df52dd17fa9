import { changeCar as changeRow, readCar } from '@quartermark/db';
import { carInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import { raise } from '../command/raise.ts';
import { runCommand } from '../command/run-command.ts';
import { notFoundHere } from '../refused.ts';
import { stale } from '../stale.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { carOf } from './car-of.ts';

export const changeCarInput = z.strictObject({
  ...commandFields,
  carId: id,
  baseRevision,
  car: carInput,
});

/** Changes a car's name, odometer or profile. */
export function changeCar(
  world: World,
  asker: Asker,
  input: z.output<typeof changeCarInput>,
): Promise<Written> {
  return runCommand(world, asker, 'car.change', input, async (writing) => {
    const { tx, garage, now, by } = writing;
    const { carId, car, baseRevision } = input;
    const row = await readCar(tx, garage.id, carId);
    if (!row) throw notFoundHere('car', 'carId');
    const change = { garageId: garage.id, id: carId, baseRevision, car, at: now, by };
    const revision = await changeRow(tx, change);
    if (revision === null)
      throw await stale(tx, garage.id, 'The car was', baseRevision, { ...row, body: carOf(row) });
    return { id: carId, revision, version: await raise(writing, carId) };
  });
}
