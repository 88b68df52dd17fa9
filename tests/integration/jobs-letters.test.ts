import { schema } from '@quartermark/db';
import { type LetterWish, WISH_USUAL } from '@quartermark/digest';
import { startOfDay } from '@quartermark/engine/calendar';
import { asc, eq } from 'drizzle-orm';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { eventually } from '../support/eventually.ts';
import { JobsBench } from '../support/jobs-bench.ts';
import { JobsGarage } from '../support/jobs-garage.ts';
import { BACKENDS, clockAt } from '../support/jobs-worker.ts';

/** Last done on 2025-01-05: overdue since a year later. */
const OVERDUE = {
  name: 'Engine oil',
  limits: [{ measure: 'months' as const, value: 12 }],
  baseline: { on: '2025-01-05', historyComplete: true },
};
const NEW_YORK = 'America/New_York';
const LONDON = 'Europe/London';
const LORD_HOWE = 'Australia/Lord_Howe';

const mail = {
  host: 'mail.example',
  port: 587,
  encryption: 'required' as const,
  user: null,
  from: 'garage@mail.example',
};

describe.each(BACKENDS)('letters', ({ backend, here }) => {
  describe.skipIf(!here)(`queue on ${backend}`, () => {
    let bench: JobsBench;
    beforeAll(async () => {
      bench = await JobsBench.open('jobs_letters', backend);
    });
    afterEach(() => bench.stopWorkers());
    afterAll(() => bench?.close());

    const { digest, letter, delivery, postSetting, letterSetting } = schema;
    const found = (zone: string, now: string) =>
      new JobsGarage(bench.app, zone).found(new Date(now));
    const digestsOf = (garage: JobsGarage) =>
      garage.inside((tx) => tx.select().from(digest).orderBy(asc(digest.date)));
    const lettersOf = (garage: JobsGarage) =>
      garage.inside((tx) =>
        tx
          .select({
            date: letter.date,
            body: letter.body,
            userId: letter.userId,
            text: letter.text,
          })
          .from(letter)
          .where(eq(letter.garageId, garage.id))
          .orderBy(asc(letter.date)),
      );
    const deliveriesOf = (garage: JobsGarage) => garage.inside((tx) => tx.select().from(delivery));
    const setPost = (garage: JobsGarage, sendMinute: number) =>
      garage.inside((tx) =>
        tx.insert(postSetting).values({
          garageId: garage.id,
          sendMinute,
          mail,
          changedAt: new Date(),
          changedBy: garage.userId,
        }),
      );
    const setWish = (garage: JobsGarage, body: LetterWish) =>
      garage.inside(async (tx) => {
        const [garageId, userId] = [garage.id, garage.userId];
        const row = { garageId, userId, body, changedAt: new Date(), changedBy: userId };
        const target = [letterSetting.garageId, letterSetting.userId];
        await tx.insert(letterSetting).values(row).onConflictDoUpdate({ target, set: { body } });
      });
    const composed = (garage: JobsGarage, date: string) =>
      eventually(`the digest of ${date}`, async () =>
        (await digestsOf(garage)).find((row) => row.date === date),
      );

    test('two workers leave one digest a garage and date, with one letter and one delivery', async () => {
      const garages = await Promise.all(
        Array.from({ length: 6 }, () => found(LONDON, '2026-03-10T10:00:00Z')),
      );
      for (const garage of garages) {
        await garage.addCar(OVERDUE);
        await setPost(garage, 360);
      }
      const clock = clockAt('2026-03-10T10:00:00Z');
      await Promise.all([
        bench.start({ clock, pace: { tickMs: 50 } }),
        bench.start({ clock, pace: { tickMs: 50 } }),
      ]);
      for (const garage of garages) await composed(garage, '2026-03-10');
      clock.set('2026-03-11T00:01:00Z');
      for (const garage of garages) await composed(garage, '2026-03-11');
      for (const garage of garages) {
        expect((await digestsOf(garage)).map(({ date }) => date)).toEqual([
          '2026-03-10',
          '2026-03-11',
        ]);
        // the second night has nothing new to say
        const letters = await lettersOf(garage);
        expect(letters.map(({ date }) => date)).toEqual(['2026-03-10']);
        expect(letters[0]?.body.subject).toContain('Engine oil');
        expect(letters[0]?.text).toContain(`https://garage.example/g/${garage.id}/`);
        const sent = await deliveriesOf(garage);
        expect(sent).toMatchObject([
          { kind: 'letter', state: 'waiting', toAddress: `${garage.userId}@example.org` },
        ]);
        expect(sent[0]?.messageId).toBe(`<letter.${sent[0]?.id}@garage.example>`);
      }
    });

    test('what fails before the commit leaves nothing behind, and the next tick composes', async () => {
      const garage = await found(LONDON, '2026-03-10T10:00:00Z');
      await garage.addCar(OVERDUE);
      await setPost(garage, 360);
      let left = 2;
      const clock = clockAt('2026-03-10T10:00:00Z');
      await bench.start({
        clock,
        pace: { tickMs: 50 },
        async reached(point) {
          if (point !== 'composed' || left === 0) return;
          left -= 1;
          expect(await digestsOf(garage)).toEqual([]);
          expect(await deliveriesOf(garage)).toEqual([]);
          throw new Error('the power is gone');
        },
      });
      await composed(garage, '2026-03-10');
      expect(left).toBe(0);
      expect(await lettersOf(garage)).toHaveLength(1);
      expect(await deliveriesOf(garage)).toHaveLength(1);
    });

    test('nights nobody composed in are made up for by one letter, and counted', async () => {
      const garage = await found(LONDON, '2026-03-10T10:00:00Z');
      await garage.addCar(OVERDUE);
      const clock = clockAt('2026-03-10T10:00:00Z');
      await bench.start({ clock, pace: { tickMs: 50 } });
      await composed(garage, '2026-03-10');
      await bench.stopWorkers();
      // what is told again after a week is no news
      await setWish(garage, { ...WISH_USUAL, onlyIfNew: false });
      clock.set('2026-03-18T11:00:00Z');
      await bench.start({ clock, pace: { tickMs: 50 } });
      const late = await composed(garage, '2026-03-18');
      expect(late).toMatchObject({ missed: 7, sendAt: new Date('2026-03-18T11:00:00Z') });
      expect((await lettersOf(garage)).map(({ date }) => date)).toEqual([
        '2026-03-10',
        '2026-03-18',
      ]);
    });

    test.each([
      // 02:30 is missing on 8 March, and comes twice on 1 November
      { zone: NEW_YORK, date: '2026-03-08', minute: 150, leaves: '2026-03-08T07:30:00Z' },
      { zone: NEW_YORK, date: '2026-11-01', minute: 90, leaves: '2026-11-01T05:30:00Z' },
      { zone: LONDON, date: '2026-03-29', minute: 90, leaves: '2026-03-29T01:30:00Z' },
      { zone: LONDON, date: '2026-10-25', minute: 90, leaves: '2026-10-25T00:30:00Z' },
      // half an hour, by the tables of the IANA time zone database
      { zone: LORD_HOWE, date: '2026-04-05', minute: 105, leaves: '2026-04-04T14:45:00Z' },
      { zone: LORD_HOWE, date: '2026-10-04', minute: 135, leaves: '2026-10-03T15:45:00Z' },
    ])(
      'in $zone the letter of $date leaves at its hour',
      async ({ zone, date, minute, leaves }) => {
        const evening = new Date(Date.parse(`${date}T00:00:00Z`) - 36 * 3_600_000).toISOString();
        const garage = await found(zone, evening);
        await garage.addCar(OVERDUE);
        await setPost(garage, minute);
        const clock = clockAt(evening);
        await bench.start({ clock, pace: { tickMs: 50 } });
        await eventually(
          'the letters of the evening',
          async () => (await digestsOf(garage)).length > 0,
        );
        // the day has begun by its own clocks, and the hour has not come
        clock.set(new Date(startOfDay(date, zone) + 60_000).toISOString());
        const night = await composed(garage, date);
        expect(night.sendAt.toISOString()).toBe(new Date(leaves).toISOString());
        const dates = (await digestsOf(garage)).map((row) => row.date);
        expect(new Set(dates).size).toBe(dates.length);
      },
    );

    test('a garage that moves never has a date twice, in whichever zone', async () => {
      const garage = await found('Pacific/Auckland', '2026-03-10T10:00:00Z');
      // in the night of its date the other one is looked at as well
      const other = await found('Etc/UTC', '2026-03-10T10:00:00Z');
      await garage.addCar(OVERDUE);
      await other.addCar(OVERDUE);
      const dates = async () => (await digestsOf(garage)).map(({ date }) => date);
      const clock = clockAt('2026-03-10T11:30:00Z');
      await bench.start({ clock, pace: { tickMs: 50 } });
      await composed(garage, '2026-03-11');
      // in Honolulu it is still the 10th
      await garage.moveTo('Pacific/Honolulu', clock.now());
      clock.set('2026-03-11T09:59:00Z');
      await composed(other, '2026-03-11');
      expect(await dates()).toEqual(['2026-03-11']);
      clock.set('2026-03-12T09:59:00Z');
      await composed(other, '2026-03-12');
      expect(await dates()).toEqual(['2026-03-11']);
      clock.set('2026-03-12T10:01:00Z');
      await composed(garage, '2026-03-12');
      expect(await dates()).toEqual(['2026-03-11', '2026-03-12']);
    });

    test('a car that cannot be worked out is told as that, at the letter’s hour', async () => {
      const garage = await found(LONDON, '2026-03-10T10:00:00Z');
      const carId = await garage.addCar(OVERDUE);
      const clock = clockAt('2026-03-10T10:00:00Z');
      await bench.start({ clock, pace: { tickMs: 50 } });
      await composed(garage, '2026-03-10');
      await garage.recordUnreadable(carId);
      clock.set('2026-03-11T06:00:30Z');
      await composed(garage, '2026-03-11');
      const [, second] = await lettersOf(garage);
      expect(second?.body.lines.map(({ word }) => word)).toContain('Not worked out');
    });

    test('who wants no mail, or a pause, is heard', async () => {
      const garage = await found(LONDON, '2026-03-10T10:00:00Z');
      await garage.addCar(OVERDUE);
      await setPost(garage, 360);
      const wish = { ...WISH_USUAL, mail: false };
      await setWish(garage, wish);
      const clock = clockAt('2026-03-10T10:00:00Z');
      await bench.start({ clock, pace: { tickMs: 50 } });
      await composed(garage, '2026-03-10');
      expect(await lettersOf(garage)).toHaveLength(1);
      expect(await deliveriesOf(garage)).toEqual([]);
      await setWish(garage, { ...wish, onlyIfNew: false, pausedUntil: '2026-03-11' });
      clock.set('2026-03-11T07:00:00Z');
      await composed(garage, '2026-03-11');
      expect(await lettersOf(garage)).toHaveLength(1);
      clock.set('2026-03-12T07:00:00Z');
      await composed(garage, '2026-03-12');
      expect(await lettersOf(garage)).toHaveLength(2);
    });
  });
});
