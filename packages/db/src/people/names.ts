import { sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';

const MOST = 30;

/**
 * Names of those who drive: the garage's people, and whoever was written down as a driver, the last
 * one first.
 *
 * @param carId only drivers of this car; null for the whole garage
 */
export async function driverNames(
  tx: Tx,
  garageId: string,
  carId: string | null,
): Promise<string[]> {
  const rows = await tx.execute<{ name: string }>(sql`
    select name from (
      select e.body ->> 'driver' as name, max(e."on") as last from entry e
      where e.garage_id = ${garageId} and e.removed_at is null and e.body ? 'driver'
        ${carId === null ? sql`` : sql`and e.car_id = ${carId}`}
      group by 1
      union all
      select g.body ->> 'name', null from gear g
      where g.garage_id = ${garageId} and g.kind = 'person' and g.removed_at is null
    ) as known
    group by name
    order by max(last) desc nulls last, name
    limit ${MOST}`);
  return rows.map(({ name }) => name);
}
