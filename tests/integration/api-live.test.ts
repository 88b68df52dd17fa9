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

test('live.changes tells of the garage’s own changes once each, of no refused one and of no other’s', async () => {
  const events = await lookOn();
  const next = async () => (await events.next()).value;
  const command = () => ({ garageId: at.garageId, commandId: randomUUID() });
  const [gearId, eventId, itemId, other] = Array.from({ length: 4 }, () => randomUUID()) as [
    string,
    string,
    string,
    string,
  ];
  const person = { kind: 'person' as const, name: 'Odd Holm' };
  const meet = { name: 'Meet', sort: 'meet' as const, start: '2026-07-01' };
  const about = { id: randomUUID(), kind: 'note' as const, on: at.today, zone: 'Europe/London' };
  const item = { name: 'Licence', limits: [{ measure: 'months' as const, value: 12 }] };
  const changes: Record<string, () => Promise<unknown>> = {
    'gear.add': () => at.me.gear.add({ ...command(), gearId, gear: person }),
    'gear.change': () => at.me.gear.change({ ...command(), gearId, baseRevision: 1, gear: person }),
    'item.add': () => at.me.item.add({ ...command(), gearId, itemId, item }),
    'item.addMany': () =>
      at.me.item.addMany({ ...command(), gearId, items: [{ itemId: other, item }] }),
    'entry.record': () => at.record({ ...about, gear: gearId, note: 'Hm.' }),
    'entry.remove': () => at.me.entry.remove({ ...command(), entryId: about.id, baseRevision: 1 }),
    'event.add': () => at.me.event.add({ ...command(), eventId, event: meet }),
    'event.change': () =>
      at.me.event.change({ ...command(), eventId, baseRevision: 1, event: meet }),
    'event.remove': () => at.me.event.remove({ ...command(), eventId, baseRevision: 2 }),
    'spec.change': () =>
      at.me.spec.change({
        ...command(),
        carId: at.carId,
        baseRevision: 0,
        sheet: { lines: [] },
      }),
    'gear.remove': () => at.me.gear.remove({ ...command(), gearId, baseRevision: 2 }),
  };
  for (const [verb, change] of Object.entries(changes)) {
    await change();
    await expect(refused(change()), `${verb} a second time`).resolves.toBeDefined();
    await sql`select pg_notify('qm_snapshot', ${JSON.stringify({ g: randomUUID() })})`;
    await tell(at.garageId, at.carId, 1);
    // the refused one and the other garage's would stand between these two
    expect([verb, await next()]).toEqual([verb, { kind: 'garage' }]);
    expect([verb, await next()]).toEqual([verb, { kind: 'car', carId: at.carId, version: 1 }]);
  }
  await events.return?.();
});

test('live.changes takes half a car’s notice for none', async () => {
  const events = await lookOn();
  await sql`select pg_notify('qm_snapshot', ${JSON.stringify({ g: at.garageId, c: at.carId })})`;
  await tell(at.garageId, at.carId, 4);
  expect((await events.next()).value).toEqual({ kind: 'car', carId: at.carId, version: 4 });
  expect(at.logged.map(({ message }) => message)).toContain('a live notice could not be read');
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
