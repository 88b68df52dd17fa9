import { pruneOutbox, type StaleCar, takeStale } from '@quartermark/db';
import { causeOf } from './causes.ts';
import { chunksOf } from './night.ts';
import type { Post } from './post/start-post.ts';
import type { Relay } from './relay.ts';
import type { Shop } from './shop.ts';

const BATCH = 500;

export type Reconciler = { sweep(): Promise<void>; stop(): Promise<void> };

/**
 * Mends what a lost message left behind: every minute it compares what is wanted of each car with what
 * is done, and queues the difference itself. It looks only at the database, so it does not matter what
 * became of the queue.
 */
export function startReconciler(shop: Shop, relay: Relay, post: Post): Reconciler {
  const { db, lanes, log, pace, engine } = shop;
  /** cars found behind in the last sweep, with the version that was wanted */
  let seenBefore = new Map<string, number>();
  let running: Promise<void> | null = null;
  let stopped = false;

  async function sweepOnce() {
    await lanes.keepTicking(pace.tickMs);
    await relay.drain();
    await post.sweep();
    const seen = new Map<string, number>();
    let taken: StaleCar[];
    do {
      taken = await takeStale(db, {
        engineVersion: engine.version,
        // shorter than the interval, so that what is still behind then is seen twice running
        restMs: pace.reconcileMs / 2,
        limit: BATCH,
      });
      for (const car of taken) seen.set(car.carId, car.wanted);
      await queue(taken);
    } while (!stopped && taken.length === BATCH);
    seenBefore = seen;
    await pruneOutbox(db);
  }

  async function queue(stale: StaleCar[]) {
    const behind = stale.filter((car) => car.entriesBehind);
    // a minute is long enough for any job: whatever still holds the car's key is lost
    for (const car of behind) if (seenBefore.get(car.carId) === car.wanted) await lanes.forget(car);
    await lanes.publish(behind.map(({ garageId, carId }) => ({ garageId, carId })));
    // a newer engine is no hurry: people's entries must not wait behind every car there is
    for (const [garageId, carIds] of byGarage(stale.filter((car) => !car.entriesBehind)))
      await lanes.publishNight(chunksOf(garageId, carIds, `engine ${engine.version}`));
    if (stale.length > 0)
      log.info({ behind: behind.length, olderEngine: stale.length - behind.length }, 'reconciled');
  }

  function sweep(): Promise<void> {
    running ??= sweepOnce()
      .catch((error) => log.warn({ error: causeOf(error) }, 'could not reconcile; trying again'))
      .finally(() => {
        running = null;
      });
    return running;
  }

  const timer = setInterval(() => void sweep(), pace.reconcileMs);
  return {
    sweep,
    async stop() {
      stopped = true;
      clearInterval(timer);
      await running;
    },
  };
}

function byGarage(cars: readonly StaleCar[]): Map<string, string[]> {
  const garages = new Map<string, string[]>();
  for (const { garageId, carId } of cars)
    garages.set(garageId, [...(garages.get(garageId) ?? []), carId]);
  return garages;
}
