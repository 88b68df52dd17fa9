import type { LiveHub } from './live/hub.ts';
import type { Asker, World } from './world.ts';

/** What one request brings along. */
export type Context = {
  world: World;
  hub: LiveHub;
  /** who asks, looked up once per request; null if signed out */
  whoAsks(): Promise<Asker | null>;
  /** the same, looked up anew: a subscription outlives a session */
  whoAsksNow(): Promise<Asker | null>;
};
