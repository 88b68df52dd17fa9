import { z } from 'zod';
import { id } from '../asked.ts';
import type { OverviewPage } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const garageOverviewInput = z.strictObject({
  garageId: id,
  cursor: z.string().max(200).nullish(),
});

export async function garageOverview(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof garageOverviewInput>,
): Promise<OverviewPage> {
  throw new Error('garageOverview: under construction');
}
