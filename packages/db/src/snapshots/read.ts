import type { Analysis } from '@quartermark/engine';
import type { CarReadiness } from '@quartermark/engine/readiness';
import { and, eq, getTableColumns } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { snapshot, snapshotDetail } from '../schema.ts';

type SnapshotDetailRow = { detail: Analysis; road: CarReadiness | null };

/** A car's whole snapshot with its detail; null if it has none. */
export async function readSnapshot(tx: Tx, garageId: string, carId: string) {
  const [found] = await tx
    .select({
      ...getTableColumns(snapshot),
      detail: snapshotDetail.detail,
      road: snapshotDetail.road,
    })
    .from(snapshot)
    .innerJoin(
      snapshotDetail,
      and(eq(snapshotDetail.garageId, snapshot.garageId), eq(snapshotDetail.carId, snapshot.carId)),
    )
    .where(and(eq(snapshot.garageId, garageId), eq(snapshot.carId, carId)));
  return (found ?? null) as (typeof snapshot.$inferSelect & SnapshotDetailRow) | null;
}
