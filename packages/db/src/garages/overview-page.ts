import type { Lane } from '@quartermark/engine/display';
import { type SQL, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { SNAPSHOT_SCHEMA } from '../snapshots/snapshot-schema.ts';

/** The last row of a page: where the next one begins. An urgency of null is a car never computed. */
export type OverviewPlace = { urgency: number | null; carId: string };

export type OverviewCar = {
  carId: string;
  name: string;
  unit: 'km' | 'mi';
  urgency: number | null;
  /** null: there is no snapshot, or it is of a form this version cannot read */
  lane: Lane | null;
  laidUp: boolean;
  overdue: number;
  dueSoon: number;
  notOnRecord: number;
  /** 0 without a snapshot */
  version: number;
  wantedVersion: number;
  asOf: string | null;
  computedAt: Date | null;
  failure: { since: Date; attempts: number; cause: string } | null;
};

/**
 * One page of the garage, cars never computed first (nothing is known of them), then by urgency. One
 * query; the second half of it is one range of the index snapshot_by_urgency.
 */
export async function overviewPage(
  tx: Tx,
  question: { garageId: string; after?: OverviewPlace | null; limit: number },
): Promise<{ rows: OverviewCar[]; next: OverviewPlace | null }> {
  const { garageId, after, limit } = question;
  const found = await tx.execute<Found>(sql`
    with place as (
      ${neverComputed(garageId, after ?? null, limit + 1)}
      union all
      ${computed(garageId, after ?? null, limit + 1)}
      order by urgency nulls first, car_id
      limit ${limit + 1}
    )
    select place.car_id as "carId", place.urgency, c.name, c.unit,
      c.input_version::float8 as "wantedVersion",
      s.input_version::float8 as "version",
      s.snapshot_schema as "schema",
      s.lane, s.laid_up as "laidUp", s.overdue, s.due_soon as "dueSoon",
      s.not_on_record as "notOnRecord", s.as_of::text as "asOf",
      ${epochMs(sql`s.computed_at`)} as "computedMs",
      ${epochMs(sql`f.since`)} as "failedMs", f.attempts, f.cause
    from place
    join car c on c.garage_id = ${garageId} and c.id = place.car_id
    left join snapshot s on s.garage_id = c.garage_id and s.car_id = c.id
    left join failure f on f.garage_id = c.garage_id and f.car_id = c.id
    order by place.urgency nulls first, place.car_id`);
  const rows = found.slice(0, limit).map(carOf);
  const last = rows.at(-1);
  const more = found.length > limit && last !== undefined;
  return { rows, next: more ? { urgency: last.urgency, carId: last.carId } : null };
}

function neverComputed(garageId: string, after: OverviewPlace | null, limit: number): SQL {
  if (after && after.urgency !== null)
    return sql`(select null::int as urgency, null::uuid as car_id where false)`;
  return sql`(
    select null::int as urgency, c.id as car_id from car c
    where c.garage_id = ${garageId} and c.removed_at is null
      ${after ? sql`and c.id > ${after.carId}::uuid` : sql``}
      and not exists (select 1 from snapshot s where s.garage_id = c.garage_id and s.car_id = c.id)
    order by c.id limit ${limit})`;
}

function computed(garageId: string, after: OverviewPlace | null, limit: number): SQL {
  const beyond =
    after && after.urgency !== null
      ? sql`and (s.urgency, s.car_id) > (${after.urgency}::int, ${after.carId}::uuid)`
      : sql``;
  return sql`(
    select s.urgency, s.car_id from snapshot s
    join car c on c.garage_id = s.garage_id and c.id = s.car_id and c.removed_at is null
    where s.garage_id = ${garageId} ${beyond}
    order by s.urgency, s.car_id limit ${limit})`;
}

/** Milliseconds since 1970, because a bare query gives instants as text. */
const epochMs = (instant: SQL) => sql`(extract(epoch from ${instant}) * 1000)::float8`;

type Found = {
  carId: string;
  urgency: number | null;
  name: string;
  unit: 'km' | 'mi';
  wantedVersion: number;
  version: number | null;
  schema: number | null;
  lane: Lane | null;
  laidUp: boolean | null;
  overdue: number | null;
  dueSoon: number | null;
  notOnRecord: number | null;
  asOf: string | null;
  computedMs: number | null;
  failedMs: number | null;
  attempts: number | null;
  cause: string | null;
};

function carOf(row: Found): OverviewCar {
  const { carId, name, unit, urgency, wantedVersion, asOf } = row;
  return {
    carId,
    name,
    unit,
    urgency,
    lane: row.schema === SNAPSHOT_SCHEMA ? row.lane : null,
    laidUp: row.laidUp ?? false,
    overdue: row.overdue ?? 0,
    dueSoon: row.dueSoon ?? 0,
    notOnRecord: row.notOnRecord ?? 0,
    version: row.version ?? 0,
    wantedVersion,
    asOf,
    computedAt: row.computedMs === null ? null : new Date(row.computedMs),
    failure:
      row.failedMs === null
        ? null
        : { since: new Date(row.failedMs), attempts: row.attempts ?? 0, cause: row.cause ?? '' },
  };
}
