import type { EntryKind } from '@quartermark/engine/log';
import { and, desc, eq, inArray, isNull, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { entry } from '../schema.ts';
import type { EntryRow } from './read.ts';

/** The newest entry of each of these kinds, as far as there is one: what a form starts from. */
export function lastOfEachKind(
  tx: Tx,
  garageId: string,
  carId: string,
  kinds: readonly EntryKind[],
): Promise<EntryRow[]> {
  return tx
    .selectDistinctOn([entry.kind])
    .from(entry)
    .where(
      and(
        eq(entry.garageId, garageId),
        eq(entry.carId, carId),
        inArray(entry.kind, [...kinds]),
        isNull(entry.removedAt),
      ),
    )
    .orderBy(entry.kind, desc(entry.on), desc(entry.recorded));
}

/** The newest entry that shows an odometer value, an exchange of the instrument included. */
export async function lastWithOdometer(
  tx: Tx,
  garageId: string,
  carId: string,
): Promise<EntryRow | null> {
  const [found] = await tx
    .select()
    .from(entry)
    .where(
      and(
        eq(entry.garageId, garageId),
        eq(entry.carId, carId),
        isNull(entry.removedAt),
        sql`(${entry.body} -> 'odometer' is not null or ${entry.kind} = 'meterReplaced')`,
      ),
    )
    .orderBy(desc(entry.on), desc(entry.recorded))
    .limit(1);
  return found ?? null;
}

/** The newest entry of a kind that gives this field. */
export async function lastWith(
  tx: Tx,
  garageId: string,
  carId: string,
  kind: EntryKind,
  field: string,
): Promise<EntryRow | null> {
  const [found] = await tx
    .select()
    .from(entry)
    .where(
      and(
        eq(entry.garageId, garageId),
        eq(entry.carId, carId),
        eq(entry.kind, kind),
        isNull(entry.removedAt),
        sql`${entry.body} -> ${field}::text is not null`,
      ),
    )
    .orderBy(desc(entry.on), desc(entry.recorded))
    .limit(1);
  return found ?? null;
}
