import { connect } from '@quartermark/db';
import { type Auth, createAuth } from './auth/create-auth.ts';
import { type Context, createContext } from './context.ts';
import { type LiveHub, liveHub } from './live/hub.ts';
import { type AppRouter, appRouter } from './router.ts';
import type { Clock, Log, Reached, World } from './world.ts';

export type ApiSettings = {
  /** PostgreSQL, as role `app` */
  databaseAppUrl: string;
  /** signs session cookies; at least 32 characters */
  secret: string;
  /** the address people use, such as http://127.0.0.1:3000 */
  origin: string;
  port: number;
  clock: Clock;
  /** no rate limits; never in a plain build */
  testBuild: boolean;
  log: Log;
  /** fires when the process is told to stop: subscriptions end, so that it can */
  stopping?: AbortSignal;
  /** only for tests: called at marked points, awaited before going on */
  reached?: Reached;
};

const GO_ON: Reached = () => Promise.resolve();

export type Api = {
  auth: Auth;
  appRouter: AppRouter;
  hub: LiveHub;
  createContext(request: { headers: Headers }): Context;
  close(): Promise<void>;
};

const CONNECTIONS = 10;

/** Everything the web process needs, made once. Nothing is opened before the first request. */
export function createApi(settings: ApiSettings): Api {
  const { databaseAppUrl, secret, origin, port, clock, testBuild, log } = settings;
  const db = connect(databaseAppUrl, { max: CONNECTIONS, name: 'quartermark web' });
  const world: World = { db, clock, log, reached: settings.reached ?? GO_ON };
  const hub = liveHub(databaseAppUrl, settings.stopping ?? new AbortController().signal, log);
  const auth = createAuth(world, { secret, origin, port, testBuild });
  return {
    auth,
    appRouter,
    hub,
    createContext: ({ headers }) => createContext({ world, hub, auth }, headers),
    async close() {
      await hub.close();
      await db.close();
    },
  };
}
