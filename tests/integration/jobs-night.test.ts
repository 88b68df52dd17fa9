import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { eventually } from '../support/eventually.ts';
import { JobsBench } from '../support/jobs-bench.ts';
import { JobsGarage } from '../support/jobs-garage.ts';
import { BACKENDS, clockAt } from '../support/jobs-worker.ts';
import { plainEngine } from '../support/plain-engine.ts';

// summer time begins on 2026-03-29 in Europe and on 2026-03-08 in New York (IANA tzdata): on 10 March
// London is at UTC+0, New York at UTC-4
const MORNING = '2026-03-10T10:00:00Z';
const LONDON_MIDNIGHT = '2026-03-11T00:00:00.000Z';
const NEW_YORK_MIDNIGHT = '2026-03-11T04:00:00.000Z';

describe.each(BACKENDS)('the night', ({ backend, here }) => {
  describe.skipIf(!here)(`queue on ${backend}`, () => {
    let bench: JobsBench;
    beforeAll(async () => {
      bench = await JobsBench.open('jobs_night', backend);
    });
    afterEach(() => bench.stopWorkers());
    afterAll(() => bench?.close());

    const asOf = async (garage: JobsGarage, carId: string) =>
      (await garage.snapshotOf(carId))?.asOf;

    test('each garage begins its day at its own midnight', async () => {
      const clock = clockAt(MORNING);
      const london = bench.garage;
      const newYork = await new JobsGarage(bench.app, 'America/New_York').found();
      const engine = plainEngine();
      await bench.start({ engine, clock, pace: { tickMs: 100 } });
      const here = await london.addCar();
      const there = await newYork.addCar();
      await bench.snapshotAt(here, 2);
      await bench.snapshotAt(there, 2, newYork);

      clock.set('2026-03-11T00:00:01Z');
      await eventually(
        "London's cars to be of the new day",
        async () => (await asOf(london, here)) === '2026-03-11',
      );
      expect(await asOf(newYork, there)).toBe('2026-03-10');
      await eventually(
        "London's next day to be set",
        async () => (await bench.ledger.nextDayOf(london.id)) === '2026-03-12T00:00:00.000Z',
      );
      expect(await bench.ledger.nextDayOf(newYork.id)).toBe(NEW_YORK_MIDNIGHT);

      clock.set('2026-03-11T04:00:01Z');
      await eventually(
        "New York's cars to be of the new day",
        async () => (await asOf(newYork, there)) === '2026-03-11',
      );
      // one answer each for the entry and for the day, none twice
      expect(engine.asked).toBe(4);
    });

    test('a day whose midnight was slept through is begun at the start', async () => {
      const garage = await new JobsGarage(bench.app).found();
      const carId = await garage.addCar();
      await bench.start({ engine: plainEngine(), clock: clockAt(MORNING) });
      await bench.snapshotAt(carId, 2, garage);
      expect(await bench.ledger.nextDayOf(garage.id)).toBe(LONDON_MIDNIGHT);
      await bench.stopWorkers();

      const clock = clockAt('2026-03-14T15:00:00Z');
      await bench.start({ engine: plainEngine(), clock, pace: { tickMs: 100 } });
      await eventually(
        'the car to be of today',
        async () => (await asOf(garage, carId)) === '2026-03-14',
      );
      await eventually(
        'the next day to be set',
        async () => (await bench.ledger.nextDayOf(garage.id)) === '2026-03-15T00:00:00.000Z',
      );
    });

    test('a garage that moves west goes back a day and its answers with it', async () => {
      const garage = await new JobsGarage(bench.app, 'Pacific/Auckland').found();
      const carId = await garage.addCar();
      // 11 March in Auckland (UTC+13), 10 March in Honolulu (UTC-10)
      const clock = clockAt('2026-03-10T12:00:00Z');
      await bench.start({ engine: plainEngine(), clock });
      await bench.snapshotAt(carId, 2, garage);
      expect(await asOf(garage, carId)).toBe('2026-03-11');
      await garage.moveTo('Pacific/Honolulu', clock.now());
      await bench.snapshotAt(carId, 3, garage);
      expect(await asOf(garage, carId)).toBe('2026-03-10');
      expect(await bench.ledger.nextDayOf(garage.id)).toBe('2026-03-11T10:00:00.000Z');
    });

    test('a car that fails in the night leaves a row and the others begin their day', async () => {
      const garage = await new JobsGarage(bench.app).found();
      const bad = await garage.addCar();
      const good = await garage.addCar();
      const clock = clockAt(MORNING);
      const engine = plainEngine();
      const sound = engine.answer;
      await bench.start({ engine, clock, pace: { tickMs: 100 } });
      await bench.snapshotAt(bad, 2, garage);
      await bench.snapshotAt(good, 2, garage);
      engine.answer = (asked) => {
        if (asked.car.book.car.id === bad)
          throw new Error('could not read the book of the bad car');
        return sound(asked);
      };
      clock.set('2026-03-11T00:00:01Z');
      const failure = await eventually('the failure', () => garage.failureOf(bad));
      expect(failure.cause).toBe('could not read the book of the bad car');
      expect(await asOf(garage, good)).toBe('2026-03-11');
      // the day stays open for the car that is still of yesterday
      expect(await bench.ledger.nextDayOf(garage.id)).toBe(LONDON_MIDNIGHT);
    });
  });
});
