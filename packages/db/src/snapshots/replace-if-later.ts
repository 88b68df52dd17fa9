import type { Analysis } from '@quartermark/engine';
import type { CarReadiness } from '@quartermark/engine/readiness';
import { sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { snapshot, snapshotDetail } from '../schema.ts';

export type SnapshotRow = typeof snapshot.$inferInsert;

/** What the overview never reads. `road` null: the car is not in use. */
export type SnapshotDetail = { analysis: Analysis; road: CarReadiness | null };

const LANE_BYTES_MAX = 1024;

/**
 * Writes a car's snapshot, unless one that rests on later inputs is there already: a job that was
 * overtaken changes nothing. Later is (input version, engine version, as-of day), in that order;
 * where all three are equal, a later form of the snapshot.
 *
 * @param options.ignoreAsOf compare only the two versions and let equal ones pass: after a change of
 *   zone the garage's day may be the one before
 * @returns whether it was written
 */
export async function replaceIfLater(
  tx: Tx,
  row: SnapshotRow,
  { analysis: detail, road }: SnapshotDetail,
  options: { ignoreAsOf?: boolean } = {},
): Promise<boolean> {
  const laneBytes = Buffer.byteLength(JSON.stringify(row.lane));
  if (laneBytes > LANE_BYTES_MAX)
    throw new RangeError(
      `could not store the lane of car ${row.carId}: ${laneBytes} bytes, it should be at most ${LANE_BYTES_MAX}`,
    );
  const later = options.ignoreAsOf
    ? sql`(${snapshot.inputVersion}, ${snapshot.engineVersion}) <= (excluded.input_version, excluded.engine_version)`
    : sql`(${snapshot.inputVersion}, ${snapshot.engineVersion}, ${snapshot.asOf}, ${snapshot.snapshotSchema}) < (excluded.input_version, excluded.engine_version, excluded.as_of, excluded.snapshot_schema)`;
  const { garageId, carId, ...set } = row;
  const written = await tx
    .insert(snapshot)
    .values(row)
    .onConflictDoUpdate({ target: [snapshot.garageId, snapshot.carId], set, setWhere: later })
    .returning({ carId: snapshot.carId });
  if (written.length === 0) return false;
  const { inputVersion } = row;
  await tx
    .insert(snapshotDetail)
    .values({ garageId, carId, inputVersion, detail, road })
    .onConflictDoUpdate({
      target: [snapshotDetail.garageId, snapshotDetail.carId],
      set: { inputVersion, detail, road },
    });
  return true;
}
