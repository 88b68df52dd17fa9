import { type Lanes, openLanes, PACE, type Work } from '@quartermark/jobs/worker';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { eventually } from '../support/eventually.ts';
import { JobsBench } from '../support/jobs-bench.ts';
import { BACKENDS, silent } from '../support/jobs-worker.ts';

describe.each(BACKENDS)('the queue', ({ backend, here }) => {
  describe.skipIf(!here)(`on ${backend}`, () => {
    let bench: JobsBench;
    let lanes: Lanes;
    const done: string[] = [];
    let gate = Promise.resolve();

    beforeAll(async () => {
      bench = await JobsBench.open('jobs_queue', backend);
      lanes = await openLanes({
        databaseJobUrl: bench.database.jobUrl,
        redisUrl: bench.redis?.url,
        pace: PACE,
        log: silent,
      });
      lanes.work({
        async recompute({ carId }) {
          await gate;
          done.push(carId);
        },
        night: async () => {},
        letters: async () => {},
        tick: async () => {},
        post: () => gate,
        gaveUp: () => {},
      });
    });
    afterAll(async () => {
      await lanes?.close(4000);
      await bench?.close();
    });

    const work = (carId: string): Work => ({ garageId: 'pebble-lane', carId });
    const times = (carId: string) => done.filter((one) => one === carId).length;

    test('publish() of the same row twice leaves the car open for later work', async () => {
      for (const time of [1, 2, 3]) {
        await lanes.publish([work('twice')]);
        await eventually(`time ${time}`, async () => times('twice') === time);
      }
    });

    test('publish() while a job runs makes exactly one more', async () => {
      let open = () => {};
      gate = new Promise<void>((resolve) => {
        open = resolve;
      });
      await lanes.publish([work('busy')]);
      await lanes.publish([work('marker')]);
      for (let more = 0; more < 20; more += 1) await lanes.publish([work('busy')]);
      open();
      await eventually('the second run', async () => times('busy') >= 1 && times('marker') === 1);
      await lanes.publish([work('last')]);
      await eventually('what came after', async () => times('last') === 1);
      expect(times('busy')).toBeLessThanOrEqual(2);
    });

    test('waitingPost() counts the deliveries that nobody has begun', async () => {
      let open = () => {};
      gate = new Promise<void>((resolve) => {
        open = resolve;
      });
      await lanes.publishPost(
        Array.from({ length: PACE.postAtOnce + 2 }, (_, n) => ({ deliveryId: `d${n}`, dueMs: 0 })),
      );
      const waiting = (n: number) => async () => (await lanes.waitingPost()) === n;
      await eventually('all but two are begun', waiting(2));
      open();
      await eventually('none waits', waiting(0));
    });

    test('forget() frees a car whose key is held by a job that is gone', async () => {
      await lanes.publish([work('held')]);
      await eventually('the first run', async () => times('held') === 1);
      await lanes.forget(work('held'));
      await lanes.publish([work('held')]);
      await eventually('the second run', async () => times('held') === 2);
    });
  });
});
