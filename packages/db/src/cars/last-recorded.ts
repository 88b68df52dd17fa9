import { sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';

/** Cars still in the garage, the one something was last recorded of first. */
export async function carsLastRecorded(tx: Tx, garageId: string, limit: number): Promise<string[]> {
  const rows = await tx.execute<{ id: string }>(sql`
    select c.id from car c
    left join lateral (
      select max(e.recorded) as last from entry e
      where e.garage_id = c.garage_id and e.car_id = c.id
    ) as newest on true
    where c.garage_id = ${garageId} and c.removed_at is null
    order by newest.last desc nulls last, c.id
    limit ${limit}`);
  return rows.map(({ id }) => id);
}
