import type { AcceptanceInput } from '@quartermark/engine/log';
import { and, eq, isNull } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { acceptance } from '../readiness-schema.ts';

export type NewAcceptance = {
  garageId: string;
  id: string;
  acceptance: AcceptanceInput;
  at: Date;
  by: string;
};

/** @returns false if the id is in use in this garage, or the need is accepted already */
export async function insertAcceptance(tx: Tx, made: NewAcceptance): Promise<boolean> {
  const { garageId, id, at, by } = made;
  const { event: eventId, car: carId, need, because } = made.acceptance;
  const rows = await tx
    .insert(acceptance)
    .values({ garageId, id, eventId, carId, need, because, acceptedAt: at, acceptedBy: by })
    .onConflictDoNothing()
    .returning({ id: acceptance.id });
  return rows.length === 1;
}

/** Ends it; it stays on record. @returns false if it is not there or was withdrawn before */
export async function withdrawAcceptance(
  tx: Tx,
  { garageId, id, at, by }: Omit<NewAcceptance, 'acceptance'>,
): Promise<boolean> {
  const rows = await tx
    .update(acceptance)
    .set({ withdrawnAt: at, withdrawnBy: by })
    .where(
      and(eq(acceptance.garageId, garageId), eq(acceptance.id, id), isNull(acceptance.withdrawnAt)),
    )
    .returning({ id: acceptance.id });
  return rows.length === 1;
}
