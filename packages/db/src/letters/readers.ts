import { type LetterWish, type Said, WISH_USUAL } from '@quartermark/digest';
import { and, asc, desc, eq } from 'drizzle-orm';
import { member, user } from '../auth-schema.ts';
import type { Tx } from '../connect.ts';
import { letter, letterSetting } from '../letter-schema.ts';

/** A member of a garage as its letters know him. */
export type LetterReader = {
  userId: string;
  name: string;
  email: string;
  wish: LetterWish;
  /** of what he wants; 0: he never said */
  revision: number;
};

/** Members of a garage with what they want. @param userId of one alone */
export async function letterReaders(
  tx: Tx,
  garageId: string,
  userId?: string,
): Promise<LetterReader[]> {
  const rows = await tx
    .select({
      userId: user.id,
      name: user.name,
      email: user.email,
      body: letterSetting.body,
      revision: letterSetting.revision,
    })
    .from(member)
    .innerJoin(user, eq(user.id, member.userId))
    .leftJoin(
      letterSetting,
      and(eq(letterSetting.garageId, garageId), eq(letterSetting.userId, member.userId)),
    )
    .where(
      and(
        eq(member.organizationId, garageId),
        userId === undefined ? undefined : eq(member.userId, userId),
      ),
    )
    .orderBy(asc(user.id));
  return rows.map(({ body, revision, ...who }) => ({
    ...who,
    wish: { ...WISH_USUAL, ...body },
    revision: revision ?? 0,
  }));
}

/** What each member was told last, by his id; nobody is missing who ever had a letter. */
export async function lastSaid(tx: Tx, garageId: string): Promise<Map<string, Said[]>> {
  const rows = await tx
    .selectDistinctOn([letter.userId], { userId: letter.userId, said: letter.said })
    .from(letter)
    .where(eq(letter.garageId, garageId))
    .orderBy(asc(letter.userId), desc(letter.date));
  return new Map(rows.map(({ userId, said }) => [userId, said]));
}
