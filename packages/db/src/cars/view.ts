import type { Analysis } from '@quartermark/engine';
import type { CarReadiness } from '@quartermark/engine/readiness';
import { and, eq, getTableColumns, isNull } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { car, failure, snapshot, snapshotDetail } from '../schema.ts';
import { SNAPSHOT_SCHEMA } from '../snapshots/snapshot-schema.ts';
import type { CarRow } from './read.ts';

export type CarWithSnapshot = {
  car: CarRow;
  /** null: there is none, or it is of a form this version cannot read */
  snapshot: {
    inputVersion: number;
    engineVersion: number;
    asOf: string;
    computedAt: Date;
    analysis: Analysis;
    /** readiness for the road; null: not in use */
    road: CarReadiness | null;
  } | null;
  failure: { since: Date; attempts: number; cause: string } | null;
};

/** A car with what was last computed of it and, if that fails now, why; null if it is not there. */
export async function carWithSnapshot(
  tx: Tx,
  garageId: string,
  carId: string,
): Promise<CarWithSnapshot | null> {
  const ofCar = (t: typeof snapshot | typeof snapshotDetail | typeof failure) =>
    and(eq(t.garageId, car.garageId), eq(t.carId, car.id));
  const [row] = await tx
    .select({
      car: getTableColumns(car),
      snapshot: getTableColumns(snapshot),
      analysis: snapshotDetail.detail,
      road: snapshotDetail.road,
      failure: getTableColumns(failure),
    })
    .from(car)
    .leftJoin(snapshot, ofCar(snapshot))
    .leftJoin(snapshotDetail, ofCar(snapshotDetail))
    .leftJoin(failure, ofCar(failure))
    .where(and(eq(car.garageId, garageId), eq(car.id, carId), isNull(car.removedAt)));
  if (!row) return null;
  const { analysis, road } = row;
  const readable = row.snapshot?.snapshotSchema === SNAPSHOT_SCHEMA ? row.snapshot : null;
  return {
    car: row.car,
    snapshot: readable && analysis ? { ...readable, analysis, road } : null,
    failure: row.failure,
  };
}
