import type { DueLine } from '@quartermark/engine/display';
import { sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import type { dueLine } from '../due-schema.ts';

export type DueLinesOf = {
  garageId: string;
  carId: string;
  /** the car is not in use */
  apart: boolean;
  lines: readonly DueLine[];
};

/**
 * Puts a car's lines in place of those it had; one that says the same is not written again. Call it only
 * where its snapshot was written in the same transaction: the guard of the snapshot is the guard of its
 * lines. One statement and one parameter, because it lies between an entry and its answer.
 */
export async function replaceDueLines(
  tx: Tx,
  { garageId, carId, apart, lines }: DueLinesOf,
): Promise<void> {
  const rows = lines.map((line) => ({ ...columnsOf(line), apart }));
  await tx.execute(sql`
    with line as (
      select l.* from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) as l (
        "itemId" uuid, name text, state text, "reasonCode" text, "causeCode" text, "causeOn" date,
        binding text, "limit" float8, remaining float8, unit text, day date, known boolean,
        early date, likely date, late date, ahead boolean, "readingNeeded" boolean,
        "overdueSince" date, "lastDone" date, "leadDays" integer, "orderBy" date, parts jsonb,
        apart boolean)
    ), gone as (
      delete from due_line
      where garage_id = ${garageId}::uuid and car_id = ${carId}::uuid
        and item_id not in (select "itemId" from line)
    )
    insert into due_line as old (garage_id, car_id, item_id, name, state, reason_code, cause_code,
      cause_on, binding, limit_amount, remaining, unit, day, known, early, likely, late, ahead,
      reading_needed, overdue_since, last_done, lead_days, order_by, parts, apart)
    select ${garageId}::uuid, ${carId}::uuid, line.* from line
    on conflict (garage_id, car_id, item_id) do update
    set (name, state, reason_code, cause_code, cause_on, binding, limit_amount, remaining, unit, day,
      known, early, likely, late, ahead, reading_needed, overdue_since, last_done, lead_days,
      order_by, parts, apart)
      = (excluded.name, excluded.state, excluded.reason_code, excluded.cause_code,
      excluded.cause_on, excluded.binding, excluded.limit_amount, excluded.remaining, excluded.unit,
      excluded.day, excluded.known, excluded.early, excluded.likely, excluded.late, excluded.ahead,
      excluded.reading_needed, excluded.overdue_since, excluded.last_done, excluded.lead_days,
      excluded.order_by, excluded.parts, excluded.apart)
    where old is distinct from excluded`);
}

type Row = typeof dueLine.$inferInsert;

function columnsOf(line: DueLine): Omit<Row, 'garageId' | 'carId' | 'apart'> {
  const { id, cause, dates, likely, early: _, known, readingNeeded, ...columns } = line;
  return {
    ...columns,
    ...dates,
    itemId: id,
    causeCode: cause?.code ?? null,
    causeOn: cause?.on ?? null,
    known: known ?? true,
    ahead: likely !== undefined,
    readingNeeded: readingNeeded ?? false,
    orderBy: line.parts?.kind === 'orderBy' ? line.parts.day : null,
  };
}
