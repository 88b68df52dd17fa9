import { and, count, desc, eq, isNull, lt, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { digest, letter } from '../letter-schema.ts';

/** Whose letters; a member has one a date at most. */
type Whose = { garageId: string; userId: string };

export type LetterLineRow = {
  letterId: string;
  date: string;
  subject: string;
  lines: number;
  read: boolean;
};

/** Letters of a member, the newest first. @param after the date of the last one of the page before */
export async function listLetters(
  tx: Tx,
  { garageId, userId }: Whose,
  page: { after: string | null; limit: number },
): Promise<{ letters: LetterLineRow[]; next: string | null }> {
  const { after, limit } = page;
  const rows = await tx
    .select({
      letterId: letter.id,
      date: letter.date,
      subject: sql<string>`${letter.body} ->> 'subject'`,
      lines: sql<number>`jsonb_array_length(${letter.body} -> 'lines')`,
      readAt: letter.readAt,
    })
    .from(letter)
    .where(
      and(
        eq(letter.garageId, garageId),
        eq(letter.userId, userId),
        after === null ? undefined : lt(letter.date, after),
      ),
    )
    .orderBy(desc(letter.date))
    .limit(limit + 1);
  const letters = rows
    .slice(0, limit)
    .map(({ readAt, ...row }) => ({ ...row, read: readAt !== null }));
  return { letters, next: rows.length > limit ? (letters.at(-1)?.date ?? null) : null };
}

/** One letter of a member, as it was composed; null: there is none of that id, or it is somebody else's. */
export async function readLetter(tx: Tx, { garageId, userId }: Whose, letterId: string) {
  const [found] = await tx
    .select({
      date: letter.date,
      body: letter.body,
      text: letter.text,
      html: letter.html,
      readAt: letter.readAt,
      missed: digest.missed,
    })
    .from(letter)
    .innerJoin(digest, and(eq(digest.garageId, letter.garageId), eq(digest.date, letter.date)))
    .where(and(eq(letter.garageId, garageId), eq(letter.userId, userId), eq(letter.id, letterId)));
  return found ?? null;
}

/** How many letters of a member he has not marked as read. */
export async function countUnread(tx: Tx, { garageId, userId }: Whose): Promise<number> {
  const [found] = await tx
    .select({ unread: count() })
    .from(letter)
    .where(and(eq(letter.garageId, garageId), eq(letter.userId, userId), isNull(letter.readAt)));
  return found?.unread ?? 0;
}

/** @param readAt null: not read. @returns false if the member has no such letter */
export async function setRead(
  tx: Tx,
  { garageId, userId }: Whose,
  letterId: string,
  readAt: Date | null,
): Promise<boolean> {
  const set = await tx
    .update(letter)
    .set({ readAt })
    .where(and(eq(letter.garageId, garageId), eq(letter.userId, userId), eq(letter.id, letterId)))
    .returning({ id: letter.id });
  return set.length > 0;
}
