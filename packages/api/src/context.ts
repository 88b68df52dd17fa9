import { standingOf } from '@quartermark/db';
import type { Auth } from './auth/create-auth.ts';
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

export function createContext(
  parts: { world: World; hub: LiveHub; auth: Auth },
  headers: Headers,
): Context {
  const { world, hub, auth } = parts;
  const whoAsksNow = async () => {
    const session = await auth.api.getSession({ headers });
    if (!session) return null;
    const userId = session.user.id;
    const { demo, ownerExists } = await standingOf(world.db.orm, userId);
    // the demo ends where ownership begins, however old its session is
    return demo && ownerExists ? null : { userId, demo };
  };
  let asked: Promise<Asker | null> | undefined;
  const whoAsks = () => {
    asked ??= whoAsksNow();
    return asked;
  };
  return { world, hub, whoAsks, whoAsksNow };
}
