import type { Env } from './env.ts';

/** Test build only: stops for ever at a point, so that a test can kill the process right there. */
export function pauseAt(env: Env): (point: string) => Promise<void> {
  return (point) => {
    if (point !== env.QUARTERMARK_PAUSE_AT) return Promise.resolve();
    process.stdout.write(`paused at ${point}\n`);
    return new Promise(() => {});
  };
}
