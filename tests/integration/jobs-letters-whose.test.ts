import { randomUUID } from 'node:crypto';
import { connect, type Db, findSecretKey, insertEvent, schema, withGarage } from '@quartermark/db';
import { type LetterWish, WISH_USUAL } from '@quartermark/digest';
import { eventInput } from '@quartermark/engine/log';
import { asc, eq } from 'drizzle-orm';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { eventually } from '../support/eventually.ts';
import { JobsBench } from '../support/jobs-bench.ts';
import { JobsGarage } from '../support/jobs-garage.ts';
import { clockAt } from '../support/jobs-worker.ts';

const MORNING = '2026-03-10T10:00:00Z';
/** Last done on 2025-01-05: overdue since a year later. */
const OVERDUE = {
  name: 'Engine oil',
  limits: [{ measure: 'months' as const, value: 12 }],
  baseline: { on: '2025-01-05', historyComplete: true },
};
const mail = {
  host: 'mail.example',
  port: 587,
  encryption: 'required' as const,
  user: null,
  from: 'garage@mail.example',
};

const { delivery, digest, letter, letterSetting, member, postSetting, secretKey, user } = schema;
let bench: JobsBench;
let owner: Db;
let job: Db;

beforeAll(async () => {
  bench = await JobsBench.open('jobs_letters_whose', 'PostgreSQL');
  owner = connect(bench.database.ownerUrl, { max: 1 });
  job = connect(bench.database.jobUrl, { max: 1, role: 'job' });
});
afterEach(() => bench.stopWorkers());
afterAll(async () => {
  await Promise.all([owner?.close(), job?.close()]);
  await bench?.close();
});

const found = (zone = 'Europe/London') => new JobsGarage(bench.app, zone).found(new Date(MORNING));

/** Names a mail server and a webhook: whatever may leave the house would. */
const setPost = (garage: JobsGarage) =>
  garage.inside((tx) =>
    tx.insert(postSetting).values({
      garageId: garage.id,
      mail,
      hookUrl: 'https://hook.example/in',
      hookSecret: 'key-for-tests-only-0123456789abcdef',
      changedAt: new Date(MORNING),
      changedBy: garage.userId,
    }),
  );

/** Another member. @returns his user id */
async function join(garage: JobsGarage, wish: LetterWish): Promise<string> {
  const id = randomUUID();
  const at = new Date(MORNING);
  await garage.inside(async (tx) => {
    const email = `${id}@example.org`;
    await tx.insert(user).values({ id, name: 'Sable', email, createdAt: at, updatedAt: at });
    const joined = { organizationId: garage.id, userId: id, role: 'member', createdAt: at };
    await tx.insert(member).values(joined);
    const row = { garageId: garage.id, userId: id, body: wish, changedAt: at, changedBy: id };
    await tx.insert(letterSetting).values(row);
  });
  return id;
}

const inside = <T>(garage: JobsGarage, work: Parameters<typeof withGarage<T>>[3]) =>
  withGarage(job, { kind: 'job' }, garage.id, work);
const lettersOf = (garage: JobsGarage) =>
  inside(garage, (tx) => tx.select().from(letter).orderBy(asc(letter.date)));
const deliveriesOf = (garage: JobsGarage) =>
  inside(garage, (tx) => tx.select().from(delivery).orderBy(asc(delivery.kind)));
const datesOf = async (garage: JobsGarage) => {
  const rows = await inside(garage, (tx) => tx.select().from(digest).orderBy(asc(digest.date)));
  return rows.map(({ date }) => date);
};
const secretsOf = (garage: JobsGarage) =>
  owner.orm.select().from(secretKey).where(eq(secretKey.garageId, garage.id));
const composed = (garage: JobsGarage, date: string) =>
  eventually(`the digest of ${date}`, async () => (await datesOf(garage)).includes(date));
const start = (origin?: string, clock = clockAt(MORNING)) =>
  bench.start({ clock, pace: { tickMs: 50 }, ...(origin === undefined ? {} : { origin }) });

test('each member has a letter of his own by his own wish, and mail alone where he wants it', async () => {
  const garage = await found();
  await setPost(garage);
  const first = await garage.addCar(OVERDUE);
  await garage.addCar({ ...OVERDUE, name: 'Coolant' });
  const reader = await join(garage, { ...WISH_USUAL, cars: [first], mail: false });
  const paused = await join(garage, { ...WISH_USUAL, pausedUntil: '2026-03-20' });
  await start();
  await composed(garage, '2026-03-10');
  const letters = await lettersOf(garage);
  const textOf = (userId: string) =>
    letters.find((row) => row.userId === userId)?.body.lines.map(({ text }) => text);
  expect(letters).toHaveLength(2);
  expect(textOf(garage.userId)?.join()).toMatch(/Engine oil/);
  expect(textOf(garage.userId)?.join()).toMatch(/Coolant/);
  expect(textOf(reader)?.join()).toMatch(/Engine oil/);
  expect(textOf(reader)?.join()).not.toMatch(/Coolant/);
  expect(textOf(paused)).toBeUndefined();
  const deliveries = await deliveriesOf(garage);
  expect(deliveries).toMatchObject([
    { kind: 'hook' },
    { kind: 'letter', toAddress: `${garage.userId}@example.org` },
  ]);
  // a webhook hears the longest letter of the night
  expect(JSON.stringify(deliveries[0]?.payload)).toContain('Coolant');
});

test('a letter that leaves by mail carries the one secret that takes its reader off', async () => {
  const garage = await found();
  await setPost(garage);
  await garage.addCar(OVERDUE);
  await join(garage, { ...WISH_USUAL, mail: false });
  await start('https://garage.example');
  await composed(garage, '2026-03-10');
  const letters = await lettersOf(garage);
  expect(letters).toHaveLength(2);
  const own = letters.find(({ userId }) => userId === garage.userId);
  const others = letters.filter(({ userId }) => userId !== garage.userId);
  expect(others.map(({ unsubscribeSecret }) => unsubscribeSecret)).toEqual([null]);
  expect(await secretsOf(garage)).toHaveLength(1);
  const key = await findSecretKey(bench.app, 'unsubscribe', own?.unsubscribeSecret ?? '');
  expect(key).toMatchObject({ garageId: garage.id, userId: garage.userId, subjectId: own?.id });
});

test('without TLS a letter leaves all the same, but carries no secret', async () => {
  const garage = await found();
  await setPost(garage);
  await garage.addCar(OVERDUE);
  await start('http://192.0.2.7:3000');
  await composed(garage, '2026-03-10');
  const [own] = await lettersOf(garage);
  expect(own?.unsubscribeSecret).toBeNull();
  expect(await secretsOf(garage)).toEqual([]);
  const [, sent] = await deliveriesOf(garage);
  expect(sent?.messageId).toBe(`<letter.${sent?.id}@quartermark.invalid>`);
});

test('the demo garage has its letters, and nothing leaves it whatever is set', async () => {
  const garage = await found();
  await setPost(garage);
  await garage.addCar(OVERDUE);
  const { garage: garages } = schema;
  await owner.orm.update(garages).set({ demo: true }).where(eq(garages.id, garage.id));
  await start();
  await composed(garage, '2026-03-10');
  expect(await lettersOf(garage)).toMatchObject([{ unsubscribeSecret: null }]);
  expect(await deliveriesOf(garage)).toEqual([]);
  expect(await secretsOf(garage)).toEqual([]);
});

test('a garage that moves to the east has the letter of its new date at once, and once', async () => {
  const garage = await found('Pacific/Honolulu');
  const other = await found('Pacific/Honolulu');
  await garage.addCar(OVERDUE);
  await other.addCar(OVERDUE);
  // 01:30 on the 10th in Honolulu, 00:30 on the 11th in Auckland
  const clock = clockAt('2026-03-10T11:30:00Z');
  await start(undefined, clock);
  await composed(garage, '2026-03-10');
  await garage.moveTo('Pacific/Auckland', clock.now());
  // cars that are new to their day are waited for until the letter's hour at most
  clock.set('2026-03-10T17:00:30Z');
  await composed(garage, '2026-03-11');
  // the 11th begins in Honolulu, where the garage stands no more
  clock.set('2026-03-11T10:30:00Z');
  await composed(other, '2026-03-11');
  expect(await datesOf(garage)).toEqual(['2026-03-10', '2026-03-11']);
  clock.set('2026-03-11T17:00:30Z');
  await composed(garage, '2026-03-12');
  expect(await datesOf(garage)).toEqual(['2026-03-10', '2026-03-11', '2026-03-12']);
});

test('a car that cannot be worked out and is to go to an event holds no letter up', async () => {
  const garage = await found();
  const broken = await garage.addCar(OVERDUE);
  await garage.addCar({ ...OVERDUE, name: 'Coolant' });
  await garage.recordUnreadable(broken);
  await garage.inside((tx) =>
    insertEvent(tx, {
      garageId: garage.id,
      id: randomUUID(),
      body: eventInput.parse({
        name: 'Spring circuit day',
        sort: 'circuit',
        start: '2026-03-14',
        cars: [broken],
      }),
      at: new Date(MORNING),
      by: garage.userId,
    }),
  );
  const clock = clockAt(MORNING);
  await start(undefined, clock);
  await composed(garage, '2026-03-10');
  const [own] = await lettersOf(garage);
  const lines = own?.body.lines.map(({ word, text }) => `${word}. ${text}`).join('\n');
  expect(lines).toMatch(/Not worked out/);
  expect(lines).toMatch(/Coolant/);
  // by now the failure is on record, with an instant as fine as the database has them
  expect(await garage.failureOf(broken)).not.toBeNull();
  clock.set('2026-03-11T06:00:30Z');
  await composed(garage, '2026-03-11');
});
