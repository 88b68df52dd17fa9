import { randomUUID } from 'node:crypto';
import { connect, type Db } from '@quartermark/db';
import { sql } from 'drizzle-orm';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Home, home, refused } from '../support/api-house.ts';

let at: Home;
let owner: Db;
beforeAll(async () => {
  at = await home('api forecast');
  owner = connect(at.database.ownerUrl, { max: 1 });
});
afterAll(async () => {
  await owner.close();
  await at.close();
});

const command = () => ({ garageId: at.garageId, commandId: randomUUID() });
const car = () => ({ garageId: at.garageId, carId: at.carId });
const SESSIONS = { sort: 'circuit' as const, start: '2026-06-20', use: { sessions: 40 } };

async function watch(name: string, limits: { measure: 'sessions'; value: number }[], more = {}) {
  const itemId = randomUUID();
  const item = { name, limits, baseline: { on: '2026-05-01', historyComplete: true }, ...more };
  await at.me.item.add({ ...command(), carId: at.carId, itemId, item });
  return itemId;
}

/** Rows and the newest stamps of everything a garage writes. */
async function everythingStored(): Promise<unknown> {
  const tables = await owner.orm.execute<{ name: string }>(
    sql`select table_name as name from information_schema.tables
        where table_schema = 'public' and table_type = 'BASE TABLE' order by 1`,
  );
  const counts: Record<string, unknown> = {};
  for (const { name } of tables) {
    const [row] = await owner.orm.execute<{ hash: string }>(
      sql`select count(*) || ':' || coalesce(md5(string_agg(t::text, '|' order by t::text)), '') as hash
          from ${sql.identifier(name)} t`,
    );
    counts[name] = row?.hash;
  }
  return counts;
}

test('forecast.whatIf answers beside what stands, and writes nothing anywhere', async () => {
  const fluid = await watch('Brake fluid', [{ measure: 'sessions', value: 18 }], { leadDays: 2 });
  const stored = await everythingStored();
  expect(Object.keys(stored as object).length).toBeGreaterThan(20);
  const { answer, garage, name } = await at.me.forecast.whatIf({ ...car(), added: [SESSIONS] });
  expect(garage.today).toBe('2026-06-15');
  expect(name).toBe('Brindle 2');
  expect(answer?.lines).toMatchObject([
    { id: fluid, changed: true, after: { dates: { likely: '2026-06-20' } } },
  ]);
  expect(answer?.lines[0]?.before.dates.likely).not.toBe('2026-06-20');
  expect(answer?.outlooks).toMatchObject([
    {
      id: 'added-1',
      runsOut: [{ id: fluid, latestWork: '2026-06-19', parts: { day: '2026-06-17' } }],
    },
  ]);
  expect(await at.me.forecast.atEvents(car())).toMatchObject({ outlooks: [] });
  expect(await everythingStored()).toEqual(stored);
});

test('forecast.whatIf with no lines says what stands, for an address that holds none', async () => {
  const { answer } = await at.me.forecast.whatIf(car());
  expect(answer?.outlooks).toEqual([]);
  expect(answer?.lines.every(({ changed }) => !changed)).toBe(true);
});

test('forecast.whatIf refuses days that have passed or lie beyond three years, and says which', async () => {
  const ask = (line: object) =>
    refused(at.me.forecast.whatIf({ ...car(), added: [SESSIONS, { ...SESSIONS, ...line }] }));
  expect(await ask({ start: '2026-06-14' })).toMatchObject({
    code: 'badInput',
    field: 'added.1.start',
    message: 'start: 2026-06-14 has passed; choose today (2026-06-15) or a later day',
  });
  const last = '2029-06-15';
  const fits = { ...SESSIONS, start: last };
  expect((await at.me.forecast.whatIf({ ...car(), added: [fits] })).answer).not.toBeNull();
  expect(await ask({ start: '2029-06-16' })).toMatchObject({ field: 'added.1.start' });
  expect(await ask({ end: '2029-06-16' })).toMatchObject({ field: 'added.1.end' });
  expect(await ask({ end: '2026-06-19' })).toMatchObject({ field: 'added.1.end' });
  expect(await ask({ use: {} })).toMatchObject({ field: 'added.1.use' });
  const many = Array.from({ length: 21 }, () => SESSIONS);
  expect(await refused(at.me.forecast.whatIf({ ...car(), added: many }))).toMatchObject({
    field: 'added',
    message:
      'added: at most 20 lines; take some away (was [{"sort":"circuit","start":"2026-06-20",...)',
  });
  const twenty = await at.me.forecast.whatIf({ ...car(), added: many.slice(1) });
  expect(twenty.answer?.outlooks).toHaveLength(20);
});

test('forecast.atEvents tells of the next three events that name the car', async () => {
  const add = async (start: string, more: object = {}) => {
    const eventId = randomUUID();
    const event = { name: 'Day', sort: 'circuit' as const, start, cars: [at.carId], ...more };
    await at.me.event.add({ ...command(), eventId, event });
    return eventId;
  };
  await add('2026-06-10');
  await add('2026-06-16', { cars: [] });
  const meet = await add('2026-06-17', { sort: 'meet' });
  const hard = await add('2026-06-20', { use: { sessions: 40 } });
  const third = await add('2026-07-20');
  await add('2026-08-20');
  const { outlooks } = await at.me.forecast.atEvents(car());
  expect(outlooks?.map(({ id, withUse }) => [id, withUse])).toEqual([
    [meet, false],
    [hard, true],
    [third, false],
  ]);
  const verdictAt = async (eventId: string) =>
    (await at.me.event.view({ garageId: at.garageId, eventId })).cars[0]?.readiness?.verdict;
  // as on the events' own pages; 35 days away too much may change
  expect(outlooks?.map(({ verdict }) => verdict)).toEqual([
    await verdictAt(meet),
    await verdictAt(hard),
    null,
  ]);
  expect(outlooks?.[1]?.verdict?.word).toBe('notInTime');
  expect(outlooks?.[0]?.runsOut).toEqual([]);
  expect(outlooks?.[1]?.runsOut).toMatchObject([{ name: 'Brake fluid', how: 'likely' }]);
});

test('a car whose log cannot be read has no answer, and the other cars keep theirs', async () => {
  const carId = randomUUID();
  await at.me.car.add({ ...command(), carId, car: { name: 'Unreadable', unit: 'km' } });
  const itemId = randomUUID();
  const item = { name: 'Oil', limits: [{ measure: 'months' as const, value: 12 }] };
  await at.me.item.add({ ...command(), carId, itemId, item });
  const spoil = (to: string) =>
    owner.orm.execute(
      sql`update item set body = jsonb_set(body, '{limits}', ${to}::jsonb) where id = ${itemId}`,
    );
  await spoil('[]');
  const { garageId } = at;
  expect((await at.me.forecast.whatIf({ garageId, carId, added: [SESSIONS] })).answer).toBeNull();
  expect((await at.me.forecast.atEvents({ garageId, carId })).outlooks).toBeNull();
  expect(at.logged.at(-1)?.fields).toMatchObject({ carId });
  expect((await at.me.forecast.whatIf(car())).answer).not.toBeNull();
});
