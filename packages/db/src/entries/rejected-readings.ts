import { and, eq } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { snapshot, snapshotDetail } from '../schema.ts';
import { SNAPSHOT_SCHEMA } from '../snapshots/snapshot-schema.ts';

/** Entries whose odometer value the last computed answer has set aside; a new value is not held to them. */
export async function rejectedReadings(
  tx: Tx,
  garageId: string,
  carId: string,
): Promise<Set<string>> {
  const [row] = await tx
    .select({ detail: snapshotDetail.detail, form: snapshot.snapshotSchema })
    .from(snapshotDetail)
    .innerJoin(
      snapshot,
      and(eq(snapshot.garageId, snapshotDetail.garageId), eq(snapshot.carId, snapshotDetail.carId)),
    )
    .where(and(eq(snapshotDetail.garageId, garageId), eq(snapshotDetail.carId, carId)));
  const flags = row?.form === SNAPSHOT_SCHEMA ? row.detail.flags : [];
  const rejected = flags.filter((flag) => flag.code === 'readingRejected');
  return new Set(rejected.flatMap((flag) => flag.entry ?? []));
}
