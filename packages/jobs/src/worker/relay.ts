import { takeOutbox } from '@quartermark/db';
import { causeOf } from './causes.ts';
import type { Work } from './lanes.ts';
import type { Shop } from './shop.ts';

const BATCH = 500;

export type Relay = {
  /** Publishes whatever waits in the outbox; resolves when it was empty once after the call. */
  drain(): Promise<void>;
  stop(): Promise<void>;
};

/**
 * Life of an outbox row: written with the entry, in its transaction -> taken here under a row lock that
 * other relays skip -> published -> marked after the queue acknowledged -> pruned after a day. A relay
 * that dies between the last two leaves the row unmarked: it is published again, and the car's second
 * job finds nothing left to do.
 */
export function startRelay(shop: Shop): Relay {
  let wanted = false;
  let running: Promise<void> | null = null;
  let stopped = false;

  async function run() {
    while (wanted && !stopped) {
      wanted = false;
      while (!stopped && (await publishBatch(shop)) === BATCH);
    }
  }

  function drain(): Promise<void> {
    wanted = true;
    // a wake-up during a drain makes it go round once more
    running ??= run().finally(() => {
      running = null;
    });
    return running;
  }

  const safely = () =>
    drain().catch((error: unknown) =>
      shop.log.warn({ error: causeOf(error) }, 'the outbox could not be emptied; trying again'),
    );
  const poll = setInterval(() => void safely(), shop.pace.pollMs);

  return {
    drain: safely,
    async stop() {
      stopped = true;
      clearInterval(poll);
      await running?.catch(() => {});
    },
  };
}

async function publishBatch({ db, lanes, reached }: Shop): Promise<number> {
  return takeOutbox(db, BATCH, async (rows) => {
    await lanes.publish(oncePerCar(rows));
    await reached('afterPublish');
  });
}

/** A job reads the car's state when it runs, so one job stands for all of a car's rows. */
export function oncePerCar(rows: readonly Work[]): Work[] {
  const cars = new Map<string, Work>();
  for (const { garageId, carId } of rows) cars.set(`${garageId} ${carId}`, { garageId, carId });
  return [...cars.values()];
}
