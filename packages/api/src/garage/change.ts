import { z } from 'zod';
import { baseRevision, commandFields } from '../asked.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { garageFields } from './fields.ts';

export const changeGarageInput = z.strictObject({
  ...commandFields,
  baseRevision,
  ...garageFields,
});

export async function changeGarage(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof changeGarageInput>,
): Promise<Written> {
  throw new Error('changeGarage: under construction');
}
