import {
  connect,
  type Db,
  replaceIfLater,
  SNAPSHOT_SCHEMA,
  schema,
  withGarage,
} from '@quartermark/db';
import type { DueLine } from '@quartermark/engine/display';
import type { SaidLine } from '@quartermark/engine/said';
import { asc, eq } from 'drizzle-orm';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { eventually } from '../support/eventually.ts';
import { holdOnce } from '../support/hold-once.ts';
import { JobsBench } from '../support/jobs-bench.ts';
import type { JobsGarage } from '../support/jobs-garage.ts';
import { BACKENDS, clockAt } from '../support/jobs-worker.ts';
import { type PlainEngine, plainEngine } from '../support/plain-engine.ts';
import { roadAsked } from '../support/road-asked.ts';

const LINE: Omit<DueLine, 'id' | 'name'> = {
  state: 'fine',
  reasonCode: null,
  binding: 'months',
  limit: 12,
  remaining: null,
  unit: null,
  day: '2027-01-05',
  dates: { early: '2027-01-05', likely: '2027-01-05', late: '2027-01-05' },
  overdueSince: null,
  lastDone: '2026-01-05',
  leadDays: 0,
  parts: null,
};

/** Says of each item how many entries it saw: in the line's name, and in the days of what is said. */
function sayingEngine(version = 1): PlainEngine {
  const engine = plainEngine(version);
  const counting = engine.answer;
  engine.answer = (asked) => {
    const { book } = asked.car;
    const seen = book.entries.length;
    const said = (item: string): SaidLine => ({
      car: book.car.id,
      item,
      saidOn: book.asOf,
      since: '2026-01-05',
      early: '2027-01-01',
      likely: `2027-02-${String(seen + 1).padStart(2, '0')}`,
      late: null,
      binding: 'km',
      limits: '{}',
      engineVersion: version,
      afterwards: false,
    });
    return {
      ...counting(asked),
      lines: book.items.map(({ id }) => ({ ...LINE, id, name: `${seen} seen` })),
      said: book.items.map(({ id }) => said(id)),
    };
  };
  return engine;
}

describe.each(BACKENDS)('what falls due', ({ backend, here }) => {
  describe.skipIf(!here)(`queue on ${backend}`, () => {
    let bench: JobsBench;
    beforeAll(async () => {
      bench = await JobsBench.open('jobs_due', backend);
    });
    afterEach(() => bench.stopWorkers());
    afterAll(() => bench?.close());

    const namesOf = (carId: string) =>
      bench.garage.inside(async (tx) => {
        const { dueLine } = schema;
        const rows = await tx.select().from(dueLine).where(eq(dueLine.carId, carId));
        return rows.map(({ name }) => name);
      });
    const saidOf = (carId: string) => readSaid(bench.garage, carId);

    test('recompute() writes a car’s lines with its snapshot, in place of those it had', async () => {
      await bench.start({ engine: sayingEngine() });
      const carId = await bench.garage.addCar();
      await bench.snapshotAt(carId, 2);
      expect(await namesOf(carId)).toEqual(['0 seen']);
      await bench.snapshotAt(carId, await bench.garage.record(carId, 38_100));
      expect(await namesOf(carId)).toEqual(['1 seen']);
    });

    test('recompute() writes what the car’s oil is compared by, and takes it off with the car', async () => {
      const engine = sayingEngine();
      const plain = engine.answer;
      engine.answer = (asked) => {
        const answer = plain(asked);
        const road = { low: 0.2, likely: 0.3 + asked.car.book.entries.length, high: 9 };
        return { ...answer, oil: { ...answer.oil, status: 'ok', road } };
      };
      await bench.start({ engine });
      const carId = await bench.garage.addCar();
      await bench.snapshotAt(carId, 2);
      const oilOf = () =>
        bench.garage.inside(async (tx) => {
          const { oilLine } = schema;
          const rows = await tx.select().from(oilLine).where(eq(oilLine.carId, carId));
          return rows.map(({ roadLikely }) => roadLikely);
        });
      expect(await oilOf()).toEqual([0.3]);
      await bench.snapshotAt(carId, await bench.garage.record(carId, 38_100));
      expect(await oilOf()).toEqual([1.3]);
      await bench.garage.removeCar(carId);
      await eventually('the line to be gone', async () => (await oilOf()).length === 0);
    });

    test('recompute() drops the lines of a car that was taken off the list', async () => {
      await bench.start({ engine: sayingEngine() });
      const carId = await bench.garage.addCar();
      await bench.snapshotAt(carId, 2);
      await bench.garage.removeCar(carId);
      await eventually('the lines to be gone', async () => (await namesOf(carId)).length === 0);
      expect(await bench.garage.snapshotOf(carId)).toBeNull();
    });

    test('recompute() that was overtaken writes neither lines nor what it would have said', async () => {
      const carId = await bench.garage.addCar();
      const gate = holdOnce('beforeWrite');
      await bench.start({ engine: sayingEngine(), reached: gate.reached });
      await eventually('the worker to hold its answer', async () => gate.holding());
      const version = await bench.garage.record(carId, 38_100);
      const quick = connect(bench.database.jobUrl, { max: 2 });
      await writeAhead(quick, bench.garage, carId, version);
      await quick.close();
      gate.letGo();
      await eventually('both jobs to be over', async () => {
        const work = await bench.ledger.workOf(carId);
        return work?.done === version;
      });
      expect((await bench.garage.snapshotOf(carId))?.urgency).toBe(777);
      expect(await namesOf(carId)).toEqual([]);
      expect(await saidOf(carId)).toEqual([]);
    });

    test('recompute() keeps the first that is said in an ISO week, and says anew in the next', async () => {
      // Sunday 15 March 2026 ends the week that began on Monday the 9th
      const clock = clockAt('2026-03-10T10:00:00Z');
      await bench.start({ engine: sayingEngine(), clock });
      const carId = await bench.garage.addCar();
      await bench.snapshotAt(carId, 2);
      const first = ['2026-03-09', '2026-03-10', '2027-02-01'];
      expect(await saidOf(carId)).toEqual([first]);
      clock.set('2026-03-15T23:00:00Z');
      await bench.snapshotAt(carId, await bench.garage.record(carId, 38_100));
      expect(await namesOf(carId)).toEqual(['1 seen']);
      expect(await saidOf(carId)).toEqual([first]);
      clock.set('2026-03-16T00:30:00Z');
      await bench.snapshotAt(carId, await bench.garage.record(carId, 38_200));
      expect(await saidOf(carId)).toEqual([first, ['2026-03-16', '2026-03-16', '2027-02-03']]);
    });

    test('what was said is never changed nor taken back, not even by the worker', async () => {
      await bench.start({ engine: sayingEngine() });
      const carId = await bench.garage.addCar();
      await bench.snapshotAt(carId, 2);
      const { said } = schema;
      const job = connect(bench.database.jobUrl, { max: 1 });
      const refusal = (write: Parameters<typeof withGarage>[3]) =>
        withGarage(job, { kind: 'job' }, bench.garage.id, write).then(
          () => 'allowed',
          (error: Error) => (error.cause as Error).message,
        );
      expect(await refusal((tx) => tx.delete(said))).toBe('permission denied for table said');
      expect(await refusal((tx) => tx.update(said).set({ late: null }))).toBe(
        'permission denied for table said',
      );
      await job.close();
      await bench.garage.removeCar(carId);
      await eventually('the lines to be gone', async () => (await namesOf(carId)).length === 0);
      expect(await saidOf(carId)).toHaveLength(1);
    });
  });
});

/** Week, day and likely day of what was said of a car, oldest first. */
function readSaid(garage: JobsGarage, carId: string) {
  const { said } = schema;
  return garage.inside(async (tx) => {
    const rows = await tx.select().from(said).where(eq(said.carId, carId)).orderBy(asc(said.week));
    return rows.map(({ week, saidOn, likely }) => [week, saidOn, likely]);
  });
}

/** A later snapshot by another worker, without lines. */
async function writeAhead(db: Db, garage: JobsGarage, carId: string, inputVersion: number) {
  const book = { asOf: '2026-03-10', car: { id: carId }, entries: [] } as never;
  const answer = plainEngine().answer(roadAsked(book));
  const { analysis, road, lines: _, said: __, oil: ___, ...columns } = answer;
  const row = {
    ...columns,
    garageId: garage.id,
    carId,
    inputVersion,
    engineVersion: 1,
    snapshotSchema: SNAPSHOT_SCHEMA,
    asOf: '2026-03-10',
    computedAt: new Date('2026-03-10T10:00:00Z'),
    urgency: 777,
  };
  const written = await withGarage(db, { kind: 'job' }, garage.id, (tx) =>
    replaceIfLater(tx, row, { analysis, road }),
  );
  expect(written).toBe(true);
}
