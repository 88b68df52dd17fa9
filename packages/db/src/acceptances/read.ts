import { and, asc, eq, inArray, isNull } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { acceptance } from '../readiness-schema.ts';

export type AcceptanceRow = typeof acceptance.$inferSelect;

/** One acceptance, a withdrawn one included (`withdrawnAt`). */
export async function readAcceptance(
  tx: Tx,
  garageId: string,
  id: string,
): Promise<AcceptanceRow | null> {
  const [found] = await tx
    .select()
    .from(acceptance)
    .where(and(eq(acceptance.garageId, garageId), eq(acceptance.id, id)));
  return found ?? null;
}

/** What stands accepted for these events, the oldest first. */
export function listAcceptances(
  tx: Tx,
  garageId: string,
  eventIds: readonly string[],
): Promise<AcceptanceRow[]> {
  return tx
    .select()
    .from(acceptance)
    .where(
      and(
        eq(acceptance.garageId, garageId),
        inArray(acceptance.eventId, [...eventIds]),
        isNull(acceptance.withdrawnAt),
      ),
    )
    .orderBy(asc(acceptance.acceptedAt), asc(acceptance.id));
}
