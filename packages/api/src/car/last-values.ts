import { z } from 'zod';
import { id } from '../asked.ts';
import type { LastValues } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const carLastValuesInput = z.strictObject({ garageId: id, carId: id });

export async function carLastValues(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof carLastValuesInput>,
): Promise<LastValues> {
  throw new Error('carLastValues: under construction');
}
