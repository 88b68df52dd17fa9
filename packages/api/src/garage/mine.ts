import type { GarageView } from '../views.ts';
import type { Asker, World } from '../world.ts';

export async function garageMine(_world: World, _asker: Asker): Promise<GarageView[]> {
  throw new Error('garageMine: under construction');
}
