import { sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { SNAPSHOT_SCHEMA } from '../snapshots/snapshot-schema.ts';

export type OverviewCounts = {
  cars: number;
  needsAHand: number;
  /** of the cars in use of which it is known, those that are ready for the road */
  road: { ready: number; known: number };
};

/**
 * How many cars the garage has; how many of those in use are ready for the road; and how many are not, or have
 * something run out, due soon, oil that cannot wait, or are forbidden to be driven.
 */
export async function overviewCounts(tx: Tx, garageId: string): Promise<OverviewCounts> {
  const [row] = await tx.execute<Found>(sql`
    select count(*)::int as cars,
      (count(*) filter (where in_use and (overdue + due_soon > 0 or stops or word <> 'ready')))::int
        as "needsAHand",
      (count(*) filter (where in_use and word = 'ready' and not stops))::int as ready,
      (count(*) filter (where in_use and word is not null))::int as known
    from (
      select s.overdue, s.due_soon,
        not s.laid_up and s.status = 'inUse' as in_use,
        s.stop is not null or coalesce(o.stop in ('none', 'low', 'over'), false) as stops,
        case when s.snapshot_schema = ${SNAPSHOT_SCHEMA} then s.lane #>> '{road,word}' end as word
      from car c
      left join snapshot s on s.garage_id = c.garage_id and s.car_id = c.id
      left join oil_line o on o.garage_id = c.garage_id and o.car_id = c.id
      where c.garage_id = ${garageId} and c.removed_at is null) as one`);
  const { cars, needsAHand, ready, known } = row ?? NONE;
  return { cars, needsAHand, road: { ready, known } };
}

type Found = { cars: number; needsAHand: number; ready: number; known: number };
const NONE: Found = { cars: 0, needsAHand: 0, ready: 0, known: 0 };
