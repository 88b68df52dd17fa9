import { type LetterWish, WISH_USUAL } from '@quartermark/digest';
import { and, eq, getTableColumns, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { letterSetting, postSetting } from '../letter-schema.ts';

type Change = { garageId: string; baseRevision: number; at: Date; by: string };

/** The row of what a member wants; null: he never said. */
export async function readWish(tx: Tx, garageId: string, userId: string) {
  const [found] = await tx
    .select()
    .from(letterSetting)
    .where(and(eq(letterSetting.garageId, garageId), eq(letterSetting.userId, userId)));
  return found ?? null;
}

/** @returns the new revision; null if it is past `baseRevision` (0: he never said) */
export async function changeWish(
  tx: Tx,
  change: Change & { userId: string; wish: LetterWish },
): Promise<number | null> {
  const { garageId, userId, baseRevision, wish: body, at, by } = change;
  const changed = { body, changedAt: at, changedBy: by };
  if (baseRevision === 0) {
    const made = await tx
      .insert(letterSetting)
      .values({ garageId, userId, ...changed })
      .onConflictDoNothing()
      .returning({ revision: letterSetting.revision });
    return made[0]?.revision ?? null;
  }
  const [row] = await tx
    .update(letterSetting)
    .set({ ...changed, revision: sql`${letterSetting.revision} + 1` })
    .where(
      and(
        eq(letterSetting.garageId, garageId),
        eq(letterSetting.userId, userId),
        eq(letterSetting.revision, baseRevision),
      ),
    )
    .returning({ revision: letterSetting.revision });
  return row?.revision ?? null;
}

const { mailPassword: _password, hookSecret: _secret, ...SHOWN } = getTableColumns(postSetting);

/** The garage's post without its secrets, which nobody reads back; null: it was never set. */
export async function readPostShown(tx: Tx, garageId: string) {
  const [found] = await tx
    .select({ ...SHOWN })
    .from(postSetting)
    .where(eq(postSetting.garageId, garageId));
  return found ?? null;
}

export type PostChange = Change & {
  /** what is left out stays as it is */
  set: Partial<
    Pick<
      typeof postSetting.$inferInsert,
      'sendMinute' | 'mail' | 'mailPassword' | 'hookUrl' | 'hookSecret'
    >
  >;
};

/** @returns the new revision; null if it is past `baseRevision` (0: it was never set) */
export async function changePost(tx: Tx, change: PostChange): Promise<number | null> {
  const { garageId, baseRevision, set, at, by } = change;
  const changed = { ...set, changedAt: at, changedBy: by };
  if (baseRevision === 0) {
    const made = await tx
      .insert(postSetting)
      .values({ garageId, ...changed })
      .onConflictDoNothing()
      .returning({ revision: postSetting.revision });
    return made[0]?.revision ?? null;
  }
  const [row] = await tx
    .update(postSetting)
    .set({ ...changed, revision: sql`${postSetting.revision} + 1` })
    .where(and(eq(postSetting.garageId, garageId), eq(postSetting.revision, baseRevision)))
    .returning({ revision: postSetting.revision });
  return row?.revision ?? null;
}

/** A member wants no letters by mail any more; whatever else he wants stays. */
export async function stopMail(tx: Tx, garageId: string, userId: string, at: Date): Promise<void> {
  const row = await readWish(tx, garageId, userId);
  const wish: LetterWish = { ...WISH_USUAL, ...row?.body, mail: false };
  if (row?.body.mail === false) return;
  const change = { garageId, userId, baseRevision: row?.revision ?? 0, wish, at, by: userId };
  // changed in between: what was wanted last is looked at once more
  if ((await changeWish(tx, change)) === null) await stopMail(tx, garageId, userId, at);
}
