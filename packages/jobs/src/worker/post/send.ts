import type { MailPost, ToSend } from '@quartermark/db';
import {
  type MailServer,
  type Outcome,
  postWebhook,
  sendLetter,
  testLetter,
} from '@quartermark/post';
import type { Shop } from '../shop.ts';

type Sendable = Exclude<ToSend, { is: 'nothing' }>;
type Here = Pick<Shop, 'policy' | 'clock' | 'origin'>;

/**
 * Sends a letter, a test letter or a webhook once. A letter is written from its stored parts, so that a second copy is
 * the first one.
 *
 * @throws RangeError where it cannot be sent as it is
 */
export function send({ policy, clock, origin }: Here, what: Sendable): Promise<Outcome> {
  if (what.is === 'hook') {
    const { url, secret, payload } = what;
    return postWebhook(policy, { url, secret }, payload, Math.floor(clock.now().getTime() / 1000));
  }
  const { post, to, messageId, madeAt } = what;
  const head = {
    from: { name: 'Quartermark', address: post.from },
    to: { address: to },
    messageId,
    date: madeAt,
  };
  if (what.is === 'test') return sendLetter(policy, serverOf(post), testLetter(head));
  const { subject, text, html, unsubscribeSecret: secret } = what;
  const unsubscribeUrl = secret === null ? null : unsubscribeAddress(origin, secret);
  return sendLetter(policy, serverOf(post), {
    ...head,
    subject,
    text,
    html,
    ...(unsubscribeUrl !== null && { unsubscribeUrl }),
  });
}

/** Takes a letter's reader off the list by one POST, without signing in (RFC 8058); null: only HTTPS may offer it. */
const unsubscribeAddress = (origin: string, secret: string) =>
  origin.startsWith('https:') ? `${origin}/api/unsubscribe/${secret}` : null;

function serverOf({ host, port, encryption, user, password }: MailPost): MailServer {
  const login = user === null || password === null ? {} : { login: { user, password } };
  return { host, port, encryption, ...login };
}
