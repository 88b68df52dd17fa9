import type { Published } from '@quartermark/digest/feed';
import { and, asc, desc, eq, isNull, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { feed, feedPublished, secretKey } from '../letter-schema.ts';

export type FeedRow = typeof feed.$inferSelect;

/** The private calendar a member has now; null: none. @param lock keeps others from publishing meanwhile */
export async function standingFeed(
  tx: Tx,
  garageId: string,
  userId: string,
  { lock = false } = {},
): Promise<FeedRow | null> {
  const asked = tx
    .select()
    .from(feed)
    .where(and(eq(feed.garageId, garageId), eq(feed.userId, userId), isNull(feed.revokedAt)));
  const [found] = await (lock ? asked.for('update') : asked);
  return found ?? null;
}

/**
 * Makes a member's private calendar. It counts on from what the one before it was told: a calendar program may
 * know the same entries from there.
 *
 * @param hash of the secret in its address, which is kept nowhere
 */
export async function makeFeed(
  tx: Tx,
  made: { garageId: string; id: string; userId: string; hash: string; at: Date },
): Promise<void> {
  const { garageId, id, userId, hash, at } = made;
  await tx.insert(feed).values({ garageId, id, userId, madeAt: at });
  const key = { hash, kind: 'feed' as const, garageId, userId, subjectId: id };
  await tx.insert(secretKey).values(key);
  await inheritPublished(tx, made);
}

/** What was told last in this member's calendars is what the new one counts on from. */
async function inheritPublished(
  tx: Tx,
  { garageId, id, userId }: { garageId: string; id: string; userId: string },
): Promise<void> {
  const [former] = await tx
    .select({ id: feed.id })
    .from(feedPublished)
    .innerJoin(
      feed,
      and(eq(feed.garageId, feedPublished.garageId), eq(feed.id, feedPublished.feedId)),
    )
    .where(and(eq(feed.garageId, garageId), eq(feed.userId, userId)))
    .orderBy(desc(feedPublished.modifiedAt))
    .limit(1);
  if (former === undefined) return;
  await tx
    .update(feedPublished)
    .set({ feedId: id })
    .where(and(eq(feedPublished.garageId, garageId), eq(feedPublished.feedId, former.id)));
}

/** Its address opens nothing any more. */
export async function revokeFeed(tx: Tx, { garageId, id }: FeedRow, at: Date): Promise<void> {
  await tx
    .update(feed)
    .set({ revokedAt: at })
    .where(and(eq(feed.garageId, garageId), eq(feed.id, id)));
  await tx
    .delete(secretKey)
    .where(and(eq(secretKey.garageId, garageId), eq(secretKey.subjectId, id)));
}

/** What calendars were told of each entry last. */
export async function readPublished(
  tx: Tx,
  garageId: string,
  feedId: string,
): Promise<Published[]> {
  const rows = await tx
    .select()
    .from(feedPublished)
    .where(and(eq(feedPublished.garageId, garageId), eq(feedPublished.feedId, feedId)))
    .orderBy(asc(feedPublished.uid));
  return rows.map(({ uid, print, sequence, modifiedAt }) => ({
    uid,
    print,
    sequence,
    modifiedAt: modifiedAt.getTime(),
  }));
}

/** A statement holds 65,535 values at most. */
const ROWS_AT_ONCE = 1000;

/** @param published only what says something else than before */
export async function writePublished(
  tx: Tx,
  { garageId, id: feedId }: FeedRow,
  published: readonly Published[],
): Promise<void> {
  const rows = published.map((one) => {
    return { ...one, garageId, feedId, modifiedAt: new Date(one.modifiedAt) };
  });
  for (let from = 0; from < rows.length; from += ROWS_AT_ONCE)
    await tx
      .insert(feedPublished)
      .values(rows.slice(from, from + ROWS_AT_ONCE))
      .onConflictDoUpdate({
        target: [feedPublished.garageId, feedPublished.feedId, feedPublished.uid],
        set: {
          print: sql`excluded.print`,
          sequence: sql`excluded.sequence`,
          modifiedAt: sql`excluded.modified_at`,
        },
      });
}
