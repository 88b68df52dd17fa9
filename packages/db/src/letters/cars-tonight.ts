import type { CarTonight, PutOff } from '@quartermark/digest';
import { todayIn } from '@quartermark/engine/calendar';
import { type UrgentKnown, urgentFact } from '@quartermark/engine/display';
import { sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { dueLinesOfCars } from '../due/list.ts';
import type { GarageRow } from '../garages/read.ts';
import type { Complain } from '../readiness/events-room.ts';
import { readinessOfEvents } from '../readiness/near-events.ts';
import { SNAPSHOT_SCHEMA } from '../snapshots/snapshot-schema.ts';
import { listPutOffs } from './put-offs.ts';

const CARS_PER_PAGE = 200;

/**
 * What is stored of a garage's cars tonight, page by page, so that a garage of any size is never held whole.
 * Call in a `repeatable read` transaction.
 *
 * @param today civil date in the garage's zone
 * @param verdicts false: without how cars stand for events, for which books are opened
 */
export async function* carsTonight(
  tx: Tx,
  row: GarageRow,
  today: string,
  complain: Complain,
  { verdicts = true } = {},
): AsyncGenerator<CarTonight[]> {
  const [putOffs, going] = await Promise.all([
    listPutOffs(tx, row.id),
    verdicts ? readinessOfEvents(tx, row, today, complain) : null,
  ]);
  const offs = by(putOffs, ({ fact }) => fact.split('/')[0] ?? '');
  for (let after: string | null = null; ; ) {
    const found: Found[] = await carsAfter(tx, row.id, after);
    const lines = by(
      await dueLinesOfCars(
        tx,
        row.id,
        found.map(({ id }) => id),
      ),
      ({ carId }) => carId,
    );
    const cars: CarTonight[] = [];
    for (const car of found)
      cars.push({
        ...carOf(car, { row, today }),
        known: knownOf(car, lines.get(car.id) ?? []),
        events: await (going?.(car.id) ?? []),
        putOffs: (offs.get(car.id) ?? []).map(putOffOf),
      });
    if (cars.length > 0) yield cars;
    if (found.length < CARS_PER_PAGE) return;
    after = found.at(-1)?.id ?? null;
  }
}

type Found = Omit<UrgentKnown, 'status' | 'stop'> & {
  id: string;
  name: string;
  unit: 'km' | 'mi';
  electric: boolean;
  /** null: never computed, or of a form that cannot be read now */
  status: UrgentKnown['status'] | null;
  stop: UrgentKnown['stop'];
  asOf: string | null;
  oilOf: NonNullable<NonNullable<CarTonight['known']>['oil']> | null;
  /** whole milliseconds since 1970: the database knows finer ones, which no calendar takes */
  failedMs: number | null;
};

/** Of the whole analysis only what a letter speaks of is opened. */
async function carsAfter(tx: Tx, garageId: string, after: string | null): Promise<Found[]> {
  return tx.execute<Found>(sql`
    select c.id, c.name, c.unit, coalesce(c.profile ->> 'drive' = 'electric', false) as electric,
      s.status, s.stop, s.as_of::text as "asOf", o.stop as oil,
      d.detail -> 'matters' as matters, d.detail #>> '{oil,lastLook,on}' as "lookedOn",
      jsonb_build_object('lastLook', d.detail #> '{oil,lastLook}', 'nextLook', d.detail #> '{oil,nextLook}',
        'notices', d.detail #> '{oil,notices}') as "oilOf",
      floor(extract(epoch from f.since) * 1000)::float8 as "failedMs"
    from car c
    left join snapshot s on s.garage_id = c.garage_id and s.car_id = c.id
      and s.snapshot_schema = ${SNAPSHOT_SCHEMA}
    left join snapshot_detail d on d.garage_id = s.garage_id and d.car_id = s.car_id
    left join oil_line o on o.garage_id = s.garage_id and o.car_id = s.car_id
    left join failure f on f.garage_id = c.garage_id and f.car_id = c.id
    where c.garage_id = ${garageId} and c.removed_at is null
      ${after === null ? sql`` : sql`and c.id > ${after}::uuid`}
    order by c.id
    limit ${CARS_PER_PAGE}`) as unknown as Promise<Found[]>;
}

function by<T>(rows: readonly T[], keyOf: (row: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const row of rows) groups.set(keyOf(row), [...(groups.get(keyOf(row)) ?? []), row]);
  return groups;
}

type At = { row: GarageRow; today: string };

/** A car of which nothing can be read counts as not worked out, whether or not that failed. */
function carOf({ id, name, unit, status, failedMs }: Found, { row, today }: At) {
  const failed = failedMs === null ? null : todayIn(failedMs, row.zone);
  return { id, name, unit, failedSince: failed ?? (status === null ? today : null) };
}

function knownOf(found: Found, lines: NonNullable<CarTonight['known']>['lines']) {
  const { status, stop, asOf, matters, oil, lookedOn, electric, oilOf } = found;
  if (status === null || asOf === null) return null;
  const urgent = urgentFact({ status, stop, matters, oil, lookedOn });
  return { asOf, lane: { status }, lines, urgent, oil: electric ? null : oilOf };
}

const putOffOf = ({ fact, until, grade }: PutOff): PutOff => ({ fact, until, grade });
