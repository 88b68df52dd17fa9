import { randomUUID } from 'node:crypto';
import { openLanes, PACE } from '@quartermark/jobs/worker';
import { silent } from '../support/jobs-worker.ts';
import { timed } from './statistics.ts';

export type EmptyTrip = { take(): Promise<number>; close(): Promise<void> };

/**
 * The least a queue can do: one process publishes a job, takes it up with a handler that does nothing and
 * hands it back, with the queue settings of the product. Counted until the queue has acknowledged that the
 * job is done.
 */
export async function emptyTrip(queue: {
  databaseJobUrl: string;
  redisUrl?: string | undefined;
}): Promise<EmptyTrip> {
  const lanes = await openLanes({ ...queue, pace: PACE, log: silent });
  let back = (_carId: string) => {};
  lanes.work({
    recompute: async () => {},
    night: async () => {},
    letters: async () => {},
    tick: async () => {},
    post: async () => {},
    gaveUp: () => {},
    finished: ({ carId }) => back(carId),
  });
  return {
    take: () =>
      timed(async () => {
        const carId = randomUUID();
        const taken = new Promise<void>((resolve) => {
          back = (one) => {
            if (one === carId) resolve();
          };
        });
        await lanes.publish([{ garageId: 'nowhere', carId }]);
        await taken;
      }),
    close: () => lanes.close(1000),
  };
}
