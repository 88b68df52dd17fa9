import { randomUUID } from 'node:crypto';
import {
  carWithSnapshot,
  connect,
  type Db,
  insertCar,
  listCarIds,
  type OverviewPlace,
  overviewCounts,
  overviewPage,
  readSnapshot,
  rejectedReadings,
  replaceIfLater,
  SNAPSHOT_SCHEMA,
  type SnapshotRow,
  schema,
  withGarage,
} from '@quartermark/db';
import type { Analysis } from '@quartermark/engine';
import type { Lane, LaneRoad } from '@quartermark/engine/display';
import { carInput } from '@quartermark/engine/log';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { noOilYet } from '../../packages/engine/test/no-oil-yet.ts';
import { nothingOpen } from '../../packages/engine/test/nothing-open.ts';
import { type FreshDatabase, freshDatabase } from '../support/database.ts';
import { JobsGarage } from '../support/jobs-garage.ts';

const JOB = { kind: 'job' } as const;
const LANE: Lane = {
  next: [],
  odometer: null,
  level: null,
  oil: null,
  laidUp: null,
  status: 'inUse',
  stop: null,
  road: null,
  open: 0,
  flags: 0,
};

let database: FreshDatabase;
let app: Db;
let job: Db;
let garage: JobsGarage;

beforeAll(async () => {
  database = await freshDatabase('db-snapshot');
  app = connect(database.appUrl, { max: 4 });
  job = connect(database.jobUrl, { max: 4 });
  garage = await new JobsGarage(app).found();
});
afterAll(async () => {
  await app.close();
  await job.close();
  await database.drop();
});

type Page = Awaited<ReturnType<typeof overviewPage>>;
type Rests = { inputVersion: number; engineVersion: number; asOf: string; form?: number };

const row = (carId: string, rests: Rests, more: Partial<SnapshotRow> = {}): SnapshotRow => ({
  garageId: garage.id,
  carId,
  inputVersion: rests.inputVersion,
  engineVersion: rests.engineVersion,
  snapshotSchema: rests.form ?? SNAPSHOT_SCHEMA,
  asOf: rests.asOf,
  computedAt: new Date('2026-03-10T10:00:00Z'),
  urgency: 500,
  laidUp: false,
  overdue: 0,
  dueSoon: 0,
  notOnRecord: 0,
  lane: LANE,
  ...more,
});

const detail = (carId: string, asOf: string): Analysis => ({
  schema: 1,
  engineVersion: 1,
  car: carId,
  asOf,
  flags: [],
  items: [],
  laidUp: null,
  odometer: null,
  lastLevel: null,
  oil: noOilYet(),
  ...nothingOpen,
});

const put = (written: SnapshotRow, options?: { ignoreAsOf?: boolean }) =>
  withGarage(job, JOB, garage.id, (tx) =>
    replaceIfLater(
      tx,
      written,
      { analysis: detail(written.carId, written.asOf), road: null },
      options,
    ),
  );

const stored = async (carId: string) => {
  const found = await garage.inside((tx) => readSnapshot(tx, garage.id, carId));
  return found && [found.inputVersion, found.engineVersion, found.asOf, found.detail.asOf];
};

// later and later, by the first member that differs
const RISING: Rests[] = [
  { inputVersion: 1, engineVersion: 1, asOf: '2026-03-11' },
  { inputVersion: 1, engineVersion: 1, asOf: '2026-03-12' },
  { inputVersion: 1, engineVersion: 2, asOf: '2026-03-10' },
  { inputVersion: 2, engineVersion: 1, asOf: '2026-03-09' },
];

function orders<T>(items: readonly T[]): T[][] {
  if (items.length <= 1) return [[...items]];
  return items.flatMap((first, at) =>
    orders(items.filter((_, index) => index !== at)).map((rest) => [first, ...rest]),
  );
}

test('replaceIfLater() keeps the latest in whatever order the answers come in', async () => {
  const all = orders(RISING);
  expect(all).toHaveLength(24);
  for (const order of all) {
    const carId = await garage.addCar();
    let latest = -1;
    for (const rests of order) {
      const place = RISING.indexOf(rests);
      expect(await put(row(carId, rests))).toBe(place > latest);
      latest = Math.max(latest, place);
    }
    expect(await stored(carId)).toEqual([2, 1, '2026-03-09', '2026-03-09']);
  }
});

test('replaceIfLater() writes the same answer once, and again only in a later form', async () => {
  const carId = await garage.addCar();
  const rests = { inputVersion: 3, engineVersion: 1, asOf: '2026-03-10' };
  expect(await put(row(carId, rests))).toBe(true);
  expect(await put(row(carId, rests))).toBe(false);
  expect(await put(row(carId, { ...rests, form: SNAPSHOT_SCHEMA + 1 }))).toBe(true);
  expect(await put(row(carId, rests))).toBe(false);
});

test('replaceIfLater() may step back a day, but never a version, where the day is to be ignored', async () => {
  const carId = await garage.addCar();
  await put(row(carId, { inputVersion: 3, engineVersion: 2, asOf: '2026-03-10' }));
  const back = { inputVersion: 3, engineVersion: 2, asOf: '2026-03-09' };
  expect(await put(row(carId, back))).toBe(false);
  expect(await put(row(carId, back), { ignoreAsOf: true })).toBe(true);
  expect(await stored(carId)).toEqual([3, 2, '2026-03-09', '2026-03-09']);
  const older = { inputVersion: 2, engineVersion: 2, asOf: '2026-03-12' };
  expect(await put(row(carId, older), { ignoreAsOf: true })).toBe(false);
});

test('replaceIfLater() lets the latest win when all come at once', async () => {
  const carId = await garage.addCar();
  const many = Array.from({ length: 12 }, (_, at) =>
    row(carId, { inputVersion: 1 + ((at * 5) % 12), engineVersion: 1, asOf: '2026-03-10' }),
  );
  await Promise.all(many.map((each) => put(each)));
  expect((await stored(carId))?.[0]).toBe(12);
});

test('replaceIfLater() refuses a lane over 1 KB, naming its size', async () => {
  const carId = await garage.addCar();
  const name = 'x'.repeat(1024);
  const item = { id: 'i', name, state: null, reasonCode: null, binding: null, limit: null };
  const lane = { ...LANE, next: [{ ...item, remaining: null, unit: null, day: null }] };
  const written = put(
    row(carId, { inputVersion: 1, engineVersion: 1, asOf: '2026-03-10' }, { lane }),
  );
  await expect(written).rejects.toThrow(/bytes, it should be at most 1024/);
});

test('carWithSnapshot() shows an answer of another form as none', async () => {
  const carId = await garage.addCar();
  const rests = { inputVersion: 2, engineVersion: 1, asOf: '2026-03-10' };
  const view = () => garage.inside((tx) => carWithSnapshot(tx, garage.id, carId));
  expect(await view()).toMatchObject({ snapshot: null, failure: null });
  await put(row(carId, rests));
  expect((await view())?.snapshot).toMatchObject({ inputVersion: 2, analysis: { car: carId } });
  await put(row(carId, { ...rests, inputVersion: 3, form: SNAPSHOT_SCHEMA + 1 }));
  expect((await view())?.snapshot).toBeNull();
});

test('rejectedReadings() names the entries whose value the answer has set aside', async () => {
  const carId = await garage.addCar();
  const rests = { inputVersion: 2, engineVersion: 1, asOf: '2026-03-10' };
  const flag = { entry: 'e1', on: '2026-03-01', value: '1 km' };
  await withGarage(job, JOB, garage.id, (tx) =>
    replaceIfLater(tx, row(carId, rests), {
      analysis: {
        ...detail(carId, rests.asOf),
        flags: [
          { ...flag, code: 'readingRejected' },
          { ...flag, code: 'future', entry: 'e2' },
        ],
      },
      road: null,
    }),
  );
  expect(await garage.inside((tx) => rejectedReadings(tx, garage.id, carId))).toEqual(
    new Set(['e1']),
  );
});

test('overviewPage() gives each car once, those never computed first, then by urgency', async () => {
  const big = await new JobsGarage(app).found();
  const ids = Array.from({ length: 23 }, () => randomUUID());
  const at = new Date('2026-03-10T10:00:00Z');
  await big.inside(async (tx) => {
    for (const id of ids) {
      const car = carInput.parse({ name: `Car ${id.slice(0, 4)}`, unit: 'km' });
      await insertCar(tx, { garageId: big.id, id, car, at, by: big.userId });
    }
  });
  // four are never computed; of the rest several share an urgency
  const urgencies = new Map(ids.slice(4).map((id, at) => [id, (at * 7) % 5]));
  await withGarage(job, JOB, big.id, async (tx) => {
    const rests = { inputVersion: 1, engineVersion: 1, asOf: '2026-03-10' };
    for (const [carId, urgency] of urgencies)
      await replaceIfLater(
        tx,
        { ...row(carId, rests), garageId: big.id, urgency, overdue: urgency === 0 ? 1 : 0 },
        { analysis: detail(carId, rests.asOf), road: null },
      );
  });
  const wanted = [
    ...ids.slice(0, 4).sort(),
    ...[...urgencies]
      .sort(([a, one], [b, other]) => one - other || (a < b ? -1 : 1))
      .map(([carId]) => carId),
  ];
  for (const limit of [1, 3, 4, 5, 22, 23, 50]) {
    const seen: string[] = [];
    let after: OverviewPlace | null = null;
    do {
      const place: OverviewPlace | null = after;
      const page: Page = await big.inside((tx) =>
        overviewPage(tx, { garageId: big.id, after: place, limit }),
      );
      expect(page.rows.length).toBeLessThanOrEqual(limit);
      seen.push(...page.rows.map((each) => each.carId));
      after = page.next;
    } while (after && seen.length < 100);
    expect(seen).toEqual(wanted);
  }
  const counts = await big.inside((tx) => overviewCounts(tx, big.id));
  const overdue = [...urgencies.values()].filter((urgency) => urgency === 0).length;
  expect(counts).toEqual({ cars: 23, needsAHand: overdue, road: { ready: 0, known: 0 } });
});

test('overviewCounts() tells the cars in use that are ready for the road from those that are not, or not known', async () => {
  const house = await new JobsGarage(app).found();
  const said = (word: LaneRoad['word'], more: Partial<SnapshotRow> = {}) => ({
    lane: { ...LANE, road: { word, by: null, why: null, needs: 0 } },
    ...more,
  });
  const rows: Partial<SnapshotRow>[] = [
    said('ready'),
    said('ready'),
    // due soon, and ready all the same
    said('ready', { dueSoon: 1 }),
    said('notOnRecord'),
    said('canBeReady', { overdue: 1 }),
    // stopped whatever the verdict says
    said('ready', { stop: 'wheelsOff' }),
    said('ready', { status: 'away' }),
    said('ready', { laidUp: true, status: 'laidUp' }),
    said('ready', { snapshotSchema: SNAPSHOT_SCHEMA + 1 }),
    {},
  ];
  const ids: string[] = [];
  for (const _ of [...rows, null]) ids.push(await house.addCar());
  await withGarage(job, JOB, house.id, async (tx) => {
    for (const [at, more] of rows.entries()) {
      const carId = ids[at] as string;
      const rests = { inputVersion: 1, engineVersion: 1, asOf: '2026-03-10' };
      const full = { ...row(carId, rests), garageId: house.id, ...more };
      await replaceIfLater(tx, full, { analysis: detail(carId, rests.asOf), road: null });
    }
  });
  const counts = await withGarage(job, JOB, house.id, (tx) => overviewCounts(tx, house.id));
  expect(counts).toEqual({ cars: 11, needsAHand: 4, road: { ready: 3, known: 6 } });
});

test('overviewPage() shows what a row rests on, and the failure beside it', async () => {
  const small = await new JobsGarage(app).found();
  const carId = await small.addCar();
  const since = new Date('2026-03-10T09:30:00.250Z');
  await withGarage(job, JOB, small.id, async (tx) => {
    const rests = { inputVersion: 2, engineVersion: 1, asOf: '2026-03-10' };
    await replaceIfLater(
      tx,
      { ...row(carId, rests), garageId: small.id },
      { analysis: detail(carId, rests.asOf), road: null },
    );
    await tx
      .insert(schema.failure)
      .values({ garageId: small.id, carId, since, attempts: 5, cause: 'out of paper' });
  });
  await small.record(carId, 40_100);
  const page = await small.inside((tx) => overviewPage(tx, { garageId: small.id, limit: 5 }));
  expect(page).toMatchObject({
    next: null,
    rows: [
      {
        carId,
        lane: LANE,
        version: 2,
        wantedVersion: 3,
        asOf: '2026-03-10',
        computedAt: new Date('2026-03-10T10:00:00Z'),
        failure: { since, attempts: 5, cause: 'out of paper' },
      },
    ],
  });
  expect(await small.inside((tx) => listCarIds(tx, small.id))).toEqual([carId]);
});
