import { carInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const addCarInput = z.strictObject({ ...commandFields, carId: id, car: carInput });

export async function addCar(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof addCarInput>,
): Promise<Written> {
  throw new Error('addCar: under construction');
}
