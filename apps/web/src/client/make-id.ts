/**
 * A UUID of version 7 (RFC 9562, section 5.7): 48 bits of milliseconds, then random bits. Made with
 * `getRandomValues`, which a page has without a secure context, as `randomUUID` is not.
 *
 * @example makeId(Date.now(), crypto.getRandomValues(new Uint8Array(16)))
 */
export function makeId(epochMs: number, random: Uint8Array): string {
  const bytes = random.slice(0, 16);
  for (let i = 0; i < 6; i++) bytes[i] = Math.floor(epochMs / 256 ** (5 - i)) % 256;
  bytes[6] = 0x70 | ((bytes[6] ?? 0) & 0x0f);
  bytes[8] = 0x80 | ((bytes[8] ?? 0) & 0x3f);
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    hex.slice(12, 16),
    hex.slice(16, 20),
    hex.slice(20),
  ].join('-');
}

/** A new id, made now in this browser. */
export function newId(): string {
  return makeId(Date.now(), crypto.getRandomValues(new Uint8Array(16)));
}
