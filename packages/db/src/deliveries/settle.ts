import { and, eq, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { delivery, deliveryDue } from '../letter-schema.ts';

/** How a try ended; `words` are the server's, at most 200 clean characters. */
export type Settled = { words: string; answerLost: boolean } & (
  | { state: 'delivered' | 'givenUp' }
  | { state: 'waiting'; nextAt: Date }
);

/**
 * Writes down how a try ended. A try that was overtaken by a later one says nothing any more, unless it was
 * delivered: then the later one is not repeated either.
 *
 * @param tries which try it was
 * @returns false where it was overtaken, or settled already
 */
export async function settleDelivery(
  tx: Tx,
  which: { garageId: string; id: string; tries: number },
  settled: Settled,
  now: Date,
): Promise<boolean> {
  const { garageId, id, tries } = which;
  const { state, words, answerLost } = settled;
  const written = await tx
    .update(delivery)
    .set({
      state,
      words,
      answerLost: sql`${delivery.answerLost} or ${answerLost}`,
      settledAt: state === 'waiting' ? null : now,
    })
    .where(
      and(
        eq(delivery.garageId, garageId),
        eq(delivery.id, id),
        eq(delivery.state, 'waiting'),
        state === 'delivered' ? undefined : eq(delivery.tries, tries),
      ),
    )
    .returning({ id: delivery.id });
  if (written.length === 0) return false;
  const due = and(eq(deliveryDue.id, id), eq(deliveryDue.garageId, garageId));
  if (settled.state === 'waiting')
    await tx.update(deliveryDue).set({ dueAt: settled.nextAt }).where(due);
  else await tx.delete(deliveryDue).where(due);
  return true;
}
