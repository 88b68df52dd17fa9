import { setTimeout as wait } from 'node:timers/promises';

/**
 * Waits for a condition, asking again every 20 ms. Returns what was found, or fails saying what was
 * waited for.
 */
export async function eventually<T>(
  what: string,
  look: () => Promise<T | null | false | undefined>,
  withinMs = 20_000,
): Promise<T> {
  const until = Date.now() + withinMs;
  for (;;) {
    const found = await look();
    if (found !== null && found !== false && found !== undefined) return found;
    if (Date.now() > until) throw new Error(`waited ${withinMs} ms in vain for: ${what}`);
    await wait(20);
  }
}
