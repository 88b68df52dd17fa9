import type { DueListCounts } from '@quartermark/engine/display';
import { sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { SNAPSHOT_SCHEMA } from '../snapshots/snapshot-schema.ts';

/** What the whole list holds, of the garage or of one of its cars. */
export async function dueCounts(
  tx: Tx,
  { garageId, carId }: { garageId: string; carId?: string | undefined },
): Promise<DueListCounts> {
  const of = (column: string) =>
    carId === undefined ? sql`` : sql`and ${sql.raw(column)} = ${carId}::uuid`;
  const [row] = await tx.execute<DueListCounts>(sql`
    with readable as (
      select c.id, s.car_id is not null as known
      from car c
      left join snapshot s on s.garage_id = c.garage_id and s.car_id = c.id
        and s.snapshot_schema = ${SNAPSHOT_SCHEMA}
      where c.garage_id = ${garageId} and c.removed_at is null ${of('c.id')}
    )
    select
      count(*) filter (where not l.apart and l.state = 'overdue')::int as overdue,
      count(*) filter (where not l.apart and l.state = 'dueSoon')::int as "dueSoon",
      count(*) filter (where not l.apart and l.state = 'unknown')::int as unknown,
      count(*) filter (where not l.apart and l.state = 'fine')::int as fine,
      count(*) filter (where not l.apart and l.state is null)::int as "noDate",
      count(*) filter (where l.apart)::int as apart,
      (select count(*) from readable where not known)::int as "carsToCome"
    from due_line l
    join readable r on r.id = l.car_id and r.known
    where l.garage_id = ${garageId} ${of('l.car_id')}`);
  return row ?? { ...NOTHING };
}

const NOTHING: DueListCounts = {
  overdue: 0,
  dueSoon: 0,
  unknown: 0,
  fine: 0,
  noDate: 0,
  apart: 0,
  carsToCome: 0,
};
