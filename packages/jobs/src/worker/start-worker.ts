import { connect, type Listener, listen, OUTBOX_CHANNEL } from '@quartermark/db';
import { ENGINE_VERSION } from '@quartermark/engine';
import type { AddressPolicy } from '@quartermark/post';
import type { Logger } from 'pino';
import { answerOf } from './answer.ts';
import { handlersOf } from './handlers.ts';
import { type Lanes, PACE, type Pace } from './lanes.ts';
import { type Post, startPost } from './post/start-post.ts';
import { openLanes } from './queue.ts';
import { type Reconciler, startReconciler } from './reconciler.ts';
import { type Relay, startRelay } from './relay.ts';
import type { Clock, Engine, Point, Shop } from './shop.ts';

const CONNECTIONS = 10;
const GRACE_MS = 4000;

export type WorkerOptions = {
  /** role `job`; a direct address, because the relay listens on it */
  databaseJobUrl: string;
  /** without it the queue lies in the same PostgreSQL */
  redisUrl?: string | undefined;
  /** address people open: links of letters begin with it */
  origin: string;
  /** where letters and webhooks may go, see `addressPolicyOf()` */
  policy: AddressPolicy;
  clock: Clock;
  log: Logger;
  engine?: Engine;
  pace?: Partial<Pace>;
  reached?: (point: Point) => Promise<void>;
};

export type RunningWorker = {
  /** Resolves when entries are being taken up and whatever lay in the outbox is published. */
  ready: Promise<void>;
  /** Compares what is wanted with what is done at once, instead of within the minute. */
  reconcile(): Promise<void>;
  /** Takes nothing new, gives running jobs 4 s, closes every connection. */
  stop(): Promise<void>;
};

export function startWorker(options: WorkerOptions): RunningWorker {
  const { databaseJobUrl, redisUrl, origin, policy, clock, log } = options;
  const pace = { ...PACE, ...options.pace };
  const engine = options.engine ?? { version: ENGINE_VERSION, answer: answerOf };
  const reached = options.reached ?? (() => Promise.resolve());
  const db = connect(databaseJobUrl, { max: CONNECTIONS, name: 'quartermark worker' });
  const parts: {
    lanes?: Lanes;
    relay?: Relay;
    post?: Post;
    reconciler?: Reconciler;
    listener?: Listener;
  } = {};

  async function start() {
    const lanes = await openLanes({ redisUrl, databaseJobUrl, pace, log });
    parts.lanes = lanes;
    const shop: Shop = { db, lanes, clock, log, engine, pace, origin, policy, reached };
    const post = startPost(shop);
    parts.post = post;
    lanes.work(handlersOf(shop, post));
    const relay = startRelay(shop);
    parts.relay = relay;
    const drain = () => {
      void relay.drain();
      void post.sweep();
    };
    parts.listener = listen(databaseJobUrl, OUTBOX_CHANNEL, drain, drain);
    await parts.listener.ready;
    await relay.drain();
    parts.reconciler = startReconciler(shop, relay, post);
    await parts.reconciler.sweep();
  }

  const ready = start();
  // `ready` is the caller's to await; a failure must not also count as unhandled
  ready.catch(() => {});

  return {
    ready,
    reconcile: async () => parts.reconciler?.sweep(),
    async stop() {
      const { listener, relay, reconciler, post } = parts;
      await Promise.all([listener?.close(), relay?.stop(), reconciler?.stop(), post?.stop()]);
      await parts.lanes?.close(GRACE_MS);
      await db.close();
    },
  };
}
