import { sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';

/**
 * How many cars the garage has, and how many of those in use have something run out, due soon, oil that cannot
 * wait, or are forbidden to be driven.
 */
export async function overviewCounts(
  tx: Tx,
  garageId: string,
): Promise<{ cars: number; needsAHand: number }> {
  const [row] = await tx.execute<{ cars: number; needsAHand: number }>(sql`
    select count(*)::int as cars,
      (count(*) filter (
        where not s.laid_up and s.status = 'inUse'
          and (s.overdue + s.due_soon > 0 or s.stop is not null
            or o.stop in ('none', 'low', 'over'))
      ))::int as "needsAHand"
    from car c
    left join snapshot s on s.garage_id = c.garage_id and s.car_id = c.id
    left join oil_line o on o.garage_id = c.garage_id and o.car_id = c.id
    where c.garage_id = ${garageId} and c.removed_at is null`);
  return row ?? { cars: 0, needsAHand: 0 };
}
