import { describe, expect, test } from 'vitest';
import {
  SIGNATURE_HEADER,
  signatureHeaders,
  TIMESTAMP_HEADER,
  verifySignature,
} from './signature.ts';

const SECRET = 'key-for-tests-only-0123456789abcdef';
const BODY = '{"night":"2026-06-15"}';
const SENT_S = 1_781_496_000;

const given = signatureHeaders(SECRET, SENT_S, BODY);
const timestamp = given[TIMESTAMP_HEADER] ?? '';
const signature = given[SIGNATURE_HEADER] ?? '';
const verdict = (
  more: { timestamp?: string; signature?: string } = {},
  body = BODY,
  nowS = SENT_S,
) => verifySignature(SECRET, { timestamp, signature, ...more }, body, nowS);

test('signatureHeaders() are what openssl makes of the same', () => {
  // printf '%s' '1781496000.{"night":"2026-06-15"}' | openssl dgst -sha256 -hmac KEY
  expect(given).toEqual({
    'Quartermark-Timestamp': '1781496000',
    'Quartermark-Signature': 'v1=8f94b9f663f160b80f6b91f44b5be57fff4d1b804f42ccd1b1533dfa80ea76bd',
  });
});

describe('verifySignature()', () => {
  test('believes what was signed, as text and as bytes', () => {
    expect(verdict()).toBe('genuine');
    expect(verifySignature(SECRET, { timestamp, signature }, Buffer.from(BODY), SENT_S)).toBe(
      'genuine',
    );
  });

  test.each([
    ['another body', {}, `${BODY} `],
    ['another time', { timestamp: String(SENT_S + 1) }, BODY],
    ['a full stop that moved', { timestamp: `${SENT_S}.` }, BODY],
    ['no signature', { signature: '' }, BODY],
    ['half a signature', { signature: signature.slice(0, -2) }, BODY],
    ['another version', { signature: signature.replace('v1', 'v2') }, BODY],
    [
      'a digit changed',
      { signature: signature.replace(/.$/, (d) => (d === '0' ? '1' : '0')) },
      BODY,
    ],
  ])('does not believe %s', (_what, more, body) => {
    expect(verdict(more, body)).toBe('forged');
  });

  test('does not believe another secret', () => {
    const other = `${SECRET}x`;
    expect(verifySignature(other, { timestamp, signature }, BODY, SENT_S)).toBe('forged');
  });

  test.each([
    [300, 'genuine'],
    [-300, 'genuine'],
    [301, 'outOfTime'],
    [-301, 'outOfTime'],
  ])('of a clock %i s apart says %s', (apartS, is) => {
    expect(verdict({}, BODY, SENT_S + apartS)).toBe(is);
  });
});

test('signatureHeaders() need whole seconds and a secret worth its name', () => {
  expect(() => signatureHeaders(SECRET, 1.5, BODY)).toThrow(RangeError);
  expect(() => signatureHeaders('short', SENT_S, BODY)).toThrow(RangeError);
});
