import {
  connect,
  type Db,
  listen,
  replaceIfLater,
  SNAPSHOT_SCHEMA,
  type SnapshotNotice,
  withGarage,
} from '@quartermark/db';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { noOilYet } from '../../packages/engine/test/no-oil-yet.ts';
import { nothingOpen } from '../../packages/engine/test/nothing-open.ts';
import { eventually } from '../support/eventually.ts';
import { holdOnce } from '../support/hold-once.ts';
import { JobsBench } from '../support/jobs-bench.ts';
import { BACKENDS } from '../support/jobs-worker.ts';
import { plainEngine } from '../support/plain-engine.ts';

describe.each(BACKENDS)('a recompute', ({ backend, here }) => {
  describe.skipIf(!here)(`queue on ${backend}`, () => {
    let bench: JobsBench;
    beforeAll(async () => {
      bench = await JobsBench.open('jobs_recompute', backend);
    });
    afterEach(() => bench.stopWorkers());
    afterAll(() => bench?.close());

    test('recompute() follows a commit, woken by the notification alone', async () => {
      await bench.start({ engine: plainEngine() });
      const carId = await bench.garage.addCar();
      const version = await bench.garage.record(carId, 38_100);
      const snapshot = await bench.snapshotAt(carId, version);
      expect(snapshot).toMatchObject({ urgency: 1, engineVersion: 1, asOf: '2026-03-10' });
    });

    test('recompute() tells those who listen which version the snapshot rests on', async () => {
      await bench.start({ engine: plainEngine() });
      const heard: SnapshotNotice[] = [];
      const ear = listen(
        bench.database.appUrl,
        'qm_snapshot',
        (text) => heard.push(JSON.parse(text)),
        () => {},
      );
      await ear.ready;
      const carId = await bench.garage.addCar();
      const version = await bench.garage.record(carId, 38_100);
      await eventually('the notice', async () =>
        heard.some(({ c, v }) => c === carId && v === version),
      );
      await ear.close();
      expect(heard.every(({ g }) => g === bench.garage.id)).toBe(true);
    });

    test('the relay finds by its poll what no notification spoke of', async () => {
      await bench.start({ engine: plainEngine(), pace: { pollMs: 100 } });
      const carId = await bench.garage.addCar();
      const version = await bench.garage.recordUnheard(carId, 38_100);
      await bench.snapshotAt(carId, version);
    });

    test('the relay publishes at its start what was committed while it was away', async () => {
      const carId = await bench.garage.addCar();
      const version = await bench.garage.record(carId, 38_100);
      await bench.start({ engine: plainEngine() });
      await bench.snapshotAt(carId, version);
    });

    test('recompute() runs twice for 50 entries that arrive while it is at work', async () => {
      const engine = plainEngine();
      const gate = holdOnce('beforeWrite');
      await bench.start({ engine, reached: gate.reached });
      const carId = await bench.garage.addCar();
      await eventually('the first job to be at work', async () => gate.holding());
      let version = 0;
      for (let entry = 1; entry <= 50; entry += 1)
        version = await bench.garage.record(carId, 38_000 + entry);
      await eventually('the outbox to be empty', bench.ledger.outboxIsEmpty);
      gate.letGo();
      const snapshot = await bench.snapshotAt(carId, version);
      expect(snapshot.urgency).toBe(50);
      expect(engine.asked).toBe(2);
    });

    test('recompute() runs once for entries that were written while the worker was away', async () => {
      const engine = plainEngine();
      const carId = await bench.garage.addCar();
      let version = 0;
      for (let entry = 1; entry <= 50; entry += 1)
        version = await bench.garage.record(carId, 38_000 + entry);
      await bench.start({ engine });
      await bench.snapshotAt(carId, version);
      expect(engine.asked).toBe(1);
    });

    test('recompute() goes on after every connection to the database was cut', async () => {
      await bench.start({ engine: plainEngine(), pace: { pollMs: 500 } });
      const carId = await bench.garage.addCar();
      await bench.snapshotAt(carId, 2);
      expect(await bench.ledger.cutWorkerOff()).toBeGreaterThan(1);
      const version = await bench.garage.record(carId, 38_100);
      await bench.snapshotAt(carId, version);
      // and is woken again, not only polled
      const next = await bench.garage.record(carId, 38_200);
      await bench.snapshotAt(carId, next);
    });

    test('recompute() by two workers at once ends at the last version of every car', async () => {
      await Promise.all([
        bench.start({ engine: plainEngine() }),
        bench.start({ engine: plainEngine() }),
      ]);
      const cars = [await bench.garage.addCar(), await bench.garage.addCar()];
      const last = new Map<string, number>();
      for (let entry = 1; entry <= 20; entry += 1)
        for (const carId of cars) last.set(carId, await bench.garage.record(carId, 38_000 + entry));
      for (const [carId, version] of last) {
        const snapshot = await bench.snapshotAt(carId, version);
        expect(snapshot.urgency).toBe(20);
      }
    });

    test('recompute() that was overtaken never puts back an older answer', async () => {
      const carId = await bench.garage.addCar();
      const gate = holdOnce('beforeWrite');
      await bench.start({ engine: plainEngine(), reached: gate.reached });
      // the worker holds version 2 in its hands, unwritten, while another brings version 3
      await eventually('the worker to hold its answer', async () => gate.holding());
      const version = await bench.garage.record(carId, 38_100);
      const quick = connect(bench.database.jobUrl, { max: 2 });
      await writeAhead(quick, bench.garage.id, carId, version);
      gate.letGo();
      await eventually('both jobs to be over', async () => {
        const work = await bench.ledger.workOf(carId);
        return work?.done === version;
      });
      await quick.close();
      expect((await bench.garage.snapshotOf(carId))?.inputVersion).toBe(version);
      expect((await bench.garage.snapshotOf(carId))?.urgency).toBe(777);
    });
  });
});

async function writeAhead(db: Db, garageId: string, carId: string, inputVersion: number) {
  const lane = {
    next: [],
    odometer: null,
    level: null,
    oil: null,
    laidUp: null,
    status: 'inUse' as const,
    stop: null,
    road: null,
    open: 0,
    flags: 0,
  };
  await withGarage(db, { kind: 'job' }, garageId, (tx) =>
    replaceIfLater(
      tx,
      {
        garageId,
        carId,
        inputVersion,
        engineVersion: 1,
        snapshotSchema: SNAPSHOT_SCHEMA,
        asOf: '2026-03-10',
        computedAt: new Date(),
        urgency: 777,
        laidUp: false,
        overdue: 0,
        dueSoon: 0,
        notOnRecord: 0,
        lane,
      },
      {
        road: null,
        analysis: {
          schema: 1,
          engineVersion: 1,
          car: carId,
          asOf: '2026-03-10',
          flags: [],
          items: [],
          laidUp: null,
          odometer: null,
          lastLevel: null,
          oil: noOilYet(),
          ...nothingOpen,
        },
      },
    ),
  );
}
