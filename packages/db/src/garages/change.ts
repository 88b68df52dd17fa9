import { and, eq, sql } from 'drizzle-orm';
import { organization } from '../auth-schema.ts';
import type { Tx } from '../connect.ts';
import { garage } from '../schema.ts';
import type { GarageRow } from './read.ts';

export type GarageChange = Pick<
  GarageRow,
  'name' | 'zone' | 'hemisphere' | 'distanceUnit' | 'volumeUnit'
>;

/**
 * Changes a garage if it is still at `baseRevision`. With another zone, also call `setGarageDay` and
 * raise all cars' versions.
 *
 * @returns the new revision; null if somebody else changed it since
 */
export async function changeGarage(
  tx: Tx,
  garageId: string,
  baseRevision: number,
  change: GarageChange,
  stamp: { at: Date; by: string },
): Promise<number | null> {
  const [changed] = await tx
    .update(garage)
    .set({
      ...change,
      revision: sql`${garage.revision} + 1`,
      changedAt: stamp.at,
      changedBy: stamp.by,
    })
    .where(and(eq(garage.id, garageId), eq(garage.revision, baseRevision)))
    .returning({ revision: garage.revision });
  if (!changed) return null;
  await tx.update(organization).set({ name: change.name }).where(eq(organization.id, garageId));
  return changed.revision;
}
