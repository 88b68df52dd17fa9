import { and, desc, eq, inArray, sql } from 'drizzle-orm';
import { user } from '../auth-schema.ts';
import type { Tx } from '../connect.ts';
import { delivery, deliveryDue, letter } from '../letter-schema.ts';

/** How a letter stands on its way; `notByMail`: it is read here alone. Instants are ISO. */
export type MailState = {
  state: 'notByMail' | 'waiting' | 'delivered' | 'givenUp';
  /** the mailbox; null: a webhook, or not by mail */
  to: string | null;
  tries: number;
  /** the server's, of the last try that ended */
  words: string | null;
  /** a second copy may have come */
  answerLost: boolean;
  /** delivered or given up */
  at: string | null;
  /** tried next */
  nextAt: string | null;
};

export const NOT_BY_MAIL: MailState = {
  state: 'notByMail',
  to: null,
  tries: 0,
  words: null,
  answerLost: false,
  at: null,
  nextAt: null,
};

const COLUMNS = {
  state: delivery.state,
  to: delivery.toAddress,
  tries: delivery.tries,
  words: delivery.words,
  answerLost: delivery.answerLost,
  settledAt: delivery.settledAt,
  dueAt: deliveryDue.dueAt,
};

const itsDue = and(eq(deliveryDue.id, delivery.id), eq(deliveryDue.garageId, delivery.garageId));

function stateOf(
  row: Omit<MailState, 'at' | 'nextAt'> & { settledAt: Date | null; dueAt: Date | null },
): MailState {
  const { state, to, tries, words, answerLost, settledAt, dueAt } = row;
  const [at, nextAt] = [settledAt?.toISOString() ?? null, dueAt?.toISOString() ?? null];
  return { state, to, tries, words, answerLost, at, nextAt };
}

/** How letters stand, by their ids; a letter that is missing goes not by mail (`NOT_BY_MAIL`). */
export async function mailStates(
  tx: Tx,
  garageId: string,
  letterIds: readonly string[],
): Promise<Map<string, MailState>> {
  if (letterIds.length === 0) return new Map();
  const rows = await tx
    .select({ letterId: delivery.letterId, ...COLUMNS })
    .from(delivery)
    .leftJoin(deliveryDue, itsDue)
    .where(and(eq(delivery.garageId, garageId), inArray(delivery.letterId, [...letterIds])));
  return new Map(rows.map((row) => [row.letterId ?? '', stateOf(row)]));
}

export type SentDelivery = {
  deliveryId: string;
  kind: 'letter' | 'test' | 'hook';
  /** whose letter it is, or who asked for the test; null: a webhook, or an account that is gone */
  name: string | null;
  /** of a letter: its civil date */
  date: string | null;
  /** ISO instant */
  madeAt: string;
  mail: MailState;
};

/** What left the garage, and what is to leave, the newest first. @param after the last id of the page before */
export async function listDeliveries(
  tx: Tx,
  garageId: string,
  page: { after: string | null; limit: number },
): Promise<{ deliveries: SentDelivery[]; next: string | null }> {
  const { after, limit } = page;
  const beyond =
    after === null
      ? undefined
      : sql`(${delivery.madeAt}, ${delivery.id}) < (select made_at, id from delivery where garage_id = ${garageId} and id = ${after}::uuid)`;
  const rows = await tx
    .select({
      deliveryId: delivery.id,
      kind: delivery.kind,
      name: user.name,
      date: letter.date,
      madeAt: delivery.madeAt,
      ...COLUMNS,
    })
    .from(delivery)
    .leftJoin(deliveryDue, itsDue)
    .leftJoin(letter, and(eq(letter.garageId, delivery.garageId), eq(letter.id, delivery.letterId)))
    .leftJoin(user, sql`${user.id} = coalesce(${letter.userId}, ${delivery.madeBy})`)
    .where(and(eq(delivery.garageId, garageId), beyond))
    .orderBy(desc(delivery.madeAt), desc(delivery.id))
    .limit(limit + 1);
  const deliveries = rows.slice(0, limit).map((row) => {
    const { deliveryId, kind, name, date, madeAt } = row;
    return { deliveryId, kind, name, date, madeAt: madeAt.toISOString(), mail: stateOf(row) };
  });
  const next = rows.length > limit ? (deliveries.at(-1)?.deliveryId ?? null) : null;
  return { deliveries, next };
}
