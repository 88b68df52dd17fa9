import { type LetterWish, WISH_USUAL } from '@quartermark/digest';
import { and, eq, getTableColumns } from 'drizzle-orm';
import { type Change, changeNewest } from '../change-newest.ts';
import type { Tx } from '../connect.ts';
import { letterSetting, postSetting } from '../letter-schema.ts';

/** The row of what a member wants; null: he never said. */
export async function readWish(tx: Tx, garageId: string, userId: string) {
  const [found] = await tx
    .select()
    .from(letterSetting)
    .where(and(eq(letterSetting.garageId, garageId), eq(letterSetting.userId, userId)));
  return found ?? null;
}

/** @returns the new revision; null if it is past `baseRevision` (0: he never said) */
export function changeWish(
  tx: Tx,
  change: Change & { userId: string; wish: LetterWish },
): Promise<number | null> {
  const { garageId, userId, wish: body } = change;
  return changeNewest(tx, letterSetting, { garageId, userId }, change, { body });
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
export function changePost(tx: Tx, change: PostChange): Promise<number | null> {
  const { garageId, set } = change;
  return changeNewest(tx, postSetting, { garageId }, change, set);
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
