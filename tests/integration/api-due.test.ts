import { randomUUID } from 'node:crypto';
import {
  connect,
  type Db,
  replaceDueLines,
  replaceIfLater,
  SNAPSHOT_SCHEMA,
  withGarage,
} from '@quartermark/db';
import type { DueLine } from '@quartermark/engine/display';
import type { CarStatus } from '@quartermark/engine/matters';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Home, home, refused } from '../support/api-house.ts';
import { plainEngine } from '../support/plain-engine.ts';
import { roadAsked } from '../support/road-asked.ts';

let at: Home;
let job: Db;
beforeAll(async () => {
  at = await home('api due');
  job = connect(at.database.jobUrl, { max: 2 });
});
afterAll(async () => {
  await job.close();
  await at.close();
});

const JOB = { kind: 'job' } as const;
const YEARLY = { measure: 'months' as const, value: 12 };
const command = () => ({ garageId: at.garageId, commandId: randomUUID() });

/** A car, its items and their lines as a worker would have left them. */
async function addCar(
  name: string,
  lines: Partial<DueLine>[],
  more: { status?: CarStatus; snapshotSchema?: number } = {},
): Promise<string> {
  const { status = 'inUse', snapshotSchema = SNAPSHOT_SCHEMA } = more;
  const carId = randomUUID();
  await at.me.car.add({ ...command(), carId, car: { name, unit: 'km' } });
  const whole = lines.map((line): DueLine => ({ ...PLAIN, ...line, id: randomUUID() }));
  const items = whole.map(({ id, name }) => ({ itemId: id, item: { name, limits: [YEARLY] } }));
  if (items.length > 0) await at.me.item.addMany({ ...command(), carId, items });
  const { garageId } = at;
  const answer = plainEngine().answer(roadAsked(BOOK(carId)));
  const { analysis, road, lines: _, said: __, oil: ___, ...columns } = answer;
  await withGarage(job, JOB, garageId, async (tx) => {
    const row = {
      ...columns,
      garageId,
      carId,
      inputVersion: 99,
      engineVersion: 1,
      snapshotSchema,
      asOf: at.today,
      computedAt: new Date('2026-06-15T10:00:00Z'),
      status,
      laidUp: status === 'laidUp',
    };
    expect(await replaceIfLater(tx, row, { analysis, road })).toBe(true);
    await replaceDueLines(tx, { garageId, carId, apart: status !== 'inUse', lines: whole });
  });
  return carId;
}

const PLAIN: DueLine = {
  id: '',
  name: 'Engine oil',
  state: 'fine',
  reasonCode: null,
  binding: 'km',
  limit: 10_000,
  remaining: 4_000,
  unit: 'km',
  day: null,
  dates: { early: null, likely: null, late: null },
  overdueSince: null,
  lastDone: '2026-01-05',
  leadDays: 0,
  parts: null,
};
const BOOK = (id: string) => ({ asOf: '2026-06-15', car: { id }, entries: [] }) as never;

type Question = Parameters<Home['me']['due']['list']>[0];
/** Every page of the list, asked for one after the other. */
async function all(more: Omit<Question, 'garageId' | 'cursor'> = {}) {
  const rows = [];
  const sizes: number[] = [];
  let cursor: string | null = null;
  do {
    const page = await at.me.due.list({ garageId: at.garageId, cursor, ...more });
    rows.push(...page.rows);
    sizes.push(page.rows.length);
    cursor = page.next;
  } while (cursor !== null && sizes.length < 20);
  return { rows, sizes };
}

/** Days that lie ahead and are said. */
const ahead = (likely: string | null, early: string | null) => ({
  likely,
  early,
  dates: { early, likely, late: null },
});
const day = (n: number) => `2026-07-${String(1 + (n % 28)).padStart(2, '0')}`;

test('due.list gives every line once, page by page, in each order', async () => {
  // 120 lines on few days, so that pages end in the middle of a day; every tenth has no day at all
  const lines = (seed: number) =>
    Array.from({ length: 40 }, (_, n) => ({
      name: `Item ${seed}-${n}`,
      ...ahead(
        n % 10 === 9 ? null : day(n * seed),
        n % 10 === 9 ? null : day(Math.floor((n * seed) / 2)),
      ),
    }));
  const twins = [await addCar('Twin', lines(1)), await addCar('Twin', lines(3))];
  const asleep = await addCar('Asleep', lines(5), { status: 'laidUp' });
  // what each order sorts by, text as the database compares it: plain code points
  const nearest = (row: DueLine) => row.dates.likely ?? '9999';
  const earliest = (row: DueLine) => row.dates.early ?? '9999';
  for (const [sort, key] of [
    ['likely', nearest],
    ['early', earliest],
  ] as const) {
    const { rows, sizes } = await all({ sort });
    expect(sizes).toEqual([50, 50, 20]);
    expect(new Set(rows.map(({ id }) => id)).size).toBe(120);
    const keys = rows.map((row) => `${row.status === 'inUse' ? 0 : 1} ${key(row)} ${row.carId}`);
    expect(keys).toEqual(keys.toSorted());
  }
  const { rows } = await all({ sort: 'car' });
  expect(new Set(rows.map(({ id }) => id)).size).toBe(120);
  const cars = rows.map(({ carId }) => carId);
  expect(cars.slice(0, 40)).toEqual(Array(40).fill(asleep));
  expect(cars.slice(40)).toEqual(twins.toSorted().flatMap((id) => Array(40).fill(id)));
  for (const carId of [asleep, ...twins]) {
    const own = rows.filter((row) => row.carId === carId).map(nearest);
    expect(own).toEqual(own.toSorted());
  }
});

test('due.list shows a line as it was written, with its car', async () => {
  const plain = {
    name: 'Spark plugs',
    known: false as const,
    leadDays: 12,
    parts: { kind: 'orderBy' as const, day: '2026-12-20', feasible: true },
    ...ahead('2027-01-05', null),
    readingNeeded: true as const,
  };
  const line = {
    name: 'Brake fluid',
    state: 'overdue' as const,
    reasonCode: 'trigger' as const,
    cause: { code: 'softPedal' as const, on: '2026-06-13' },
    binding: 'sessions:severe',
    limit: 18,
    remaining: -2.5,
    unit: null,
    overdueSince: '2026-06-13',
    parts: { kind: 'ordered' as const, order: { on: '2026-06-14' }, late: false },
    lastDone: null,
    dates: { early: '2026-05-21', likely: '2026-06-20', late: '2026-08-01' },
  };
  const carId = await addCar('Kestrel', [line, plain], { status: 'away' });
  const { rows } = await all({ filter: { carId } });
  const car = {
    carId,
    carName: 'Kestrel',
    carUnit: 'km',
    status: 'away',
    laidUp: false,
    asOf: '2026-06-15',
  };
  expect(rows).toStrictEqual([
    { ...PLAIN, ...line, id: rows[0]?.id, ...car, orderBy: null },
    { ...PLAIN, ...plain, id: rows[1]?.id, ...car, orderBy: '2026-12-20' },
  ]);
});

test('due.list keeps to what is asked: state, car, and a day', async () => {
  const over = { dates: { early: '2026-09-01', likely: '2026-09-01', late: null } };
  const carId = await addCar('Sorted', [
    {
      name: 'over',
      state: 'overdue',
      overdueSince: '2026-06-01',
      ...over,
    },
    { name: 'soon', state: 'dueSoon', ...ahead('2026-06-30', '2026-06-20') },
    { name: 'later', ...ahead('2026-08-30', '2026-06-25') },
    { name: 'never', ...ahead('2026-12-30', '2026-11-20') },
    { name: 'nothing', state: 'unknown', reasonCode: 'noBaseline' },
    { name: 'part', state: null },
  ]);
  const names = async (more: Parameters<typeof all>[0]) =>
    (await all(more)).rows.map(({ name }) => name);
  const of = (more: object) => ({ filter: { carId, ...more } });
  // since when it is over comes before what the forecast says
  expect(await names(of({}))).toEqual(expect.arrayContaining(['over', 'nothing', 'part']));
  expect((await names(of({}))).slice(0, 4)).toEqual(['over', 'soon', 'later', 'never']);
  expect(await names(of({ state: 'dueSoon' }))).toEqual(['soon']);
  expect(await names(of({ before: '2026-06-30' }))).toEqual(['over', 'soon']);
  expect(await names(of({ before: '2026-06-29' }))).toEqual(['over']);
  expect(await names({ sort: 'early', ...of({ before: '2026-06-29' }) })).toEqual([
    'over',
    'soon',
    'later',
  ]);
  const { counts } = await at.me.due.list({
    garageId: at.garageId,
    filter: { carId, state: 'fine' },
  });
  expect(counts).toEqual({
    overdue: 1,
    dueSoon: 1,
    unknown: 1,
    fine: 2,
    noDate: 1,
    apart: 0,
    carsToCome: 0,
  });
});

test('due.list says how many cars are still to come, and shows no line of another form', async () => {
  const carId = await addCar('Old', [{ name: 'Unreadable' }], {
    snapshotSchema: SNAPSHOT_SCHEMA + 1,
  });
  const page = await at.me.due.list({ garageId: at.garageId, filter: { carId } });
  expect(page).toMatchObject({ rows: [], next: null, counts: { carsToCome: 1, fine: 0 } });
});

test('due.list shows nothing of a car that is not here, and refuses a place it never gave', async () => {
  const { garageId } = at;
  const none = await at.me.due.list({ garageId, filter: { carId: randomUUID() } });
  expect(none).toMatchObject({ rows: [], next: null });
  const wrong = await refused(at.me.due.list({ garageId, cursor: 'bm93aGVyZQ' }));
  expect(wrong).toMatchObject({ code: 'badInput', field: 'cursor' });
});

test('due.list gives each line to one of its three parts, what is done once for all to none', async () => {
  const day = (name: string, likely: string) => ({
    name,
    likely,
    early: likely,
    dates: { early: likely, likely, late: likely },
  });
  const lines = [
    day('soon', '2026-06-20'),
    {
      ...day('unsure', '2026-06-21'),
      state: 'unknown' as const,
      reasonCode: 'lowerBound' as const,
    },
    { name: 'never', state: 'unknown' as const, reasonCode: 'noBaseline' as const },
    { ...day('done', '2026-06-22'), reasonCode: 'doneOnce' as const },
  ];
  const cars = {
    inUse: await addCar('Parts in use', lines),
    laidUp: await addCar('Parts laid up', lines, { status: 'laidUp' }),
    sold: await addCar('Parts sold', lines, { status: 'sold' }),
  };
  const names = async (carId: string, part: 'dated' | 'apart' | 'unsure') =>
    (await at.me.due.list({ garageId: at.garageId, filter: { carId, part } })).rows.map(
      ({ name }) => name,
    );
  expect(await names(cars.inUse, 'dated')).toEqual(['soon']);
  expect(await names(cars.inUse, 'apart')).toEqual([]);
  expect(await names(cars.inUse, 'unsure')).toEqual(['unsure', 'never']);
  expect(await names(cars.laidUp, 'dated')).toEqual([]);
  expect(await names(cars.laidUp, 'apart')).toEqual(['soon']);
  expect(await names(cars.laidUp, 'unsure')).toEqual(['unsure', 'never']);
  for (const part of ['dated', 'apart', 'unsure'] as const)
    expect(await names(cars.sold, part)).toEqual([]);
});
