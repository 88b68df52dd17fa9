import type { UrgentKnown } from '@quartermark/engine/display';
import { sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { SNAPSHOT_SCHEMA } from './snapshot-schema.ts';

export type UrgentRow = UrgentKnown & { carId: string; name: string };

/**
 * Cars with what cannot wait, the most urgent first: one range of the index snapshot_by_urgency, in which they
 * all lie below 0. The whole analysis is opened of those few alone.
 */
export async function urgentCars(
  tx: Tx,
  garageId: string,
  limit: number,
): Promise<readonly UrgentRow[]> {
  return tx.execute<UrgentRow>(sql`
    select c.id as "carId", c.name, s.status, s.stop, o.stop as oil,
      case when s.snapshot_schema = ${SNAPSHOT_SCHEMA}
        then d.detail -> 'matters' end as matters,
      d.detail #>> '{oil,lastLook,on}' as "lookedOn"
    from snapshot s
    join car c on c.garage_id = s.garage_id and c.id = s.car_id and c.removed_at is null
    left join oil_line o on o.garage_id = s.garage_id and o.car_id = s.car_id
    left join snapshot_detail d on d.garage_id = s.garage_id and d.car_id = s.car_id
    where s.garage_id = ${garageId} and s.urgency < 0
      and (s.status = 'inUse'
          and (s.stop in ('doNotDrive', 'incident', 'wheelsOff') or o.stop in ('none', 'low', 'over'))
        or s.status = 'away' and s.stop in ('doNotDrive', 'incident'))
    order by s.urgency, s.car_id
    limit ${limit}`);
}
