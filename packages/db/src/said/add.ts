import { addDays, weekday } from '@quartermark/engine/calendar';
import type { SaidLine } from '@quartermark/engine/said';
import { sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';

/**
 * Keeps what was said of a car's items: the first of an ISO week stands, later ones of that week change
 * nothing. Call it only where the snapshot that says so was written in the same transaction.
 */
export async function addSaid(
  tx: Tx,
  garageId: string,
  carId: string,
  lines: readonly SaidLine[],
): Promise<void> {
  if (lines.length === 0) return;
  const rows = lines.map((line) => ({
    ...line,
    week: addDays(line.saidOn, 1 - weekday(line.saidOn)),
  }));
  await tx.execute(sql`
    insert into said (garage_id, car_id, item_id, week, said_on, since, early, likely, late, binding,
      limits, engine_version)
    select ${garageId}::uuid, ${carId}::uuid, line.* from jsonb_to_recordset(
      ${JSON.stringify(rows)}::jsonb
    ) as line (item uuid, week date, "saidOn" date, since date, early date, likely date, late date,
      binding text, limits text, "engineVersion" integer)
    on conflict do nothing`);
}
