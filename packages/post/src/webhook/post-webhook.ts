import http from 'node:http';
import https from 'node:https';
import { isIP, type LookupFunction } from 'node:net';
import { within } from '../address-policy/connect.ts';
import { type AddressPolicy, AddressRefused, type Destination } from '../address-policy/policy.ts';
import type { Outcome } from '../outcome.ts';
import { cleanWords, networkWords } from '../words.ts';
import { signatureHeaders } from './signature.ts';

export type Webhook = {
  url: string;
  /** shared with the receiver; at least 32 characters */
  secret: string;
  /** PEM text of an authority to trust besides the system's */
  trustedAuthority?: string;
};

const WITHIN_MS = 15_000;
/** Enough for 200 characters of four bytes each; the rest of a reply is not read. */
const REPLY_BYTES = 1024;
const TRY_AGAIN = [408, 425, 429];

/**
 * Posts JSON, signed (see `signatureHeaders`), to exactly the address that the policy looked at. A
 * redirect is not followed. The url, which may hold a secret of its own, is in no word that comes back.
 *
 * @param sentS the second of sending since 1970
 * @param withinMs longest time for name, connection and reply together
 */
export async function postWebhook(
  policy: AddressPolicy,
  hook: Webhook,
  body: unknown,
  sentS: number,
  withinMs = WITHIN_MS,
): Promise<Outcome> {
  const bytes = Buffer.from(JSON.stringify(body));
  const signed = signatureHeaders(hook.secret, sentS, bytes);
  const until = performance.now() + withinMs;
  const progress = { handedOver: false };
  try {
    const { url, destination } = await within(withinMs, look(policy, hook.url));
    const leftMs = Math.max(1, until - performance.now());
    return await new Promise<Outcome>((resolve, reject) => {
      const request = (url.protocol === 'https:' ? https : http).request(url, {
        method: 'POST',
        agent: false,
        lookup: onlyTo(destination),
        ...(isIP(destination.host) === 0 && { servername: destination.host }),
        minVersion: 'TLSv1.2',
        ca: hook.trustedAuthority,
        signal: AbortSignal.timeout(Math.ceil(leftMs)),
        headers: {
          'Content-Type': 'application/json',
          'Content-Length': bytes.length,
          'Accept-Encoding': 'identity',
          'User-Agent': 'Quartermark',
          ...signed,
        },
      });
      request.once('finish', () => {
        progress.handedOver = true;
      });
      request.on('error', reject);
      request.once('response', (reply) => {
        request.off('error', reject).on('error', () => reply.destroy());
        readReply(reply, (said) => resolve(judge(reply, said)));
      });
      request.end(bytes);
    });
  } catch (error) {
    if (error instanceof AddressRefused)
      return { is: 'refused', by: 'policy', said: cleanWords(error.message) };
    const tooLate = (error as Error).name === 'AbortError';
    const said = networkWords(tooLate ? { code: 'ETIMEDOUT' } : error);
    return { is: 'tryAgain', by: 'network', said, answerLost: progress.handedOver };
  }
}

async function look(policy: AddressPolicy, text: string) {
  if (!URL.canParse(text)) throw new AddressRefused('The address is none: it needs https://HOST/…');
  const url = new URL(text);
  const secure = url.protocol === 'https:';
  if (!secure && url.protocol !== 'http:')
    throw new AddressRefused('The address should begin with https://.');
  if (url.username !== '' || url.password !== '')
    throw new AddressRefused('The address should hold no user and no password.');
  const port = Number(url.port || (secure ? 443 : 80));
  const destination = await policy.destination('webhook', url.hostname, port);
  // in the clear only inside of a house whose operator said so
  if (!secure && !destination.byLeave)
    throw new AddressRefused('The address should begin with https://.');
  return { url, destination };
}

/** A look-up that knows one answer: the name was resolved before, and is not asked for again. */
function onlyTo({ address }: Destination): LookupFunction {
  const family = isIP(address);
  return (_host, options, done) => {
    if (options.all) done(null, [{ address, family }]);
    else done(null, address, family);
  };
}

/** The beginning of a reply; a reply that breaks off or drags on has said what it has said. */
function readReply(reply: http.IncomingMessage, done: (said: string) => void): void {
  const parts: Buffer[] = [];
  let length = 0;
  const finish = () => {
    reply.off('data', take);
    reply.destroy();
    done(cleanWords(Buffer.concat(parts).subarray(0, REPLY_BYTES).toString('utf8')));
  };
  const take = (part: Buffer) => {
    parts.push(part);
    length += part.length;
    if (length >= REPLY_BYTES) finish();
  };
  reply.on('data', take);
  reply.once('close', finish);
  // the status is known, so that a body that breaks off changes nothing
  reply.on('error', () => reply.destroy());
}

function judge({ statusCode = 0, headers }: http.IncomingMessage, reply: string): Outcome {
  const said = cleanWords(`${statusCode} ${reply}`);
  if (statusCode >= 200 && statusCode < 300) return { is: 'accepted', said };
  if (statusCode >= 300 && statusCode < 400)
    return {
      is: 'refused',
      by: 'server',
      said: `${statusCode}: it points to another address, which is not followed. Enter the address that answers itself.`,
    };
  if (statusCode < 500 && !TRY_AGAIN.includes(statusCode))
    return { is: 'refused', by: 'server', said };
  const asked = /^\d{1,9}$/.test(headers['retry-after'] ?? '') ? headers['retry-after'] : undefined;
  return {
    is: 'tryAgain',
    by: 'server',
    said,
    answerLost: false,
    ...(asked !== undefined && { notBeforeS: Number(asked) }),
  };
}
