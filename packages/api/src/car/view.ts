import { z } from 'zod';
import { id } from '../asked.ts';
import type { CarView } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const carViewInput = z.strictObject({ garageId: id, carId: id });

export async function carView(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof carViewInput>,
): Promise<CarView> {
  throw new Error('carView: under construction');
}
