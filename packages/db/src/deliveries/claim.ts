import { and, asc, eq, gt, lte, or, sql } from 'drizzle-orm';
import type { Db, Tx } from '../connect.ts';
import { delivery, deliveryDue } from '../letter-schema.ts';
import { enterGarage } from '../with-garage.ts';
import { type ToSend, toSend } from './to-send.ts';

/** Something that is to leave the house, and since when. */
export type DueDelivery = { id: string; garageId: string; dueAt: Date };

/** What is due, the longest due first. @param after the last one of the page before */
export async function dueDeliveries(
  db: Db,
  now: Date,
  page: { after: DueDelivery | null; limit: number },
): Promise<DueDelivery[]> {
  const { id, garageId, dueAt } = deliveryDue;
  const beyond =
    page.after === null
      ? undefined
      : or(gt(dueAt, page.after.dueAt), and(eq(dueAt, page.after.dueAt), gt(id, page.after.id)));
  return db.orm
    .select({ id, garageId, dueAt })
    .from(deliveryDue)
    .where(and(lte(dueAt, now), beyond))
    .orderBy(asc(dueAt), asc(id))
    .limit(page.limit);
}

export type Claimed = {
  garageId: string;
  id: string;
  /** this one included */
  tries: number;
  what: ToSend;
};

/**
 * Takes a delivery in hand for one try. Before anything is sent it stands committed that a try is made, and that
 * nobody else makes one before the lease is over: whoever dies in between leaves a row that comes round again.
 *
 * @param leaseMs longer than a try can last
 * @returns null where it is not due, somebody else has it in hand, or it is settled
 */
export function claimDelivery(
  db: Db,
  id: string,
  now: Date,
  leaseMs: number,
): Promise<Claimed | null> {
  return db.orm.transaction(async (tx) => {
    const [due] = await tx
      .select({ garageId: deliveryDue.garageId })
      .from(deliveryDue)
      .where(and(eq(deliveryDue.id, id), lte(deliveryDue.dueAt, now)))
      .for('update', { skipLocked: true });
    if (due === undefined) return null;
    const { garageId } = due;
    await enterGarage(tx, garageId);
    const raised = await raiseTries(tx, garageId, id);
    if (raised === null) {
      await tx.delete(deliveryDue).where(eq(deliveryDue.id, id));
      return null;
    }
    const dueAt = new Date(now.getTime() + leaseMs);
    await tx.update(deliveryDue).set({ dueAt }).where(eq(deliveryDue.id, id));
    return { garageId, id, tries: raised.tries, what: await toSend(tx, raised) };
  });
}

/** A try before it that left no words was never settled: how it ended, nobody knows. */
async function raiseTries(tx: Tx, garageId: string, id: string) {
  const [raised] = await tx
    .update(delivery)
    .set({
      tries: sql`${delivery.tries} + 1`,
      answerLost: sql`${delivery.answerLost} or (${delivery.tries} > 0 and ${delivery.words} is null)`,
      words: null,
    })
    .where(and(eq(delivery.garageId, garageId), eq(delivery.id, id), eq(delivery.state, 'waiting')))
    .returning();
  return raised ?? null;
}
