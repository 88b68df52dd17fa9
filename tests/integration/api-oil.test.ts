import { randomUUID } from 'node:crypto';
import {
  connect,
  type Db,
  replaceIfLater,
  replaceOilLine,
  SNAPSHOT_SCHEMA,
  withGarage,
} from '@quartermark/db';
import type { OilLine, OilRate } from '@quartermark/engine/display';
import { type Book, book } from '@quartermark/engine/log';
import type { CarStatus } from '@quartermark/engine/matters';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Home, home, refused } from '../support/api-house.ts';
import { plainEngine } from '../support/plain-engine.ts';
import { roadAsked } from '../support/road-asked.ts';

let at: Home;
let job: Db;
beforeAll(async () => {
  at = await home('api oil');
  job = connect(at.database.jobUrl, { max: 2 });
});
afterAll(async () => {
  await job.close();
  await at.close();
});

const JOB = { kind: 'job' } as const;
const command = () => ({ garageId: at.garageId, commandId: randomUUID() });
const bookOf = (id: string): Book =>
  book.parse({
    format: 'log/1',
    asOf: '2026-06-15',
    garage: { zone: 'Europe/London' },
    car: { id, unit: 'km' },
    items: [],
    layUps: [],
    planned: [],
    entries: [],
  });

const rate = (likely: number, spread = 1.4): OilRate => ({
  low: likely / spread,
  likely,
  high: likely * spread,
});
const line = (road: OilRate, change: OilRate | null = null): OilLine => ({
  status: 'ok',
  stop: 'low',
  level: { low: 0.2, likely: 0.5, high: 0.7 },
  road,
  hard: rate(road.likely * 3),
  ago: change && { on: '2025-06-15', road: rate(road.likely / change.likely), hard: null },
  change,
  rise: 'watch',
});
const NONE: OilLine = {
  status: 'none',
  stop: null,
  level: null,
  road: null,
  hard: null,
  ago: null,
  change: null,
  rise: null,
};

/** A car with a line as a worker would have left it. */
async function addCar(
  name: string,
  told: OilLine,
  more: { status?: CarStatus; snapshotSchema?: number; limit?: number } = {},
): Promise<string> {
  const { status = 'inUse', snapshotSchema = SNAPSHOT_SCHEMA, limit } = more;
  const carId = randomUUID();
  const profile = limit === undefined ? {} : { oilLimitLPer1000Km: limit };
  await at.me.car.add({ ...command(), carId, car: { name, unit: 'km', profile } });
  const {
    analysis,
    road,
    lines: _,
    said: __,
    oil: ___,
    ...columns
  } = plainEngine().answer(roadAsked(bookOf(carId)));
  const { garageId } = at;
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
    };
    expect(await replaceIfLater(tx, row, { analysis, road })).toBe(true);
    await replaceOilLine(tx, { garageId, carId, line: told });
  });
  return carId;
}

const compared = async () => (await at.me.oil.compare({ garageId: at.garageId })).rows;

test('oil.compare puts what got worse the most surely first, then what uses most, then what is not known', async () => {
  // twice as much, but known badly, comes after half as much again that is known well
  await addCar('Wide', line(rate(0.4), rate(2, 2.5)));
  await addCar('Sure', line(rate(0.3), rate(1.5, 1.2)), { limit: 0.5 });
  await addCar('Better', line(rate(0.9), rate(0.5, 1.2)));
  await addCar('Young, more', line(rate(0.8)));
  await addCar('Young, less', line(rate(0.2)));
  await addCar('Nothing known', NONE);
  await addCar('Sold', line(rate(0.3)), { status: 'sold' });
  const rows = await compared();
  const names = rows.map(({ name }) => name);
  expect(names.slice(0, 5)).toEqual(['Sure', 'Wide', 'Better', 'Young, more', 'Young, less']);
  // a car that nobody has worked out yet is there too
  expect(names.slice(5).toSorted()).toEqual(['Brindle 2', 'Nothing known']);
  expect(rows[0]).toEqual({
    carId: rows[0]?.carId,
    name: 'Sure',
    unit: 'km',
    status: 'inUse',
    asOf: '2026-06-15',
    limit: 0.5,
    line: line(rate(0.3), rate(1.5, 1.2)),
  });
  expect(rows.find(({ name }) => name === 'Brindle 2')).toMatchObject({ line: null, status: null });
  expect(rows.find(({ name }) => name === 'Nothing known')?.line).toEqual(NONE);
});

test('oil.compare gives every car once, page by page', async () => {
  for (let n = 0; n < 60; n += 1)
    await addCar(
      `Many ${n}`,
      n % 3 === 0 ? NONE : line(rate(0.1 + (n % 5) / 10), n % 2 ? rate(1.1) : null),
    );
  const seen: string[] = [];
  const sizes: number[] = [];
  let cursor: string | null = null;
  do {
    const page: Awaited<ReturnType<typeof at.me.oil.compare>> = await at.me.oil.compare({
      garageId: at.garageId,
      cursor,
    });
    seen.push(...page.rows.map(({ carId }) => carId));
    sizes.push(page.rows.length);
    cursor = page.next;
    expect(page.cars).toBe(68);
  } while (cursor !== null);
  expect(sizes).toEqual([50, 17]);
  expect(new Set(seen).size).toBe(67);
});

test('oil.compare shows a line of a form this version cannot read as not worked out', async () => {
  await addCar('Of another form', line(rate(5), rate(9)), { snapshotSchema: SNAPSHOT_SCHEMA + 1 });
  let row = (await compared()).find(({ name }) => name === 'Of another form');
  if (!row) {
    const { next } = await at.me.oil.compare({ garageId: at.garageId });
    const rest = await at.me.oil.compare({ garageId: at.garageId, cursor: next });
    row = rest.rows.find(({ name }) => name === 'Of another form');
  }
  expect(row).toMatchObject({ line: null, status: null });
});

test('garage.overview counts a car whose oil cannot wait among those that need a hand', async () => {
  const needing = async () => (await at.me.garage.overview({ garageId: at.garageId })).needsAHand;
  const before = await needing();
  await addCar('Dry', { ...NONE, stop: 'none' });
  await addCar('Over', { ...NONE, stop: 'over' });
  await addCar('Not looked at', { ...NONE, stop: 'look' });
  await addCar('Dry, away', { ...NONE, stop: 'none' }, { status: 'away' });
  expect(await needing()).toBe(before + 2);
});

test('oil.past works out the story of a car’s oil on read, and stores nothing', async () => {
  const reading = (on: string, text: string, fraction: number) =>
    at.record(
      at.draft('oilCheck', {
        on,
        odometer: { text, unit: 'km' },
        level: { how: 'fraction', fraction, step: 0.25 },
      } as never),
    );
  await reading('2026-03-01', '40000', 1);
  await reading('2026-03-20', '40900', 0.75);
  const { carId, garageId } = at;
  const versions = (await at.me.car.view({ garageId, carId })).wantedVersion;
  const past = await at.me.oil.past({ garageId, carId });
  expect(past).toMatchObject({ carId, name: 'Brindle 2', unit: 'km' });
  expect(past.story?.entries.map(({ what, on }) => `${what} ${on}`)).toEqual([
    'reading 2026-03-01',
    'reading 2026-03-20',
  ]);
  expect((await at.me.car.view({ garageId, carId })).wantedVersion).toBe(versions);
  expect(await refused(at.me.oil.past({ garageId, carId: randomUUID() }))).toMatchObject({
    code: 'notFound',
  });
});
