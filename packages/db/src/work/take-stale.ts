import { sql } from 'drizzle-orm';
import type { Db } from '../connect.ts';

export type StaleCar = {
  garageId: string;
  carId: string;
  wanted: number;
  /** true: something was recorded since; false: only the engine is newer */
  entriesBehind: boolean;
};

/**
 * Cars whose answer rests on less than what is recorded, or on an older engine, and whose next try has
 * come. Taking them puts their next try off by `restMs`, so that other workers leave them alone.
 */
export async function takeStale(
  db: Db,
  options: { engineVersion: number; restMs: number; limit: number },
): Promise<StaleCar[]> {
  const rows = await db.orm.execute<{
    garage_id: string;
    car_id: string;
    wanted: string;
    entries_behind: boolean;
  }>(sql`
    update car_work as work
       set next_try_at = now() + ${options.restMs}::int * interval '1 millisecond'
      from (
        select garage_id, car_id
          from car_work
         where (done < wanted or done_engine < ${options.engineVersion}::int)
           and next_try_at <= now()
         order by next_try_at
         limit ${options.limit}::int
           for update skip locked
      ) as stale
     where work.garage_id = stale.garage_id and work.car_id = stale.car_id
    returning work.garage_id, work.car_id, work.wanted, work.done < work.wanted as entries_behind`);
  return rows.map((row) => ({
    garageId: row.garage_id,
    carId: row.car_id,
    wanted: Number(row.wanted),
    entriesBehind: row.entries_behind,
  }));
}
