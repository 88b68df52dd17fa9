import type { OilLine } from '@quartermark/engine/display';
import type { CarStatus } from '@quartermark/engine/matters';
import { and, asc, eq, getTableColumns, isNull, ne, or, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { oilLine } from '../oil-schema.ts';
import { car, snapshot } from '../schema.ts';
import { SNAPSHOT_SCHEMA } from '../snapshots/snapshot-schema.ts';
import { lineOf } from './columns.ts';

/** A car in the comparison of the garage's oil. */
export type OilRow = {
  carId: string;
  name: string;
  /** unit of its odometer */
  unit: 'km' | 'mi';
  /** null: not worked out yet */
  status: CarStatus | null;
  asOf: string | null;
  /** its owner's limit on the road, L/1,000 km */
  limit: number | null;
  /** null: not worked out yet, or of a form this version cannot read */
  line: OilLine | null;
};

/** The last row of a page: where the next one begins. */
export type OilPlace = { worse: number | null; road: number | null; carId: string };

/**
 * How surely a car uses more than a year ago: the middle of its change in units of its spread. Both ends are as
 * far from the middle in logarithms, so half their distance is a measure of it.
 */
const WORSE = sql<number | null>`(ln(${oilLine.changeLikely}) /
  nullif(ln(${oilLine.changeHigh}) - ln(${oilLine.changeLow}), 0))`;
const BY_WORSE = sql<number>`coalesce(-${WORSE}, 'infinity'::float8)`;
const BY_ROAD = sql<number>`coalesce(-${oilLine.roadLikely}, 'infinity'::float8)`;

/**
 * One page of the garage's cars by their oil: those that got worse the most surely first, then those without a
 * year to compare with by what they use, then the rest. Sold cars are left out.
 */
export async function compareOil(
  tx: Tx,
  { garageId, after, limit }: { garageId: string; after: OilPlace | null; limit: number },
): Promise<{ rows: OilRow[]; next: OilPlace | null }> {
  const number = (value: number | null) => sql`coalesce(-${value}::float8, 'infinity'::float8)`;
  const found = await tx
    .select({
      carId: car.id,
      name: car.name,
      unit: car.unit,
      profile: car.profile,
      status: snapshot.status,
      asOf: snapshot.asOf,
      worse: WORSE,
      line: getTableColumns(oilLine),
    })
    .from(car)
    .leftJoin(
      snapshot,
      and(
        eq(snapshot.garageId, car.garageId),
        eq(snapshot.carId, car.id),
        eq(snapshot.snapshotSchema, SNAPSHOT_SCHEMA),
      ),
    )
    .leftJoin(
      oilLine,
      and(eq(oilLine.garageId, snapshot.garageId), eq(oilLine.carId, snapshot.carId)),
    )
    .where(
      and(
        eq(car.garageId, garageId),
        isNull(car.removedAt),
        or(isNull(snapshot.status), ne(snapshot.status, 'sold')),
        after
          ? sql`(${BY_WORSE}, ${BY_ROAD}, ${car.id}) > (${number(after.worse)}, ${number(after.road)}, ${after.carId}::uuid)`
          : undefined,
      ),
    )
    .orderBy(asc(BY_WORSE), asc(BY_ROAD), asc(car.id))
    .limit(limit + 1);
  const rows = found.slice(0, limit);
  const last = rows.at(-1);
  const more = found.length > limit && last !== undefined;
  return {
    rows: rows.map(({ profile, worse: _worse, line, ...row }) => ({
      ...row,
      limit: profile.oilLimitLPer1000Km ?? null,
      line: line && lineOf(line),
    })),
    next: more
      ? { worse: last.worse, road: last.line?.roadLikely ?? null, carId: last.carId }
      : null,
  };
}
