import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const retryWorkInput = z.strictObject({ ...commandFields, carId: id });

export async function retryWork(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof retryWorkInput>,
): Promise<Written> {
  throw new Error('retryWork: under construction');
}
