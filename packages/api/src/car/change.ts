import { carInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const changeCarInput = z.strictObject({
  ...commandFields,
  carId: id,
  baseRevision,
  car: carInput,
});

export async function changeCar(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof changeCarInput>,
): Promise<Written> {
  throw new Error('changeCar: under construction');
}
