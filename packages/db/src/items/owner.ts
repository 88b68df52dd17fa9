import { eq, type SQL } from 'drizzle-orm';
import { item } from '../schema.ts';

/** What owns an item: a car, or a component, piece of equipment or person. */
export type ItemOwner = { carId: string } | { gearId: string };

export function ownedBy(owner: ItemOwner): SQL {
  return 'carId' in owner ? eq(item.carId, owner.carId) : eq(item.gearId, owner.gearId);
}
