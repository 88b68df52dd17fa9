import { randomUUID } from 'node:crypto';
import postgres from 'postgres';
import { afterAll, beforeEach, expect, test } from 'vitest';
import { type Home, home, refused } from '../support/api-house.ts';

let at: Home;
let sql: postgres.Sql;
const homes: Home[] = [];
const lines: postgres.Sql[] = [];

beforeEach(async () => {
  at = await home('api live');
  sql = postgres(at.database.ownerUrl, { max: 1 });
  homes.push(at);
  lines.push(sql);
});
afterAll(async () => {
  for (const line of lines) await line.end();
  for (const one of homes) await one.close();
});

const tell = (garageId: string, carId: string, version: number) =>
  sql`select pg_notify('qm_snapshot', ${JSON.stringify({ g: garageId, c: carId, v: version })})`;

/** Looks on, and has waited until the line to the database stands. */
async function lookOn() {
  const events = (await at.me.live.changes({ garageId: at.garageId }))[Symbol.asyncIterator]();
  expect((await events.next()).value).toEqual({ kind: 'resync' });
  // the second one says that the database has confirmed the subscription
  expect((await events.next()).value).toEqual({ kind: 'resync' });
  return events;
}

test('live.changes tells of this garage’s cars and of no other’s', async () => {
  const events = await lookOn();
  await tell(randomUUID(), at.carId, 7);
  await tell(at.garageId, at.carId, 8);
  expect((await events.next()).value).toEqual({ kind: 'car', carId: at.carId, version: 8 });
  await events.return?.();
});

test('live.changes says resync when the line to the database was down', async () => {
  const events = await lookOn();
  const [cut] = await sql`
    select count(pg_terminate_backend(pid))::int as lines from pg_stat_activity
    where datname = current_database() and application_name like 'quartermark listen%'`;
  expect(cut?.lines).toBe(1);
  expect((await events.next()).value).toEqual({ kind: 'resync' });
  await tell(at.garageId, at.carId, 9);
  expect((await events.next()).value).toEqual({ kind: 'car', carId: at.carId, version: 9 });
  await events.return?.();
});

test('live.changes asks for the session again on each delivery', async () => {
  const events = await lookOn();
  await sql`delete from session`;
  await tell(at.garageId, at.carId, 3);
  expect((await refused(events.next())).code).toBe('signedOut');
});

test('live.changes asks for the membership again on each delivery', async () => {
  const events = await lookOn();
  await sql`delete from member`;
  await tell(at.garageId, at.carId, 3);
  expect((await refused(events.next())).code).toBe('notFound');
});

test('live.changes ends with a code to come back on when the process stops', async () => {
  const events = await lookOn();
  const [next] = await Promise.allSettled([events.next(), at.api.hub.close()]);
  expect(next).toMatchObject({ status: 'rejected', reason: { code: 'SERVICE_UNAVAILABLE' } });
});

test('live.changes folds what nobody reads into one resync', async () => {
  const events = await lookOn();
  for (let version = 1; version <= 250; version += 1) await tell(at.garageId, at.carId, version);
  expect((await events.next()).value).toEqual({ kind: 'resync' });
  await events.return?.();
});
