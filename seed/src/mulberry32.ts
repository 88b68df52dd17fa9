/**
 * Mulberry32: a small seeded generator of numbers that look random.
 *
 * A 32-bit state steps by 0x6d2b79f5 and is then mixed; the same seed always gives the same numbers.
 * Good enough to make an invented diary look lived in; not for statistics and not for secrets.
 *
 * @param seed any integer; only its low 32 bits count
 * @returns a function that gives the next number, 0 <= x < 1
 * @remarks Published by Tommy Ettinger in 2017, public domain; written down from memory.
 * @example mulberry32(1)() // 0.6270739405881613
 */
export function mulberry32(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
