import { isIP } from 'node:net';
import {
  insertDelivery,
  insertLetter,
  insertSecretKey,
  makeSecret,
  type Tx,
} from '@quartermark/db';
import { htmlPart, linkAddress, textPart } from '@quartermark/digest';
import type { Composed, OwnLetter } from './compose-garage.ts';

type With = {
  /** address people open, which the letters' links begin with */
  origin: string;
  now: Date;
  newId: () => string;
};

/** Stores the letters of a night as they leave the house, each with its delivery, and the webhook's. */
export async function storeLetters(tx: Tx, composed: Composed, how: With): Promise<void> {
  const { garageId, night, letters, post, demo } = composed;
  const dueAt = new Date(night.sendAt);
  for (const own of letters) {
    const letterId = how.newId();
    const mailed = !demo && post?.mail != null && own.reader.wish.mail;
    const secret = mailed && how.origin.startsWith('https:') ? makeSecret() : null;
    await insertLetter(tx, {
      ...partsOf(composed, own, how.origin),
      id: letterId,
      unsubscribeSecret: secret?.secret ?? null,
    });
    const { userId, email } = own.reader;
    if (secret !== null)
      await insertSecretKey(tx, {
        hash: secret.hash,
        kind: 'unsubscribe',
        garageId,
        userId,
        subjectId: letterId,
      });
    if (!mailed) continue;
    const id = how.newId();
    const address = { toAddress: email, messageId: messageIdOf(id, how.origin) };
    const made = { garageId, id, kind: 'letter' as const, letterId, madeAt: how.now };
    await insertDelivery(tx, { ...made, ...address }, dueAt);
  }
  if (demo || post?.hookUrl == null || letters.length === 0) return;
  const id = how.newId();
  const payload = payloadOf(composed, id, how.origin);
  await insertDelivery(tx, { garageId, id, kind: 'hook', payload, madeAt: how.now }, dueAt);
}

function partsOf({ garageId, night }: Composed, { reader, letter }: OwnLetter, origin: string) {
  const { said, ...body } = letter;
  const linkOf = linkAddress(origin, garageId);
  const { userId } = reader;
  return {
    garageId,
    userId,
    date: night.date,
    body,
    said,
    text: textPart(letter, linkOf),
    html: htmlPart(letter, linkOf),
  };
}

/** Kept by every try, so that a mailbox knows a second copy. A bare address of a machine is no host of mail. */
export function messageIdOf(id: string, origin: string): string {
  const { hostname } = new URL(origin);
  const host = hostname.replace(/^\[|\]$/g, '');
  const named = isIP(host) === 0 && host.includes('.');
  return `<letter.${id}@${named ? host : 'quartermark.invalid'}>`;
}

/** The night's longest letter: members differ in what they hear, and a webhook has no wishes of its own. */
function payloadOf({ garageId, name, night, letters }: Composed, id: string, origin: string) {
  const longest = letters.reduce((a, b) => (b.letter.lines.length > a.letter.lines.length ? b : a));
  const { subject, lines, rest } = longest.letter;
  const linkOf = linkAddress(origin, garageId);
  return {
    id,
    kind: 'letter',
    garage: { id: garageId, name },
    date: night.date,
    subject,
    lines: lines.map(({ word, text, car, link }) => ({ word, text, car, url: linkOf(link) })),
    more: rest?.count ?? 0,
  };
}
