import { sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';

/**
 * Cars still in the garage, the one with the newest entry first: by its day, then as recorded. One step
 * of the index entry_of_car a car, however long its record is.
 */
export async function carsLastRecorded(tx: Tx, garageId: string, limit: number): Promise<string[]> {
  const rows = await tx.execute<{ id: string }>(sql`
    select c.id from car c
    left join lateral (
      select e."on", e.recorded from entry e
      where e.garage_id = c.garage_id and e.car_id = c.id and e.removed_at is null
      order by e."on" desc, e.recorded desc limit 1
    ) as newest on true
    where c.garage_id = ${garageId} and c.removed_at is null
    order by newest."on" desc nulls last, newest.recorded desc, c.id
    limit ${limit}`);
  return rows.map(({ id }) => id);
}
