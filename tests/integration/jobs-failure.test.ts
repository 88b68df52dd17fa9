import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { eventually } from '../support/eventually.ts';
import { JobsBench } from '../support/jobs-bench.ts';
import { BACKENDS } from '../support/jobs-worker.ts';
import { plainEngine } from '../support/plain-engine.ts';

describe.each(BACKENDS)('a recompute that fails', ({ backend, here }) => {
  describe.skipIf(!here)(`queue on ${backend}`, () => {
    let bench: JobsBench;
    beforeAll(async () => {
      bench = await JobsBench.open('jobs_failure', backend);
    });
    afterEach(() => bench.stopWorkers());
    afterAll(() => bench?.close());

    const failing = async () => {
      const engine = plainEngine();
      engine.failWith = 'could not weigh the log: the scale is broken';
      const worker = await bench.start({ engine });
      const carId = await bench.garage.addCar();
      const failure = await bench.failureOf(carId);
      return { engine, worker, carId, failure };
    };

    test('recompute() is tried five times and then leaves a row that says why', async () => {
      const { engine, failure, carId } = await failing();
      expect(engine.asked).toBe(5);
      expect(failure).toMatchObject({
        attempts: 5,
        cause: 'could not weigh the log: the scale is broken',
      });
      expect(await bench.garage.snapshotOf(carId)).toBeNull();
    });

    test('recompute() rests a minute after it failed for good', async () => {
      const { carId } = await failing();
      const work = await bench.ledger.workOf(carId);
      const restMs = (work?.nextTryAt.getTime() ?? 0) - Date.now();
      expect(restMs).toBeGreaterThan(50_000);
      expect(restMs).toBeLessThanOrEqual(60_000);
    });

    test('reconcile() leaves a resting car alone and takes it when its time has come', async () => {
      const { engine, worker, carId } = await failing();
      engine.failWith = null;
      await worker.reconcile();
      expect(await bench.garage.failureOf(carId)).not.toBeNull();
      await bench.ledger.bringForward(carId);
      await worker.reconcile();
      await bench.snapshotAt(carId, 2);
      expect(await bench.garage.failureOf(carId)).toBeNull();
    });

    test('a new entry does not wait for the rest to be over', async () => {
      const { engine, carId } = await failing();
      engine.failWith = null;
      const version = await bench.garage.record(carId, 38_200);
      await bench.snapshotAt(carId, version);
      expect(await bench.garage.failureOf(carId)).toBeNull();
      expect((await bench.ledger.workOf(carId))?.attempts).toBe(0);
    });

    test('a second failure keeps the hour it began and counts on', async () => {
      const { worker, carId, failure } = await failing();
      await bench.ledger.bringForward(carId);
      await worker.reconcile();
      const again = await eventually('the second failure', async () => {
        const row = await bench.garage.failureOf(carId);
        return row?.attempts === 10 && row;
      });
      expect(again.since).toEqual(failure.since);
      expect((await bench.ledger.workOf(carId))?.attempts).toBe(2);
    });

    test('a failing car does not hold up the others', async () => {
      const engine = plainEngine();
      const sound = engine.answer;
      const bad = await bench.garage.addCar();
      const good = await bench.garage.addCar();
      engine.answer = (asked) => {
        if (asked.car.book.car.id === bad)
          throw new Error('could not read the book of the bad car');
        return sound(asked);
      };
      await bench.start({ engine });
      await bench.snapshotAt(good, 2);
      expect((await bench.failureOf(bad)).cause).toBe('could not read the book of the bad car');
    });

    test('the failure names an entry that no longer fits the schema', async () => {
      const carId = await bench.garage.addCar();
      const entryId = await bench.garage.recordUnreadable(carId);
      await bench.start({ engine: plainEngine() });
      expect((await bench.failureOf(carId)).cause).toContain(entryId);
    });
  });
});
