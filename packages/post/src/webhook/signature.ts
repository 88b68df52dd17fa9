import { createHmac, timingSafeEqual } from 'node:crypto';

export const TIMESTAMP_HEADER = 'Quartermark-Timestamp';
export const SIGNATURE_HEADER = 'Quartermark-Signature';

/** How far the clocks of sender and receiver may be apart, seconds. */
const TOLERANCE_S = 300;

/**
 * The headers that prove a body: `Quartermark-Timestamp` is the second of sending since 1970, and
 * `Quartermark-Signature` is `v1=` and the hex of HMAC-SHA256 (RFC 2104), keyed by the secret's UTF-8
 * bytes, over the timestamp, a full stop and the body, byte for byte.
 *
 * @throws RangeError where the second is not a whole number from 0, or the secret is shorter than 32
 */
export function signatureHeaders(
  secret: string,
  sentS: number,
  body: string | Uint8Array,
): Record<string, string> {
  if (!Number.isSafeInteger(sentS) || sentS < 0)
    throw new RangeError(`cannot sign at ${sentS}: it should be whole seconds since 1970`);
  if (secret.length < 32)
    throw new RangeError(`cannot sign with ${secret.length} characters: it should be 32 at least`);
  return {
    [TIMESTAMP_HEADER]: String(sentS),
    [SIGNATURE_HEADER]: `v1=${hmac(secret, String(sentS), body).toString('hex')}`,
  };
}

export type Verdict = 'genuine' | 'forged' | 'outOfTime';

/**
 * What a receiver asks of the two headers before it believes a body. The body has to be the bytes as they
 * came, before any parsing.
 *
 * @param nowS the receiver's clock, seconds since 1970
 */
export function verifySignature(
  secret: string,
  headers: { timestamp: string | undefined; signature: string | undefined },
  body: string | Uint8Array,
  nowS: number,
): Verdict {
  const { timestamp = '', signature = '' } = headers;
  const [, hex] = /^v1=([0-9a-f]{64})$/.exec(signature) ?? [];
  if (hex === undefined || !/^\d{1,15}$/.test(timestamp)) return 'forged';
  const right = hmac(secret, timestamp, body);
  if (!timingSafeEqual(right, Buffer.from(hex, 'hex'))) return 'forged';
  return Math.abs(nowS - Number(timestamp)) <= TOLERANCE_S ? 'genuine' : 'outOfTime';
}

const hmac = (secret: string, timestamp: string, body: string | Uint8Array): Buffer =>
  createHmac('sha256', secret).update(`${timestamp}.`).update(body).digest();
