import { Redis } from 'ioredis';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { eventually } from '../support/eventually.ts';
import { holdOnce } from '../support/hold-once.ts';
import { JobsBench } from '../support/jobs-bench.ts';
import { BACKENDS } from '../support/jobs-worker.ts';
import { plainEngine } from '../support/plain-engine.ts';

describe.each(BACKENDS)('the reconciler', ({ backend, here }) => {
  describe.skipIf(!here)(`queue on ${backend}`, () => {
    let bench: JobsBench;
    beforeAll(async () => {
      bench = await JobsBench.open('jobs_reconcile', backend);
    });
    afterEach(() => bench.stopWorkers());
    afterAll(() => bench?.close());

    const emptyQueue = async () => {
      if (!bench.redis) return bench.ledger.emptyQueue();
      const redis = new Redis(bench.redis.url);
      await redis.flushall();
      redis.disconnect();
    };

    test('reconcile() mends what an emptied queue has lost', async () => {
      const engine = plainEngine();
      const gate = holdOnce('beforeWrite');
      const worker = await bench.start({
        engine,
        reached: gate.reached,
        pace: { peopleAtOnce: 1 },
      });
      const held = await bench.garage.addCar();
      await eventually('a job to be at work', async () => gate.holding());
      const cars = [await bench.garage.addCar(), await bench.garage.addCar()];
      await eventually('the outbox to be empty', bench.ledger.outboxIsEmpty);
      await emptyQueue();
      gate.letGo();
      await bench.snapshotAt(held, 2);
      // published and marked, but the queue knows nothing of them any more
      for (const carId of cars) expect(await bench.garage.snapshotOf(carId)).toBeNull();
      await worker.reconcile();
      for (const carId of cars) await bench.snapshotAt(carId, 2);
    });

    test('reconcile() finds a car that has an answer of this engine, but an older one', async () => {
      const carId = await bench.garage.addCar();
      await bench.start({ engine: plainEngine() });
      await bench.snapshotAt(carId, 2);
      await bench.stopWorkers();
      const gate = holdOnce('beforeWrite');
      const worker = await bench.start({
        engine: plainEngine(),
        reached: gate.reached,
        pace: { peopleAtOnce: 1 },
      });
      const held = await bench.garage.addCar();
      await eventually('a job to be at work', async () => gate.holding());
      const version = await bench.garage.record(carId, 38_100);
      await eventually('the outbox to be empty', bench.ledger.outboxIsEmpty);
      await emptyQueue();
      gate.letGo();
      await bench.snapshotAt(held, 2);
      expect((await bench.garage.snapshotOf(carId))?.inputVersion).toBe(2);
      await worker.reconcile();
      await bench.snapshotAt(carId, version);
    });

    test('reconcile() schedules the night anew after the queue was emptied', async () => {
      const worker = await bench.start({ engine: plainEngine(), pace: { tickMs: 500 } });
      await emptyQueue();
      await bench.ledger.openDay(bench.garage.id);
      await worker.reconcile();
      await eventually('the day to be closed by a tick', async () => {
        const next = await bench.ledger.nextDayOf(bench.garage.id);
        return next === '2026-03-11T00:00:00.000Z';
      });
    });

    test('a newer engine redoes every car, an equal one none', async () => {
      const carId = await bench.garage.addCar();
      await bench.start({ engine: plainEngine(1) });
      await bench.snapshotAt(carId, 2);
      await eventually('all to be done', bench.ledger.allDone);
      await bench.stopWorkers();

      const same = plainEngine(1);
      await bench.start({ engine: same });
      await bench.stopWorkers();
      expect(same.asked).toBe(0);

      const newer = plainEngine(2);
      await bench.start({ engine: newer });
      await eventually('the newer engine to have answered', async () => {
        const snapshot = await bench.garage.snapshotOf(carId);
        return snapshot?.engineVersion === 2;
      });
      expect((await bench.garage.snapshotOf(carId))?.inputVersion).toBe(2);
    });

    test('an older engine that is still running is redone by the newer', async () => {
      const carId = await bench.garage.addCar();
      await bench.start({ engine: plainEngine(2) });
      await bench.snapshotAt(carId, 2);
      await bench.stopWorkers();
      await bench.start({ engine: plainEngine(1) });
      const version = await bench.garage.record(carId, 38_300);
      await bench.snapshotAt(carId, version);
      await bench.stopWorkers();
      await bench.start({ engine: plainEngine(2) });
      await eventually('the newer engine to have answered', async () => {
        const snapshot = await bench.garage.snapshotOf(carId);
        return snapshot?.engineVersion === 2 && snapshot.inputVersion === version;
      });
    });

    test('a removed car loses its snapshot and nothing is left to do for it', async () => {
      await bench.start({ engine: plainEngine() });
      const carId = await bench.garage.addCar();
      await bench.snapshotAt(carId, 2);
      await bench.garage.removeCar(carId);
      await eventually('the work to be gone', async () => !(await bench.ledger.workOf(carId)));
      expect(await bench.garage.snapshotOf(carId)).toBeNull();
    });
  });
});
