import { randomUUID } from 'node:crypto';
import {
  changePlannedLayUp,
  connect,
  type Db,
  insertEvent,
  insertOrder,
  insertPlannedLayUp,
  loadBook,
  readOrder,
  removeOrder,
  removePlannedLayUp,
  schema,
  UnreadableBook,
  withGarage,
} from '@quartermark/db';
import { readBook } from '@quartermark/engine';
import { type EventDraft, eventInput } from '@quartermark/engine/log';
import { eq } from 'drizzle-orm';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type FreshDatabase, freshDatabase } from '../support/database.ts';
import { JobsGarage } from '../support/jobs-garage.ts';

const JOB = { kind: 'job' } as const;
const AS_OF = '2026-06-15';

let database: FreshDatabase;
let app: Db;
let job: Db;
let garage: JobsGarage;

beforeAll(async () => {
  database = await freshDatabase('db-season');
  app = connect(database.appUrl, { max: 4 });
  job = connect(database.jobUrl, { max: 2 });
  garage = await new JobsGarage(app).found();
});
afterAll(async () => {
  await app.close();
  await job.close();
  await database.drop();
});

const row = () => ({
  garageId: garage.id,
  id: randomUUID(),
  at: new Date('2026-06-15T10:00:00Z'),
  by: garage.userId,
});

/** As the worker reads it. */
const bookOf = async (carId: string, asOf = AS_OF) => {
  const { book } = await withGarage(
    job,
    JOB,
    garage.id,
    (tx) => loadBook(tx, garage.id, carId, asOf),
    { isolation: 'repeatable read', readOnly: true },
  );
  return book;
};

async function put(event: EventDraft): Promise<string> {
  const made = { ...row(), body: eventInput.parse(event) };
  await garage.inside((tx) => insertEvent(tx, made));
  return made.id;
}

async function plan(carId: string, start: string, end?: string): Promise<string> {
  const made = { ...row(), carId, layUp: { start, end } };
  await garage.inside((tx) => insertPlannedLayUp(tx, made));
  return made.id;
}

test('loadBook() plans what the events of the last 30 days and to come say that the car does', async () => {
  const carId = await garage.addCar();
  const other = await garage.addCar();
  const use = { sessions: 4 };
  const day = { sort: 'circuit' as const, cars: [carId], use };
  await put({ ...day, name: 'Long past', start: '2026-05-10', end: '2026-05-15' });
  const late = await put({ ...day, name: 'Just past', start: '2026-05-16' });
  const next = await put({ ...day, name: 'Next', start: '2026-07-01', cars: [other, carId] });
  await put({ ...day, name: 'Of another', start: '2026-07-01', cars: [other] });
  await put({ ...day, name: 'Of nobody', start: '2026-07-01', cars: [] });
  await put({ name: 'Nothing said', sort: 'circuit', start: '2026-07-01', cars: [carId] });
  const tour = { text: '80', unit: 'mi' } as const;
  const meet = await put({
    name: 'Meet',
    sort: 'meet',
    start: '2026-07-09',
    cars: [carId],
    use: { distance: tour },
    attend: 1,
  });
  const book = await bookOf(carId);
  expect(book.planned).toEqual([
    { id: late, name: 'Just past', start: '2026-05-16', use: 'circuit', sessions: 4, attend: 0.9 },
    { id: next, name: 'Next', start: '2026-07-01', use: 'circuit', sessions: 4, attend: 0.9 },
    { id: meet, name: 'Meet', start: '2026-07-09', use: 'touring', km: 128.74752, attend: 1 },
  ]);
  expect(readBook({ ...book })).toEqual(book);
});

test('loadBook() counts planned lay-ups from tomorrow on, beside those of the log', async () => {
  const carId = await garage.addCar();
  const winter = await plan(carId, '2026-11-01', '2027-03-25');
  const begun = await plan(carId, '2026-06-10', '2026-06-30');
  await plan(carId, '2026-05-01', '2026-05-30');
  const gone = await plan(carId, '2027-11-01');
  const remove = { ...row(), id: gone, baseRevision: 1 };
  expect(await garage.inside((tx) => removePlannedLayUp(tx, remove))).toBe(2);
  expect((await bookOf(carId)).layUps).toEqual([
    { id: begun, start: '2026-06-16', end: '2026-06-30' },
    { id: winter, start: '2026-11-01', end: '2027-03-25' },
  ]);
  const change = { ...row(), id: winter, baseRevision: 1, layUp: { start: '2026-12-01' } };
  expect(await garage.inside((tx) => changePlannedLayUp(tx, change))).toBe(2);
  expect(await garage.inside((tx) => changePlannedLayUp(tx, change))).toBeNull();
  expect((await bookOf(carId)).layUps.at(-1)).toEqual({ id: winter, start: '2026-12-01' });
});

test('loadBook() carries the orders of the car’s items, and none where there are none', async () => {
  const carId = await garage.addCar();
  expect(await bookOf(carId)).not.toHaveProperty('orders');
  const [item] = await garage.inside((tx) =>
    tx.select().from(schema.item).where(eq(schema.item.carId, carId)),
  );
  const order = { ...row(), itemId: item?.id ?? '', body: { on: '2026-06-03', what: 'Filter' } };
  const other = { ...order, ...row() };
  await garage.inside(async (tx) => {
    expect(await insertOrder(tx, order)).toBe(true);
    expect(await insertOrder(tx, order)).toBe(false);
    await insertOrder(tx, other);
    expect(await removeOrder(tx, { ...row(), id: other.id, baseRevision: 1 })).toBe(2);
    expect((await readOrder(tx, garage.id, other.id))?.removedAt).not.toBeNull();
  });
  const book = await bookOf(carId);
  expect(book.orders).toEqual([{ id: order.id, item: item?.id, on: '2026-06-03', what: 'Filter' }]);
  expect(readBook({ ...book })).toEqual(book);
});

test('loadBook() names the event that cannot be read, and its car; other cars are not held up', async () => {
  const carId = await garage.addCar();
  const other = await garage.addCar();
  const eventId = await put({ name: 'Day', sort: 'circuit', start: '2026-07-01', cars: [carId] });
  const odd = { name: 'Day', sort: 'dance', start: '2026-07-01', cars: [carId] } as never;
  await garage.inside((tx) =>
    tx.update(schema.event).set({ body: odd }).where(eq(schema.event.id, eventId)),
  );
  const error = await bookOf(carId).catch((reason: unknown) => reason);
  expect(error).toBeInstanceOf(UnreadableBook);
  expect(error).toMatchObject({ carId, part: 'event', partId: eventId });
  expect((await bookOf(other)).planned).toEqual([]);
});

test('a planned lay-up and an order cannot be written into another garage, nor seen there', async () => {
  const carId = await garage.addCar();
  await plan(carId, '2026-11-01');
  const other = await new JobsGarage(app).found();
  const stowaway = { ...row(), carId, layUp: { start: '2026-11-01' } };
  const write = other.inside((tx) => insertPlannedLayUp(tx, stowaway));
  await expect(write).rejects.toMatchObject({
    cause: { message: 'new row violates row-level security policy for table "planned_lay_up"' },
  });
  const order = { ...row(), itemId: randomUUID(), body: { on: '2026-06-03' } };
  await expect(other.inside((tx) => insertOrder(tx, order))).rejects.toMatchObject({
    cause: { message: 'new row violates row-level security policy for table "part_order"' },
  });
  for (const table of [schema.plannedLayUp, schema.partOrder]) {
    expect((await garage.inside((tx) => tx.select().from(table))).length).toBeGreaterThan(0);
    expect(await other.inside((tx) => tx.select().from(table))).toEqual([]);
  }
});
