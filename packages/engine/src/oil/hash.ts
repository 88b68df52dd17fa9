/**
 * A 53-bit hash of a text, for telling whether two inputs are the same. Not for anything secret.
 *
 * Two multiplicative 32-bit hashes over the code units, mixed at the end as in MurmurHash3's finaliser.
 */
export function hashOf(text: string): number {
  let a = 0xdeadbeef;
  let b = 0x41c6ce57;
  for (let i = 0; i < text.length; i += 1) {
    const code = text.charCodeAt(i);
    a = Math.imul(a ^ code, 2654435761);
    b = Math.imul(b ^ code, 1597334677);
  }
  a = mix(a) ^ mix(b ^ (b >>> 13));
  b = mix(b) ^ mix(a ^ (a >>> 13));
  return 4294967296 * (b & 0x1fffff) + (a >>> 0);
}

function mix(value: number): number {
  let h = Math.imul(value ^ (value >>> 16), 2246822507);
  h = Math.imul(h ^ (h >>> 13), 3266489909);
  return h ^ (h >>> 16);
}
