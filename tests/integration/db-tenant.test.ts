import { randomUUID } from 'node:crypto';
import {
  connect,
  type Db,
  insertEntry,
  listCarIds,
  listMyGarages,
  NotYours,
  nextRecorded,
  readCar,
  readEntry,
  schema,
  withGarage,
} from '@quartermark/db';
import { entryInput } from '@quartermark/engine/log';
import { sql } from 'drizzle-orm';
import { getTableConfig } from 'drizzle-orm/pg-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type FreshDatabase, freshDatabase } from '../support/database.ts';
import { JobsGarage } from '../support/jobs-garage.ts';

const JOB = { kind: 'job' } as const;
const GUARDED = [
  schema.garage,
  schema.car,
  schema.item,
  schema.layUp,
  schema.entry,
  schema.entryRevision,
  schema.command,
  schema.snapshot,
  schema.snapshotDetail,
  schema.failure,
  schema.gear,
  schema.photo,
  schema.event,
  schema.spec,
  schema.dueLine,
  schema.oilLine,
  schema.said,
  schema.plannedLayUp,
  schema.partOrder,
] as const;

/** What the worker has no use for. */
const CLOSED_TO_JOB = ['entry_revision', 'command', 'photo', 'spec'];

let database: FreshDatabase;
let app: Db;
let job: Db;
let mine: JobsGarage;
let other: JobsGarage;
let myCar: string;
let otherCar: string;

beforeAll(async () => {
  database = await freshDatabase('db-tenant');
  app = connect(database.appUrl, { max: 4 });
  job = connect(database.jobUrl, { max: 2 });
  mine = await new JobsGarage(app).found();
  other = await new JobsGarage(app).found();
  myCar = await mine.addCar();
  otherCar = await other.addCar();
});
afterAll(async () => {
  await app.close();
  await job.close();
  await database.drop();
});

/** The server's own message, which the query layer keeps as the cause. */
const refusal = (work: Promise<unknown>) =>
  work.then(
    () => 'allowed',
    (error: Error) => String((error.cause as Error | undefined)?.message ?? error.message),
  );

test('withGarage() shows this garage and nothing of another', async () => {
  await mine.inside(async (tx) => {
    expect(await listCarIds(tx, mine.id)).toEqual([myCar]);
    expect(await listCarIds(tx, other.id)).toEqual([]);
    expect(await readCar(tx, other.id, otherCar)).toBeNull();
    // no filter at all: row-level security is the only thing left
    expect((await tx.select().from(schema.car)).map((row) => row.id)).toEqual([myCar]);
    expect((await tx.select().from(schema.garage)).map((row) => row.id)).toEqual([mine.id]);
  });
});

test('withGarage() answers a stranger just as it answers about a garage that does not exist', async () => {
  const ask = (garageId: string) =>
    withGarage(app, { kind: 'user', userId: mine.userId }, garageId, async () => 'inside').catch(
      (error: unknown) => error,
    );
  const [known, unknown, noId] = [other.id, randomUUID(), 'pebble-lane'];
  for (const garageId of [known, unknown, noId]) {
    const answer = await ask(garageId);
    expect(answer).toBeInstanceOf(NotYours);
    expect((answer as NotYours).message).toBe(new NotYours(garageId).message);
  }
  expect(await ask(mine.id)).toBe('inside');
});

test('withGarage() leaves nothing set on the connection it gives back', async () => {
  const one = connect(database.appUrl, { max: 1 });
  await withGarage(one, { kind: 'user', userId: mine.userId }, mine.id, async () => {});
  const [row] = await one.orm.execute(sql`select (select count(*)::int from car) as cars`);
  await one.close();
  expect(row?.cars).toBe(0);
});

test('without a garage no role sees a row of any garage table', async () => {
  for (const table of GUARDED) {
    const { name } = getTableConfig(table);
    for (const db of [app, job]) {
      const seen = await db.orm
        .select({ rows: sql<number>`count(*)::int` })
        .from(table)
        .then(([row]) => row?.rows)
        .catch((error: Error) => (error.cause as Error).message);
      const closedToJob = CLOSED_TO_JOB.includes(name) && db === job;
      expect([name, seen]).toEqual([name, closedToJob ? `permission denied for table ${name}` : 0]);
    }
  }
});

test('a row cannot be written into another garage, nor moved there', async () => {
  const at = new Date('2026-03-10T10:00:00Z');
  const car = {
    garageId: other.id,
    id: randomUUID(),
    name: 'Stowaway',
    unit: 'km' as const,
    profile: {},
    addedAt: at,
    changedAt: at,
    changedBy: mine.userId,
  };
  const put = mine.inside((tx) => tx.insert(schema.car).values(car));
  expect(await refusal(put)).toMatch(/violates row-level security policy for table "car"/);
  const move = mine.inside((tx) => tx.update(schema.car).set({ garageId: other.id }));
  expect(await refusal(move)).toMatch(/violates row-level security policy for table "car"/);
});

test('the job role reads inputs and writes answers, and never a person’s record', async () => {
  await withGarage(job, JOB, mine.id, async (tx) => {
    expect(await listCarIds(tx, mine.id)).toEqual([myCar]);
  });
  const writes = {
    entry: (db: Db) => withGarage(db, JOB, mine.id, (tx) => tx.delete(schema.entry)),
    car: (db: Db) => withGarage(db, JOB, mine.id, (tx) => tx.update(schema.car).set({ name: 'x' })),
    item: (db: Db) =>
      withGarage(db, JOB, mine.id, (tx) => tx.update(schema.item).set({ position: 9 })),
    garage: (db: Db) =>
      withGarage(db, JOB, mine.id, (tx) => tx.update(schema.garage).set({ name: 'x' })),
    gear: (db: Db) =>
      withGarage(db, JOB, mine.id, (tx) => tx.update(schema.gear).set({ revision: 9 })),
    event: (db: Db) =>
      withGarage(db, JOB, mine.id, (tx) => tx.update(schema.event).set({ revision: 9 })),
    planned_lay_up: (db: Db) =>
      withGarage(db, JOB, mine.id, (tx) => tx.update(schema.plannedLayUp).set({ revision: 9 })),
    part_order: (db: Db) =>
      withGarage(db, JOB, mine.id, (tx) => tx.update(schema.partOrder).set({ revision: 9 })),
    spec: (db: Db) => withGarage(db, JOB, mine.id, (tx) => tx.select().from(schema.spec)),
    photo: (db: Db) => withGarage(db, JOB, mine.id, (tx) => tx.select().from(schema.photo)),
    user: (db: Db) => db.orm.select().from(schema.user),
    setup: (db: Db) => db.orm.select().from(schema.setup),
  };
  for (const [table, write] of Object.entries(writes))
    expect(await refusal(write(job))).toBe(`permission denied for table ${table}`);
});

test('the app role cannot write an answer, nor take a recorded body back', async () => {
  const snapshot = mine.inside((tx) => tx.delete(schema.snapshot));
  expect(await refusal(snapshot)).toBe('permission denied for table snapshot');
  const revision = mine.inside((tx) => tx.update(schema.entryRevision).set({ body: null }));
  expect(await refusal(revision)).toBe('permission denied for table entry_revision');
  const command = mine.inside((tx) => tx.delete(schema.command));
  expect(await refusal(command)).toBe('permission denied for table command');
  for (const table of [
    schema.gear,
    schema.event,
    schema.spec,
    schema.plannedLayUp,
    schema.partOrder,
  ]) {
    const gone = mine.inside((tx) => tx.delete(table));
    expect(await refusal(gone)).toBe(`permission denied for table ${getTableConfig(table).name}`);
  }
  const photo = mine.inside((tx) => tx.update(schema.photo).set({ type: 'x' }));
  expect(await refusal(photo)).toBe('permission denied for table photo');
});

test('the same ids may be used in two garages, and each finds its own', async () => {
  const note = (text: string) =>
    entryInput.parse({
      kind: 'note',
      id: '0197a000-0000-7000-8000-00000000000a',
      on: '2026-03-01',
      zone: 'Europe/London',
      note: text,
    });
  for (const [garage, text] of [
    [mine, 'ours'],
    [other, 'theirs'],
  ] as const)
    await garage.inside(async (tx) => {
      const row = await insertEntry(tx, {
        garageId: garage.id,
        body: note(text),
        recorded: await nextRecorded(tx, garage.id),
        at: new Date('2026-03-01T12:00:00Z'),
        by: garage.userId,
        commandId: randomUUID(),
      });
      expect(row).not.toBeNull();
    });
  const seen = await mine.inside((tx) => readEntry(tx, mine.id, note('ours').id));
  expect(seen?.body).toMatchObject({ note: 'ours' });
});

test('listMyGarages() lists a person’s own garages only', async () => {
  const rows = await listMyGarages(app, mine.userId);
  expect(rows.map(({ id, role }) => ({ id, role }))).toEqual([{ id: mine.id, role: 'owner' }]);
  expect(await listMyGarages(app, randomUUID())).toEqual([]);
});

test('a garage is not lost when its organization is deleted', async () => {
  const gone = app.orm.delete(schema.organization);
  expect(await refusal(gone)).toMatch(/violates (RESTRICT setting of )?foreign key constraint/);
});
