import { z } from 'zod';
import { commandFields } from '../asked.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { garageFields } from './fields.ts';

export const createGarageInput = z.strictObject({ ...commandFields, ...garageFields });

export async function createGarage(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof createGarageInput>,
): Promise<Written> {
  throw new Error('createGarage: under construction');
}
