import { schema } from '@quartermark/db';
import { ENGINE_VERSION } from '@quartermark/engine';
import { answerOf, type Engine } from '@quartermark/jobs/worker';
import { asc, eq } from 'drizzle-orm';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { eventually } from '../support/eventually.ts';
import { JobsBench } from '../support/jobs-bench.ts';
import { JobsGarage } from '../support/jobs-garage.ts';
import { BACKENDS, clockAt } from '../support/jobs-worker.ts';

/**
 * Midnight in two zones, with the engine as it is. Nights by the IANA time zone database: in Berlin summer
 * time begins on Sunday 29 March 2026, a day of 23 hours; in Auckland it ends on Sunday 5 April 2026, a
 * day of 25.
 */
const BERLIN = 'Europe/Berlin';
const AUCKLAND = 'Pacific/Auckland';

/** Of a car, last done so many months before its day: 12 months are up on that day. */
const yearlySince = (on: string) => ({
  name: 'Yearly look',
  limits: [{ measure: 'months' as const, value: 12 }],
  baseline: { on, historyComplete: true },
});

type Cars = { turnsOver: string; turnsSoon: string; stays: string };

/** What the day changes and what it must not touch, of one car. */
type Seen = { asOf: string; state: string | null; computedMs: number; rest: unknown };

describe.each(BACKENDS)('midnight', ({ backend, here }) => {
  describe.skipIf(!here)(`queue on ${backend}`, () => {
    let bench: JobsBench;
    beforeAll(async () => {
      bench = await JobsBench.open('jobs_midnight', backend);
    });
    afterEach(() => bench.stopWorkers());
    afterAll(() => bench?.close());

    /** The engine as the worker has it, and what it was asked of some cars: car and day. */
    function askedEngine() {
      const all: string[] = [];
      const engine: Engine = {
        version: ENGINE_VERSION,
        answer(asked) {
          const { book } = asked.car;
          all.push(`${book.car.id} ${book.asOf}`);
          return answerOf(asked);
        },
      };
      const askedOf = (...cars: Cars[]) =>
        all.filter((it) => cars.some((own) => Object.values(own).includes(it.split(' ')[0] ?? '')));
      return { engine, askedOf };
    }

    async function found(zone: string, now: string): Promise<JobsGarage> {
      return new JobsGarage(bench.app, zone).found(new Date(now));
    }

    /**
     * Three cars of a garage on the eve of a day: what runs out on the eve and is over on the day, what is
     * due 21 days after it (14 to warn and 7 until the next look), and what is far from both.
     */
    async function addCars(garage: JobsGarage, eveAYearAgo: string, soon: string): Promise<Cars> {
      return {
        turnsOver: await garage.addCar(yearlySince(eveAYearAgo)),
        turnsSoon: await garage.addCar(yearlySince(soon)),
        stays: await garage.addCar(yearlySince('2025-12-01')),
      };
    }

    async function see(garage: JobsGarage, carId: string): Promise<Seen> {
      const { dueLine, car } = schema;
      const snapshot = await garage.snapshotOf(carId);
      if (!snapshot) throw new Error('there is no snapshot');
      const [[line], [row]] = await garage.inside((tx) =>
        Promise.all([
          tx.select().from(dueLine).where(eq(dueLine.carId, carId)),
          tx.select().from(car).where(eq(car.id, carId)),
        ]),
      );
      const work = await bench.ledger.workOf(carId);
      const { asOf, computedAt, inputVersion, engineVersion, status, stop, laidUp } = snapshot;
      const counted = [snapshot.overdue, snapshot.dueSoon, snapshot.notOnRecord];
      const state = line?.state ?? null;
      // the counts of the overview and the line of the list say the same
      expect(counted).toEqual([Number(state === 'overdue'), Number(state === 'dueSoon'), 0]);
      return {
        asOf,
        state,
        computedMs: computedAt.getTime(),
        rest: {
          inputVersion,
          engineVersion,
          status,
          stop,
          laidUp,
          car: row,
          wanted: work?.wanted,
          line: [line?.likely, line?.early, line?.late, line?.lastDone],
        },
      };
    }

    async function seeAll(garage: JobsGarage, cars: Cars) {
      const { turnsOver, turnsSoon, stays } = cars;
      return {
        turnsOver: await see(garage, turnsOver),
        turnsSoon: await see(garage, turnsSoon),
        stays: await see(garage, stays),
      };
    }

    const dayOf = (seen: Awaited<ReturnType<typeof seeAll>>) =>
      Object.values(seen).map(({ asOf, state }) => `${asOf} ${state}`);
    const restOf = (seen: Awaited<ReturnType<typeof seeAll>>) =>
      Object.values(seen).map(({ rest }) => rest);

    const nextDay = (garage: JobsGarage, instant: string) =>
      eventually(
        `the next day of ${garage.zone} to begin at ${instant}`,
        async () => (await bench.ledger.nextDayOf(garage.id)) === instant,
      );

    /** Returns once a whole tick has run by the clock as it stands: a garage without cars tells. */
    async function wholeTick(canary: JobsGarage): Promise<void> {
      for (const round of ['one tick', 'the next']) {
        await bench.ledger.openDay(canary.id);
        await eventually(
          `${round} to have come`,
          async () => (await bench.ledger.nextDayOf(canary.id)) !== '2026-03-10T00:00:00.000Z',
        );
      }
    }

    /** Waits for the first answer of each car. */
    const answered = async (garage: JobsGarage, cars: Cars) => {
      for (const carId of Object.values(cars)) await bench.snapshotAt(carId, 2, garage);
    };

    /** Week and day of what was said of a car. */
    const saidOf = (garage: JobsGarage, carId: string) =>
      garage.inside(async (tx) => {
        const { said } = schema;
        const rows = await tx
          .select()
          .from(said)
          .where(eq(said.carId, carId))
          .orderBy(asc(said.week));
        return rows.map(({ week, saidOn }) => `${week} ${saidOn}`);
      });

    test('each garage’s own midnight changes its day and the states that turn on it, and nothing else', async () => {
      const start = '2026-03-28T09:00:00Z';
      const clock = clockAt(start);
      const { engine, askedOf } = askedEngine();
      const berlin = await found(BERLIN, start);
      const auckland = await found(AUCKLAND, start);
      const canary = await found('UTC', start);
      const berlinCars = await addCars(berlin, '2025-03-28', '2025-04-19');
      const aucklandCars = await addCars(auckland, '2025-03-28', '2025-04-19');
      await bench.start({ engine, clock, pace: { tickMs: 100 } });
      await answered(berlin, berlinCars);
      await answered(auckland, aucklandCars);
      const eve = ['2026-03-28 dueSoon', '2026-03-28 fine', '2026-03-28 fine'];
      const berlinEve = await seeAll(berlin, berlinCars);
      const aucklandEve = await seeAll(auckland, aucklandCars);
      expect([dayOf(berlinEve), dayOf(aucklandEve)]).toEqual([eve, eve]);
      expect(askedOf(berlinCars, aucklandCars)).toHaveLength(6);

      // a second before midnight in Auckland, 13 hours ahead, nothing is of a new day
      clock.set('2026-03-28T10:59:59Z');
      await wholeTick(canary);
      expect(await seeAll(auckland, aucklandCars)).toEqual(aucklandEve);

      clock.set('2026-03-28T11:00:00Z');
      await nextDay(auckland, '2026-03-29T11:00:00.000Z');
      const day = ['2026-03-29 overdue', '2026-03-29 dueSoon', '2026-03-29 fine'];
      const aucklandDay = await seeAll(auckland, aucklandCars);
      expect(dayOf(aucklandDay)).toEqual(day);
      expect(restOf(aucklandDay)).toEqual(restOf(aucklandEve));
      expect(await seeAll(berlin, berlinCars)).toEqual(berlinEve);

      clock.set('2026-03-28T22:59:59Z');
      await wholeTick(canary);
      expect(await seeAll(berlin, berlinCars)).toEqual(berlinEve);

      // Berlin's day begins at UTC+1 and has 23 hours: the next one begins at UTC+2
      clock.set('2026-03-28T23:00:00Z');
      await nextDay(berlin, '2026-03-29T22:00:00.000Z');
      const berlinDay = await seeAll(berlin, berlinCars);
      expect(dayOf(berlinDay)).toEqual(day);
      expect(restOf(berlinDay)).toEqual(restOf(berlinEve));
      expect(await seeAll(auckland, aucklandCars)).toEqual(aucklandDay);

      // one answer for each car and day, and nobody wrote or wanted anything
      const asked = askedOf(berlinCars, aucklandCars);
      expect(asked).toHaveLength(12);
      expect(new Set(asked).size).toBe(12);
      expect(await bench.ledger.outboxWaiting()).toBe(0);

      // 23 hours after its midnight, and not 24, Berlin's Monday begins
      clock.set('2026-03-29T21:59:59Z');
      await nextDay(auckland, '2026-03-30T11:00:00.000Z');
      await wholeTick(canary);
      expect(dayOf(await seeAll(berlin, berlinCars))).toEqual(day);
      clock.set('2026-03-29T22:00:00Z');
      await nextDay(berlin, '2026-03-30T22:00:00.000Z');
      expect(dayOf(await seeAll(berlin, berlinCars))).toEqual([
        '2026-03-30 overdue',
        '2026-03-30 dueSoon',
        '2026-03-30 fine',
      ]);

      // what is said is kept once a week: in the one that ended on the 29th and in the new one, but
      // nothing more of what is overdue
      const weeks = ['2026-03-23 2026-03-28', '2026-03-30 2026-03-30'];
      expect(await saidOf(berlin, berlinCars.stays)).toEqual(weeks);
      expect(await saidOf(berlin, berlinCars.turnsSoon)).toEqual(weeks);
      expect(await saidOf(berlin, berlinCars.turnsOver)).toEqual(weeks.slice(0, 1));
    });

    test('a day of 25 hours lasts 25 hours, and elsewhere one of 24 goes by beside it', async () => {
      const start = '2026-04-04T10:00:00Z';
      const clock = clockAt(start);
      const { engine, askedOf } = askedEngine();
      const berlin = await found(BERLIN, start);
      const auckland = await found(AUCKLAND, start);
      const canary = await found('UTC', start);
      const berlinCars = await addCars(berlin, '2025-04-04', '2025-04-26');
      // what runs out on Sunday the 5th is over on Monday the 6th
      const aucklandCars = await addCars(auckland, '2025-04-05', '2025-04-27');
      await bench.start({ engine, clock, pace: { tickMs: 100 } });
      await answered(berlin, berlinCars);
      await answered(auckland, aucklandCars);
      const berlinEve = await seeAll(berlin, berlinCars);

      clock.set('2026-04-04T11:00:00Z');
      await nextDay(auckland, '2026-04-05T12:00:00.000Z');
      const sunday = await seeAll(auckland, aucklandCars);
      expect(dayOf(sunday)).toEqual(['2026-04-05 dueSoon', '2026-04-05 fine', '2026-04-05 fine']);
      expect(await seeAll(berlin, berlinCars)).toEqual(berlinEve);

      // the clocks have gone back: after 24 hours and more it is still Sunday there, Sunday noon in Berlin
      clock.set('2026-04-05T11:59:59Z');
      await nextDay(berlin, '2026-04-05T22:00:00.000Z');
      await wholeTick(canary);
      expect(await seeAll(auckland, aucklandCars)).toEqual(sunday);
      const berlinDay = await seeAll(berlin, berlinCars);
      expect(dayOf(berlinDay)).toEqual([
        '2026-04-05 overdue',
        '2026-04-05 dueSoon',
        '2026-04-05 fine',
      ]);

      clock.set('2026-04-05T12:00:00Z');
      await nextDay(auckland, '2026-04-06T12:00:00.000Z');
      const monday = await seeAll(auckland, aucklandCars);
      expect(dayOf(monday)).toEqual([
        '2026-04-06 overdue',
        '2026-04-06 dueSoon',
        '2026-04-06 fine',
      ]);
      expect(restOf(monday)).toEqual(restOf(sunday));
      expect(await seeAll(berlin, berlinCars)).toEqual(berlinDay);
      const asked = askedOf(berlinCars, aucklandCars);
      expect(asked).toHaveLength(15);
      expect(new Set(asked).size).toBe(15);
    });
  });
});
