import { randomUUID } from 'node:crypto';
import {
  amendEntry,
  changeCar,
  changeItem,
  connect,
  type Db,
  foundGarage,
  type HistoryPlace,
  historyPage,
  insertEntry,
  lastOfEachKind,
  listItems,
  listLayUps,
  listRevisions,
  loadBook,
  nextRecorded,
  readCar,
  readEntry,
  readingsNear,
  removeEntry,
  replaceLayUps,
  schema,
  type Tx,
  UnreadableBook,
  withGarage,
} from '@quartermark/db';
import { book, type EntryDraft, entryInput } from '@quartermark/engine/log';
import { eq, sql } from 'drizzle-orm';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { type FreshDatabase, freshDatabase } from '../support/database.ts';
import { JobsGarage } from '../support/jobs-garage.ts';

const JOB = { kind: 'job' } as const;
const AT = new Date('2026-03-10T10:00:00Z');

let database: FreshDatabase;
let app: Db;
let job: Db;
let garage: JobsGarage;
let carId: string;

beforeAll(async () => {
  database = await freshDatabase('db-record');
  app = connect(database.appUrl, { max: 8 });
  job = connect(database.jobUrl, { max: 2 });
});
beforeEach(async () => {
  garage = await new JobsGarage(app).found();
  carId = await garage.addCar();
});
afterAll(async () => {
  await app.close();
  await job.close();
  await database.drop();
});

type Page = Awaited<ReturnType<typeof historyPage>>;

type Draft = EntryDraft extends infer D
  ? D extends EntryDraft
    ? Omit<D, 'id' | 'zone' | 'car'> & { id?: string }
    : never
  : never;

const bodyOf = (draft: Draft) =>
  entryInput.parse({ id: randomUUID(), zone: 'Europe/London', car: carId, ...draft });
const note = (text: string, on = '2026-03-01', id: string = randomUUID()) =>
  bodyOf({ kind: 'note', id, on, note: text });
const stamp = () => ({ garageId: garage.id, at: AT, by: garage.userId, commandId: randomUUID() });

async function add(tx: Tx, body: ReturnType<typeof bodyOf>) {
  const recorded = await nextRecorded(tx, garage.id);
  return insertEntry(tx, { ...stamp(), body, recorded });
}

test('nextRecorded() counts without gap or double, though many write at once and some fail', async () => {
  await Promise.all(
    Array.from({ length: 40 }, (_, at) =>
      garage
        .inside(async (tx) => {
          await add(tx, note(`entry ${at}`));
          if (at % 4 === 0) throw new Error('changed my mind');
        })
        .catch((error: Error) => expect(error.message).toBe('changed my mind')),
    ),
  );
  const rows = await garage.inside((tx) => tx.select().from(schema.entry));
  const ordinals = rows.map((row) => row.recorded).sort((a, b) => a - b);
  expect(ordinals).toEqual(Array.from({ length: 30 }, (_, at) => at + 1));
});

test('insertEntry() keeps the body letter for letter and refuses an id in use', async () => {
  const body = bodyOf({
    kind: 'odometer',
    on: '2026-03-01',
    odometer: { text: '38,412', unit: 'mi' },
    note: 'ünïcode “as typed”\nsecond line',
  });
  await garage.inside((tx) => add(tx, body));
  expect((await garage.inside((tx) => readEntry(tx, garage.id, body.id)))?.body).toEqual(body);
  expect(await garage.inside((tx) => add(tx, note('again', '2026-03-02', body.id)))).toBeNull();
});

test('amendEntry() rests on the newest revision, keeps the ordinal and every earlier body', async () => {
  const first = note('first');
  const second = note('second', '2026-03-02', first.id);
  const third = note('third', '2026-03-02', first.id);
  await garage.inside((tx) => add(tx, first));
  const change = (body: typeof first, baseRevision: number) =>
    garage.inside((tx) => amendEntry(tx, { ...stamp(), id: first.id, baseRevision, body }));
  expect(await change(second, 1)).toMatchObject({ revision: 2, on: '2026-03-02', recorded: 1 });
  expect(await change(third, 1)).toBeNull();
  const revisions = await garage.inside((tx) => listRevisions(tx, garage.id, first.id));
  expect(revisions.map(({ revision, body }) => ({ revision, body }))).toEqual([
    { revision: 2, body: second },
    { revision: 1, body: first },
  ]);
});

test('amendEntry() lets one of two through who change the same revision at once', async () => {
  const first = note('first');
  await garage.inside((tx) => add(tx, first));
  const done = await Promise.all(
    ['one', 'two', 'three'].map((text) =>
      garage.inside((tx) =>
        amendEntry(tx, {
          ...stamp(),
          id: first.id,
          baseRevision: 1,
          body: note(text, '2026-03-01', first.id),
        }),
      ),
    ),
  );
  expect(done.filter((row) => row !== null)).toHaveLength(1);
});

test('removeEntry() leaves a tombstone that neither an amendment nor its own id revives', async () => {
  const first = note('first');
  await garage.inside((tx) => add(tx, first));
  const removed = await garage.inside((tx) =>
    removeEntry(tx, { ...stamp(), id: first.id, baseRevision: 1 }),
  );
  expect(removed).toMatchObject({ revision: 2, removedAt: AT, body: first });
  const amended = await garage.inside((tx) =>
    amendEntry(tx, { ...stamp(), id: first.id, baseRevision: 2, body: first }),
  );
  expect(amended).toBeNull();
  expect(await garage.inside((tx) => add(tx, first))).toBeNull();
  const page = await garage.inside((tx) => historyPage(tx, { garageId: garage.id, limit: 9 }));
  expect(page.rows).toEqual([]);
});

test('historyPage() gives each entry once, newest day first and last recorded first', async () => {
  const days = ['2026-02-03', '2026-03-01', '2026-02-03', '2026-01-09', '2026-03-01', '2026-02-03'];
  const ids: string[] = [];
  await garage.inside(async (tx) => {
    for (const on of days) ids.push((await add(tx, note('x', on)))?.id ?? '');
  });
  const wanted = [4, 1, 5, 2, 0, 3].map((at) => ids[at]);
  for (const limit of [1, 2, 3, 6, 7]) {
    const seen: string[] = [];
    let after: HistoryPlace | null = null;
    do {
      const place: HistoryPlace | null = after;
      const page: Page = await garage.inside((tx) =>
        historyPage(tx, { garageId: garage.id, carId, after: place, limit }),
      );
      seen.push(...page.rows.map((row) => row.id));
      after = page.next;
    } while (after && seen.length < 100);
    expect(seen).toEqual(wanted);
  }
});

test('historyPage() finds every word in what was typed, and takes no sign for a pattern', async () => {
  await garage.inside(async (tx) => {
    await add(tx, note('Coolant smell, LEFT front'));
    await add(tx, note('left the lift locked at 100%'));
    await add(
      tx,
      bodyOf({ kind: 'oilTopUp', on: '2026-03-02', product: 'Left Bank 5W-40', toMax: true }),
    );
  });
  const find = async (text: string) => {
    const page = await garage.inside((tx) =>
      historyPage(tx, { garageId: garage.id, carId, text, limit: 9 }),
    );
    return page.rows.map((row) => row.kind);
  };
  expect(await find('left')).toHaveLength(3);
  expect(await find('front coolant')).toEqual(['note']);
  expect(await find('bank')).toEqual(['oilTopUp']);
  expect(await find('100%')).toEqual(['note']);
  expect(await find('1%0')).toEqual([]);
  // ids, kinds and zones were not typed
  expect(await find('oilTopUp')).toEqual([]);
  expect(await find('london')).toEqual([]);
});

test('readingsNear() gives the readings on both sides of a day, in the order of the log', async () => {
  const reading = (on: string, text: string) =>
    bodyOf({ kind: 'odometer', on, odometer: { text, unit: 'mi' } });
  await garage.inside(async (tx) => {
    await add(tx, reading('2026-03-05', '300'));
    await add(tx, reading('2026-01-05', '100'));
    await add(tx, reading('2026-02-05', '200'));
    await add(tx, note('no reading', '2026-02-06'));
    for (let day = 1; day <= 22; day += 1)
      await add(tx, reading(`2025-12-${String(day).padStart(2, '0')}`, String(day)));
  });
  const near = await garage.inside((tx) => readingsNear(tx, garage.id, carId, '2026-02-05'));
  expect(near).toHaveLength(21);
  expect(near.slice(-3).map((row) => row.on)).toEqual(['2026-01-05', '2026-02-05', '2026-03-05']);
});

test('lastOfEachKind() gives the newest of each kind that is not removed', async () => {
  const drive = (on: string) => bodyOf({ kind: 'drive', on, use: 'road' });
  const gone = drive('2026-03-03');
  await garage.inside(async (tx) => {
    await add(tx, drive('2026-03-01'));
    await add(tx, gone);
    await add(tx, drive('2026-02-01'));
    await add(tx, note('x'));
    await removeEntry(tx, { ...stamp(), id: gone.id, baseRevision: 1 });
  });
  const rows = await garage.inside((tx) =>
    lastOfEachKind(tx, garage.id, carId, ['drive', 'session', 'note']),
  );
  expect(rows.map((row) => `${row.kind} ${row.on}`).sort()).toEqual([
    'drive 2026-03-01',
    'note 2026-03-01',
  ]);
});

test('changeCar() and changeItem() refuse a stale revision', async () => {
  const by = { garageId: garage.id, at: AT, by: garage.userId };
  await garage.inside(async (tx) => {
    const car = await readCar(tx, garage.id, carId);
    const input = { name: 'Grey wagon, blue door', unit: 'mi' as const, profile: {} };
    const change = { ...by, id: carId, car: input };
    expect(await changeCar(tx, { ...change, baseRevision: car?.revision ?? 0 })).toBe(2);
    expect(await changeCar(tx, { ...change, baseRevision: 1 })).toBeNull();
    const [item] = await listItems(tx, garage.id, { carId });
    if (!item) throw new Error('the car should have an item');
    const written = { ...by, id: item.id, body: { ...item.body, name: 'Oil' } };
    expect(await changeItem(tx, { ...written, baseRevision: 1 })).toEqual({
      revision: 2,
      carId,
      gearId: null,
    });
    expect(await changeItem(tx, { ...written, baseRevision: 1 })).toBeNull();
  });
});

test('replaceLayUps() takes away what is not told any more and brings it back when it is', async () => {
  const window = (id: string, startOn: string) => ({ id, startOn, endOn: null, closedBy: null });
  const [one, two] = [window(randomUUID(), '2025-11-02'), window(randomUUID(), '2026-02-02')];
  const told = (windows: (typeof one)[]) =>
    garage.inside(async (tx) => {
      await replaceLayUps(tx, garage.id, carId, windows, AT);
      return (await listLayUps(tx, garage.id, carId)).map((row) => row.id);
    });
  expect(await told([one, two])).toEqual([one.id, two.id]);
  expect(await told([two])).toEqual([two.id]);
  expect(await told([one, two])).toEqual([one.id, two.id]);
  expect(await told([])).toEqual([]);
});

const load = () =>
  withGarage(job, JOB, garage.id, (tx) => loadBook(tx, garage.id, carId, '2026-03-10'), {
    isolation: 'repeatable read',
    readOnly: true,
  });

test('loadBook() makes a log/1 book of the car, tombstones included', async () => {
  const gone = note('gone');
  const kept = bodyOf({ kind: 'drive', on: '2026-03-02', use: 'road' });
  await garage.inside(async (tx) => {
    await add(tx, gone);
    await add(tx, kept);
    await removeEntry(tx, { ...stamp(), id: gone.id, baseRevision: 1 });
    await replaceLayUps(
      tx,
      garage.id,
      carId,
      [{ id: randomUUID(), startOn: '2026-01-02', endOn: '2026-02-02', closedBy: null }],
      AT,
    );
  });
  const loaded = await load();
  expect(loaded.inputVersion).toBe(2);
  expect(loaded.book.entries).toEqual([
    { ...gone, recorded: 1, revision: 2, removed: true },
    { ...kept, recorded: 2, revision: 1, removed: false },
  ]);
  expect(loaded.book).toMatchObject({
    asOf: '2026-03-10',
    garage: { zone: 'Europe/London' },
    car: { id: carId, name: 'Grey wagon', unit: 'mi', profile: {} },
    items: [{ name: 'Engine oil', role: 'engineOil', warnDays: 14 }],
    layUps: [{ start: '2026-01-02', end: '2026-02-02' }],
  });
  // as a file it is read back the same
  expect(book.parse(JSON.parse(JSON.stringify(loaded.book)))).toEqual(loaded.book);
});

test('loadBook() names the entry that cannot be read, and its car', async () => {
  const bad = note('fine so far');
  await garage.inside(async (tx) => {
    await add(tx, bad);
    await tx
      .update(schema.entry)
      .set({ body: sql`${schema.entry.body} - 'note'` })
      .where(eq(schema.entry.id, bad.id));
  });
  const error = await load().catch((thrown: unknown) => thrown);
  expect(error).toBeInstanceOf(UnreadableBook);
  expect(error).toMatchObject({ carId, part: 'entry', partId: bad.id });
  // the rest of the record is still there to look at
  const page = await garage.inside((tx) => historyPage(tx, { garageId: garage.id, limit: 9 }));
  expect(page.rows.map((row) => row.id)).toEqual([bad.id]);
});

test('foundGarage() makes nothing where the id is taken', async () => {
  const founded = await app.orm.transaction((tx) =>
    foundGarage(
      tx,
      { id: garage.id, name: 'Mine now', zone: 'UTC', distanceUnit: 'km', volumeUnit: 'l' },
      { userId: garage.userId, role: 'owner', now: AT, nextDayAt: AT },
    ),
  );
  expect(founded).toBe(false);
});
