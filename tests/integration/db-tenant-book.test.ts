import { randomUUID } from 'node:crypto';
import {
  changeSpec,
  connect,
  type Db,
  insertCar,
  insertEvent,
  insertGear,
  readEvent,
  readGear,
  readSpec,
  schema,
  type Tx,
} from '@quartermark/db';
import { carInput, eventInput } from '@quartermark/engine/log';
import { sql } from 'drizzle-orm';
import { getTableConfig } from 'drizzle-orm/pg-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type FreshDatabase, freshDatabase } from '../support/database.ts';
import { JobsGarage } from '../support/jobs-garage.ts';

const PERSON = { kind: 'person', name: 'Odd Holm' } as const;
const MEET = eventInput.parse({ name: 'Meet', sort: 'meet', start: '2026-07-01' });

let database: FreshDatabase;
let app: Db;
let mine: JobsGarage;
let other: JobsGarage;
let otherCar: string;

beforeAll(async () => {
  database = await freshDatabase('db-tenant-book');
  app = connect(database.appUrl, { max: 4 });
  mine = await new JobsGarage(app).found();
  other = await new JobsGarage(app).found();
  otherCar = await other.addCar();
});
afterAll(async () => {
  await app.close();
  await database.drop();
});

/** Writes a row of each table that says it is a garage's. */
function rowsOf(garageId: string, carId: string): Record<string, (tx: Tx) => PromiseLike<unknown>> {
  const at = new Date('2026-03-10T10:00:00Z');
  const eventId = randomUUID();
  const row = { garageId, id: eventId };
  const changed = { changedAt: at, changedBy: mine.userId };
  const picture = new Uint8Array([1]);
  return {
    gear: (tx) =>
      tx
        .insert(schema.gear)
        .values({ ...row, ...changed, kind: 'person', body: PERSON, addedAt: at }),
    event: (tx) =>
      tx
        .insert(schema.event)
        .values({ ...row, ...changed, body: MEET, startOn: MEET.start, endOn: MEET.start }),
    spec: (tx) =>
      tx.insert(schema.spec).values({ garageId, carId, ...changed, body: { lines: [] } }),
    requirement_set: (tx) =>
      tx.insert(schema.requirementSet).values({ garageId, use: 'meet', body: null, ...changed }),
    acceptance: (tx) =>
      tx.insert(schema.acceptance).values({
        ...row,
        eventId,
        carId,
        need: 'odometer',
        because: 'It is known.',
        acceptedAt: at,
        acceptedBy: mine.userId,
      }),
    work_tick: (tx) =>
      tx.insert(schema.workTick).values({
        ...row,
        eventId,
        carId,
        line: 'x/oil/y',
        done: true,
        madeAt: at,
        at,
        by: mine.userId,
      }),
    photo: (tx) =>
      tx.insert(schema.photo).values({
        ...row,
        type: 'image/jpeg',
        width: 1,
        height: 1,
        picture,
        small: picture,
        addedAt: at,
        addedBy: mine.userId,
      }),
  };
}

test('a piece, an event, what is asked of it and ticked, a sheet and a photo cannot be written into another garage', async () => {
  for (const [name, put] of Object.entries(rowsOf(other.id, otherCar)))
    await expect(
      mine.inside(async (tx) => put(tx)),
      name,
    ).rejects.toMatchObject({
      cause: { message: `new row violates row-level security policy for table "${name}"` },
    });
});

test('rows that are there are seen from their own garage alone', async () => {
  for (const put of Object.values(rowsOf(other.id, otherCar)))
    await other.inside(async (tx) => put(tx));
  for (const table of [
    schema.gear,
    schema.event,
    schema.spec,
    schema.photo,
    schema.requirementSet,
    schema.acceptance,
    schema.workTick,
  ]) {
    const count = (from: Pick<Tx, 'select'>) =>
      from
        .select({ rows: sql<number>`count(*)::int` })
        .from(table)
        .then(([row]) => row?.rows);
    const { name } = getTableConfig(table);
    expect([name, await other.inside(count)]).toEqual([name, 1]);
    expect([name, await mine.inside(count)]).toEqual([name, 0]);
    expect([name, await count(app.orm)]).toEqual([name, 0]);
  }
});

test('a tick is never changed, and an acceptance is withdrawn but never deleted or said anew', async () => {
  const denied = (table: string) => ({
    cause: { message: `permission denied for table ${table}` },
  });
  const { workTick, acceptance } = schema;
  const tries: [name: string, table: string, work: (tx: Tx) => PromiseLike<unknown>][] = [
    ['undo', 'work_tick', (tx) => tx.update(workTick).set({ done: false })],
    ['forget', 'work_tick', (tx) => tx.delete(workTick)],
    ['say anew', 'acceptance', (tx) => tx.update(acceptance).set({ because: 'So.' })],
    ['forget', 'acceptance', (tx) => tx.delete(acceptance)],
  ];
  for (const [name, table, work] of tries)
    await expect(
      other.inside(async (tx) => work(tx)),
      `${name} ${table}`,
    ).rejects.toMatchObject(denied(table));
  const withdrawn = { withdrawnAt: new Date('2026-03-11T10:00:00Z'), withdrawnBy: other.userId };
  const rows = await other.inside((tx) =>
    tx.update(acceptance).set(withdrawn).returning({ id: acceptance.id }),
  );
  expect(rows).toHaveLength(1);
});

test('pieces, events and spec sheets of two garages bear the same ids, and each finds its own', async () => {
  const id = '0197a000-0000-7000-8000-00000000000b';
  const at = new Date('2026-03-01T12:00:00Z');
  for (const [garage, name] of [
    [mine, 'ours'],
    [other, 'theirs'],
  ] as const)
    await garage.inside(async (tx) => {
      const row = { garageId: garage.id, id, at, by: garage.userId };
      expect(await insertGear(tx, { ...row, body: { ...PERSON, name } })).toBe(true);
      expect(await insertEvent(tx, { ...row, body: { ...MEET, name } })).toBe(true);
      const car = carInput.parse({ name, unit: 'km' });
      expect(await insertCar(tx, { ...row, car })).toBe(true);
      const sheet = { lines: [{ group: 'other' as const, what: 'Whose', value: name }] };
      const change = { garageId: garage.id, carId: id, baseRevision: 0, body: sheet };
      expect(await changeSpec(tx, { ...change, at, by: garage.userId })).toBe(1);
    });
  await mine.inside(async (tx) => {
    expect((await readGear(tx, mine.id, id))?.body.name).toBe('ours');
    expect((await readEvent(tx, mine.id, id))?.body.name).toBe('ours');
    expect((await readSpec(tx, mine.id, id))?.body.lines[0]?.value).toBe('ours');
    expect(await readGear(tx, other.id, id)).toBeNull();
    // no filter at all: row-level security is the only thing left
    expect((await tx.select().from(schema.gear)).map(({ body }) => body.name)).toEqual(['ours']);
    expect((await tx.select().from(schema.event)).map(({ body }) => body.name)).toEqual(['ours']);
    expect(await tx.select().from(schema.spec)).toHaveLength(1);
  });
});
