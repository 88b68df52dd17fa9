import { and, eq } from 'drizzle-orm';
import { member } from '../auth-schema.ts';
import type { Tx } from '../connect.ts';
import { type delivery, letter, type MailSetting } from '../letter-schema.ts';
import { letterReaders } from '../letters/readers.ts';
import { readPost } from '../letters/write.ts';

/** The garage's mail server with its login. */
export type MailPost = MailSetting & { password: string | null };

type Mail = { post: MailPost; to: string; messageId: string; madeAt: Date };

/** What one try sends, with the secrets that it takes: for the worker alone. */
export type ToSend =
  | (Mail & {
      is: 'letter';
      subject: string;
      text: string;
      html: string;
      unsubscribeSecret: string | null;
    })
  | (Mail & { is: 'test' })
  | { is: 'hook'; url: string; secret: string; payload: Record<string, unknown> }
  /** what it takes is not there any more; `why` is a sentence for people */
  | { is: 'nothing'; why: string };

const nothing = (why: string): ToSend => ({ is: 'nothing', why });

/** Reads what a delivery sends as things stand now: who has left the garage, or wants no mail, gets none. */
export async function toSend(tx: Tx, row: typeof delivery.$inferSelect): Promise<ToSend> {
  const { garageId, kind, payload, toAddress: to, messageId, madeAt, madeBy } = row;
  const post = await readPost(tx, garageId);
  if (kind === 'hook') {
    if (post?.hookUrl == null || post.hookSecret === null || payload === null)
      return nothing('The garage has no webhook any more.');
    return { is: 'hook', url: post.hookUrl, secret: post.hookSecret, payload };
  }
  if (post?.mail == null || to === null || messageId === null)
    return nothing('The garage has no mail server any more.');
  const mail = { post: { ...post.mail, password: post.mailPassword }, to, messageId, madeAt };
  if (kind === 'test')
    return (await isMember(tx, garageId, madeBy))
      ? { is: 'test', ...mail }
      : nothing('Whoever asked for it is no member of the garage any more.');
  return letterToSend(tx, row, mail);
}

async function letterToSend(tx: Tx, row: typeof delivery.$inferSelect, mail: Mail) {
  const { garageId, letterId } = row;
  const [found] = await tx
    .select({
      userId: letter.userId,
      body: letter.body,
      text: letter.text,
      html: letter.html,
      unsubscribeSecret: letter.unsubscribeSecret,
    })
    .from(letter)
    .where(and(eq(letter.garageId, garageId), eq(letter.id, letterId ?? '')));
  if (found === undefined) return nothing('The letter is not there any more.');
  const { userId, body, ...parts } = found;
  const [reader] = await letterReaders(tx, garageId, userId);
  if (reader === undefined) return nothing('Its reader is no member of the garage any more.');
  if (!reader.wish.mail) return nothing('Its reader wants no letters by mail any more.');
  return { is: 'letter' as const, ...mail, ...parts, subject: body.subject };
}

async function isMember(tx: Tx, garageId: string, userId: string | null): Promise<boolean> {
  if (userId === null) return false;
  const found = await tx
    .select({ userId: member.userId })
    .from(member)
    .where(and(eq(member.organizationId, garageId), eq(member.userId, userId)));
  return found.length > 0;
}
