import type { DueLine } from '@quartermark/engine/display';
import type { CarStatus } from '@quartermark/engine/matters';
import { type SQL, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { SNAPSHOT_SCHEMA } from '../snapshots/snapshot-schema.ts';

export type DueSort = 'likely' | 'early' | 'car';

/**
 * `dated`: of cars in use, what is overdue or has a day to come. `apart`: the same of cars that are laid up,
 * in pieces or away. `unsure`: not on record, or its history incomplete. What has been done once for all,
 * and what is known of sold cars, belongs to none.
 */
export type DuePart = 'dated' | 'apart' | 'unsure';

/** The last row of a page: where the next one begins. `key` is the day that sorts; null = none. */
export type DuePlace = { apart: boolean; key: string | null; carId: string; itemId: string };

export type DueQuestion = {
  garageId: string;
  sort: DueSort;
  filter: {
    carId?: string | undefined;
    state?: NonNullable<DueLine['state']> | undefined;
    /** only what falls due on this day or before: by the likely day, or the early one where that sorts */
    before?: string | undefined;
    part?: DuePart | undefined;
  };
  after?: DuePlace | null;
  limit: number;
};

export type DueRow = DueLine & {
  carId: string;
  carName: string;
  /** unit of its odometer */
  carUnit: 'km' | 'mi';
  status: CarStatus;
  /** what has run out waits until before it wakes */
  laidUp: boolean;
  /** the day the line speaks of; before today it is being recomputed */
  asOf: string;
  /** the last day to order its parts; null without one, or while an order stands (`parts`) */
  orderBy: string | null;
};

const COLUMNS = sql`
  l.car_id as "carId", c.name as "carName", c.unit as "carUnit",
  s.status, s.laid_up as "laidUp", s.as_of::text as "asOf",
  l.item_id as id, l.name, l.state, l.reason_code as "reasonCode",
  l.cause_code as "causeCode", l.cause_on::text as "causeOn",
  l.binding, l.limit_amount as "limit", l.remaining, l.unit, l.day::text as day,
  l.early::text as early, l.likely::text as likely, l.late::text as late,
  l.known, l.ahead, l.reading_needed as "readingNeeded", l.overdue_since::text as "overdueSince",
  l.last_done::text as "lastDone", l.lead_days as "leadDays", l.order_by::text as "orderBy", l.parts`;
const LINES = sql`
  due_line l
  join car c on c.garage_id = l.garage_id and c.id = l.car_id
  join snapshot s on s.garage_id = l.garage_id and s.car_id = l.car_id
  and s.snapshot_schema = ${SNAPSHOT_SCHEMA}`;

/** The day a line is sorted by; what has none comes last. The indexes of `due_line` are of these. */
const LIKELY = sql`coalesce(least(l.overdue_since, l.likely), 'infinity')`;
const EARLY = sql`coalesce(least(l.overdue_since, l.early), 'infinity')`;

/**
 * One page of what falls due in a garage. By day: cars in use first, those apart after them, each with
 * the nearest day first; one range of an index. By car: cars by name, each with its nearest day first.
 * Lines of a snapshot that this version cannot read are left out.
 */
export async function dueList(
  tx: Tx,
  question: DueQuestion,
): Promise<{ rows: DueRow[]; next: DuePlace | null }> {
  const { garageId, sort, filter, after, limit } = question;
  const key = sort === 'early' ? EARLY : LIKELY;
  const order =
    sort === 'car'
      ? sql`c.name, l.car_id, ${key}, l.item_id`
      : sql`l.apart, ${key}, l.car_id, l.item_id`;
  const found = await tx.execute<Found>(sql`
    select ${COLUMNS}, l.apart, nullif(${key}, 'infinity')::text as key
    from ${LINES}
    where l.garage_id = ${garageId} and c.removed_at is null
      ${filter.carId === undefined ? sql`` : sql`and l.car_id = ${filter.carId}::uuid`}
      ${filter.state === undefined ? sql`` : sql`and l.state = ${filter.state}`}
      ${filter.before === undefined ? sql`` : sql`and ${key} <= ${filter.before}::date`}
      ${filter.part === undefined ? sql`` : sql`and ${inPart(filter.part)}`}
      ${after ? sql`and (${order}) > (${placeOf(sort, garageId, after)})` : sql``}
    order by ${order}
    limit ${limit + 1}`);
  const rows = found.slice(0, limit);
  const last = rows.at(-1);
  const more = found.length > limit && last !== undefined;
  return { rows: rows.map(rowOf), next: more ? placeOfRow(last) : null };
}

/** All lines of these cars, in the order of each car's items. */
export async function dueLinesOfCars(
  tx: Tx,
  garageId: string,
  carIds: readonly string[],
): Promise<DueRow[]> {
  if (carIds.length === 0) return [];
  const found = await tx.execute<Found>(sql`
    select ${COLUMNS}, l.apart, null as key
    from ${LINES}
    join item i on i.garage_id = l.garage_id and i.id = l.item_id
    where l.garage_id = ${garageId} and l.car_id in ${carIds}
    order by l.car_id, i.position, l.item_id`);
  return found.map(rowOf);
}

function inPart(part: DuePart): SQL {
  if (part === 'unsure') return sql`l.state = 'unknown' and s.status <> 'sold'`;
  const known = sql`l.state is distinct from 'unknown' and l.reason_code is distinct from 'doneOnce'`;
  return part === 'dated'
    ? sql`not l.apart and ${known}`
    : sql`l.apart and s.status <> 'sold' and ${known}`;
}

function placeOf(sort: DueSort, garageId: string, after: DuePlace): SQL {
  const key = sql`coalesce(${after.key}::date, 'infinity')`;
  const rest = sql`${after.carId}::uuid, ${key}, ${after.itemId}::uuid`;
  // a car taken off the list keeps its name, so a page that follows is still found
  if (sort === 'car')
    return sql`(select name from car where garage_id = ${garageId} and id = ${after.carId}::uuid), ${rest}`;
  return sql`${after.apart}::boolean, ${key}, ${after.carId}::uuid, ${after.itemId}::uuid`;
}

type Found = Omit<DueRow, 'cause' | 'dates' | 'known' | 'readingNeeded'> & {
  causeCode: NonNullable<DueRow['cause']>['code'] | null;
  causeOn: string | null;
  known: boolean;
  early: string | null;
  likely: string | null;
  late: string | null;
  ahead: boolean;
  readingNeeded: boolean;
  apart: boolean;
  key: string | null;
};

const placeOfRow = ({ apart, key, carId, id }: Found): DuePlace => ({
  apart,
  key,
  carId,
  itemId: id,
});

function rowOf(found: Found): DueRow {
  const { causeCode, causeOn, known, early, likely, late, ahead, readingNeeded, ...rest } = found;
  const { apart: _apart, key: _key, ...row } = rest;
  return {
    ...row,
    ...(causeCode !== null && causeOn !== null && { cause: { code: causeCode, on: causeOn } }),
    ...(!known && { known }),
    dates: { early, likely, late },
    ...(ahead && { early, likely }),
    ...(readingNeeded && { readingNeeded }),
  };
}
