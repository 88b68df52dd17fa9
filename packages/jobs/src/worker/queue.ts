/**
 * The only file that imports bullmq, and the only one that knows whether the queue lies on Redis or on
 * PostgreSQL (schema `bullmq`, made by `migrate.ts`).
 *
 * Jobs carry no id of their own. Coalescing already makes a second publication of the same row
 * harmless, and on the PostgreSQL backend (bullmq 6.7) an add whose id belongs to a finished job that is
 * still kept makes that finished job the holder of the coalescing key: every later job of the car would
 * be swallowed until retention removes it. `tests/integration/jobs-queue.test.ts` holds this.
 */
import {
  type ConnectionOptions,
  createPostgresBackend,
  type JobsOptions,
  Queue,
  Worker,
  withBackend,
} from 'bullmq';
import type { Logger } from 'pino';
import type { Lanes, LetterWork, NightWork, Pace, PostWork, Work } from './lanes.ts';
import { warnOfEviction } from './warn-of-eviction.ts';

export type QueueConfig = {
  redisUrl?: string | undefined;
  databaseJobUrl: string;
  pace: Pace;
  log: Logger;
};

/** Times a job is tried before it has failed for good. */
export const TRIES = 5;

/** 1.5 s of back-off in all: an add meanwhile may be dropped, and later retries are the reconciler's. */
const KEEP_TRYING: JobsOptions = {
  attempts: TRIES,
  backoff: { type: 'exponential', delay: 100 },
  removeOnComplete: { age: 3600, count: 1000 },
  removeOnFail: { age: 7 * 24 * 3600, count: 1000 },
};

const TICK = 'night-tick';
/** Chunks stand behind the tick, which must not wait for a whole night's work. */
const CHUNK_PRIORITY = 10;
const LETTERS = 'letters';
/** Cars come first: letters speak of their new day. */
const LETTERS_PRIORITY = 20;
/** A job that was lost holds its delivery back no longer than this. */
const POST_KEY_MS = 50_000;

export const coalescingKey = (garageId: string, carId: string) => `${garageId}-${carId}`;

/** Makes or updates schema `bullmq`, in one transaction under bullmq's own lock. Connects as owner. */
export async function migrateQueueSchema(ownerUrl: string): Promise<void> {
  const { Queue } = withBackend(createPostgresBackend);
  const queue = new Queue('people', {
    connection: { connectionString: ownerUrl, schema: 'bullmq', max: 1, migrate: true },
    skipMetasUpdate: true,
  });
  try {
    await queue.waitUntilReady();
  } finally {
    await queue.close();
  }
}

/** Opens the queues. Waits until they answer, so that a publication afterwards fails fast. */
export async function openLanes(config: QueueConfig): Promise<Lanes> {
  const { log, pace } = config;
  const engine = chooseEngine(config);
  const [people, night, post] = [
    engine.queue('people'),
    engine.queue('night'),
    engine.queue('post'),
  ];
  const queues = [people, night, post];
  const workers: Worker[] = [];
  for (const queue of queues)
    queue.on('error', (error) => log.warn({ error: error.message }, 'queue: connection trouble'));
  await Promise.all(queues.map((queue) => queue.waitUntilReady()));
  if (config.redisUrl) await warnOfEviction(config.redisUrl, log);

  return {
    async publish(jobs) {
      await people.addBulk(
        jobs.map((job) => ({
          name: 'recompute',
          data: job,
          opts: {
            ...KEEP_TRYING,
            deduplication: {
              id: coalescingKey(job.garageId, job.carId),
              keepLastIfActive: true,
            },
          },
        })),
      );
    },
    async forget(job) {
      await people.removeDeduplicationKey(coalescingKey(job.garageId, job.carId));
    },
    async publishNight(jobs) {
      await night.addBulk(
        jobs.map((job) => ({
          name: 'night-chunk',
          data: job,
          opts: {
            ...KEEP_TRYING,
            priority: CHUNK_PRIORITY,
            deduplication: { id: `${job.garageId} ${job.why} ${job.carIds[0]}` },
          },
        })),
      );
    },
    async publishLetters(jobs) {
      await night.addBulk(
        jobs.map((job) => ({
          name: LETTERS,
          data: job,
          opts: {
            ...KEEP_TRYING,
            priority: LETTERS_PRIORITY,
            deduplication: { id: `letters ${job.garageIds[0]}` },
          },
        })),
      );
    },
    async publishPost(jobs) {
      await post.addBulk(
        jobs.map((job) => ({
          name: 'post',
          data: job,
          opts: {
            ...KEEP_TRYING,
            deduplication: { id: `${job.deliveryId} ${job.dueMs}`, ttl: POST_KEY_MS },
          },
        })),
      );
    },
    waitingPost: () => post.getWaitingCount(),
    async keepTicking(everyMs) {
      const scheduler = await night.getJobScheduler(TICK);
      if (scheduler?.every === everyMs) return;
      await night.upsertJobScheduler(
        TICK,
        { every: everyMs },
        { name: TICK, data: {}, opts: { removeOnComplete: true, removeOnFail: { count: 50 } } },
      );
    },
    work(handlers) {
      const onPeople = engine.worker('people', pace.peopleAtOnce, async (data, tries) =>
        handlers.recompute(data as Work, tries),
      );
      const onNight = engine.worker('night', pace.nightAtOnce, async (data, tries, name) => {
        if (name === TICK) await handlers.tick();
        else if (name === LETTERS) await handlers.letters(data as LetterWork);
        else await handlers.night(data as NightWork, tries);
      });
      const onPost = engine.worker('post', pace.postAtOnce, (data) =>
        handlers.post(data as PostWork),
      );
      workers.push(onPeople, onNight, onPost);
      for (const worker of workers)
        worker.on('error', (error) => log.warn({ error: error.message }, 'queue: trouble'));
      onPeople.on('completed', (job) => handlers.finished?.(job.data as Work));
      // a job whose process died again and again never reaches its handler's last try
      onPeople.on('failed', (job, error) => {
        if (job && error.message.startsWith('job stalled'))
          handlers.gaveUp(job.data as Work, error);
      });
    },
    async close(graceMs) {
      // stop taking work at once, give what runs its grace, then leave it to stalled-job recovery
      await within(graceMs, Promise.all(workers.map((worker) => worker.close())), () =>
        Promise.all(workers.map((worker) => worker.close(true))),
      );
      await Promise.all(queues.map((queue) => queue.close()));
    },
  };
}

type Handle = (data: unknown, tries: { left: number }, name: string) => Promise<void>;

type Engine = {
  queue(name: string): Queue;
  worker(name: string, atOnce: number, handle: Handle): Worker;
};

function chooseEngine({ redisUrl, databaseJobUrl, pace }: QueueConfig): Engine {
  const processor =
    (handle: Handle) =>
    (job: { data: unknown; name: string; attemptsMade: number; opts: JobsOptions }) =>
      handle(job.data, { left: (job.opts.attempts ?? 1) - job.attemptsMade - 1 }, job.name);
  const timing = {
    lockDuration: pace.lockMs,
    stalledInterval: pace.lockMs / 2,
    maxStalledCount: 3,
  };
  if (redisUrl) {
    // a producer that cannot reach Redis says so at once; the outbox row stays and is tried again
    const producing: ConnectionOptions = {
      url: redisUrl,
      enableOfflineQueue: false,
      maxRetriesPerRequest: 1,
    };
    const working: ConnectionOptions = { url: redisUrl, maxRetriesPerRequest: null };
    const prefix = 'quartermark';
    return {
      queue: (name) => new Queue(name, { connection: producing, prefix }),
      worker: (name, atOnce, handle) =>
        new Worker(name, processor(handle), {
          connection: working,
          prefix,
          concurrency: atOnce,
          ...timing,
        }),
    };
  }
  const onPostgres = withBackend(createPostgresBackend);
  // 3 queues x 1 + 3 workers x (2 + 1 listening) = 12 connections
  const connection = (max: number) => ({
    connectionString: databaseJobUrl,
    schema: 'bullmq',
    connectionTimeoutMillis: 5000,
    max,
  });
  return {
    queue: (name) => new onPostgres.Queue(name, { connection: connection(1) }) as unknown as Queue,
    worker: (name, atOnce, handle) =>
      new onPostgres.Worker(name, processor(handle), {
        connection: connection(2),
        concurrency: atOnce,
        ...timing,
      }) as unknown as Worker,
  };
}

async function within(ms: number, work: Promise<unknown>, late: () => Promise<unknown>) {
  let timer: NodeJS.Timeout | undefined;
  const timeUp = new Promise<'late'>((resolve) => {
    timer = setTimeout(() => resolve('late'), ms);
  });
  const first = await Promise.race([work.then(() => 'done' as const), timeUp]);
  clearTimeout(timer);
  if (first === 'late') await late();
}
