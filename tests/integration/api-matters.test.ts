import { randomUUID } from 'node:crypto';
import { connect } from '@quartermark/db';
import type { EntryDraft } from '@quartermark/engine/log';
import { sql } from 'drizzle-orm';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Home, home, refused } from '../support/api-house.ts';

let at: Home;
let lift: string;
beforeAll(async () => {
  at = await home('api matters');
  lift = randomUUID();
  await at.me.gear.add({
    ...command(),
    gearId: lift,
    gear: { kind: 'equipment', name: 'Lift', sort: 'lift' },
  });
});
afterAll(() => at.close());

const command = () => ({ garageId: at.garageId, commandId: randomUUID() });
type Bare<T> = T extends unknown ? Omit<T, 'id' | 'zone' | 'on'> & { on?: string } : never;
const entry = (body: Bare<EntryDraft>): EntryDraft =>
  ({ id: randomUUID(), zone: 'Europe/London', on: '2026-06-14', ...body }) as EntryDraft;

test('finding.open lists incidents, then findings by how bad they are, with whose they are', async () => {
  const { garageId } = at;
  const boot = entry({ kind: 'finding', car: at.carId, what: 'Boot', severity: 'watch' });
  await at.record(boot);
  await at.record(entry({ kind: 'finding', gear: lift, what: 'Cable', severity: 'doNotDrive' }));
  const off = entry({ kind: 'incident', car: at.carId, what: 'off' });
  await at.record(off);
  const open = async () =>
    (await at.me.finding.open({ garageId })).rows.map(
      ({ kind, carName, gearName, matter }) => `${kind} ${carName ?? gearName} ${matter.what}`,
    );
  expect(await open()).toEqual([
    'incident Brindle 2 off',
    'finding Lift Cable',
    'finding Brindle 2 Boot',
  ]);
  await at.record(entry({ kind: 'answer', car: at.carId, notice: off.id, answer: 'Looked over.' }));
  expect(await open()).toEqual(['finding Lift Cable', 'finding Brindle 2 Boot']);
});

test('finding.open opens again what was resolved by an entry that was removed, as the car’s page does', async () => {
  const own = await home('api matters resolved');
  try {
    const { garageId, carId } = own;
    const open = async () =>
      (await own.me.finding.open({ garageId })).rows.map(({ matter }) => matter.what);
    const work = own.draft('repair', { text: 'Boot renewed' });
    await own.record(work);
    await own.record(
      own.draft('finding', { what: 'Boot', severity: 'watch', resolvedBy: work.id } as never),
    );
    expect(await open()).toEqual([]);
    const remove = { garageId, commandId: randomUUID(), entryId: work.id, baseRevision: 1 };
    await own.me.entry.remove(remove);
    expect(await open()).toEqual(['Boot']);
    expect((await own.me.car.view({ garageId, carId })).carId).toBe(carId);
  } finally {
    await own.close();
  }
});

test('finding.open leaves out what is about a piece that was taken off the list, and keeps what no schema can read', async () => {
  const own = await home('api matters gone');
  try {
    const { garageId } = own;
    const gearId = randomUUID();
    const commandOf = () => ({ garageId, commandId: randomUUID() });
    await own.me.gear.add({
      ...commandOf(),
      gearId,
      gear: { kind: 'equipment', name: 'Jack', sort: 'jack' },
    });
    const seal = own.draft('finding', { what: 'Seal', severity: 'watch' });
    await own.record({ ...seal, car: undefined, gear: gearId });
    const boot = own.draft('finding', { what: 'Boot', severity: 'doNotDrive' });
    await own.record(boot);
    await own.me.gear.remove({ ...commandOf(), gearId, baseRevision: 1 });
    const owner = connect(own.database.ownerUrl, { max: 1 });
    await owner.orm.execute(sql`alter table entry no force row level security`);
    await owner.orm.execute(
      sql`update entry set body = body || '{"of a later version": 1}' where id = ${boot.id}`,
    );
    await owner.close();
    const { rows } = await own.me.finding.open({ garageId });
    expect(rows.map(({ matter }) => matter.what)).toEqual(['Boot']);
  } finally {
    await own.close();
  }
});

test('the log of a garage is one, and is narrowed by kinds and by piece, with the names it needs', async () => {
  const { garageId } = at;
  const all = await at.me.entry.history({ garageId });
  expect(all.entries.map((each) => each.entry.kind).toSorted()).toEqual([
    'answer',
    'finding',
    'finding',
    'incident',
  ]);
  expect(all.names).toEqual({ [at.carId]: 'Brindle 2', [lift]: 'Lift' });
  const findings = await at.me.entry.history({ garageId, kinds: ['finding', 'note'] });
  expect(findings.entries).toHaveLength(2);
  const own = await at.me.entry.history({ garageId, gearId: lift });
  expect(own.entries).toHaveLength(1);
  // a word is looked for in what was typed, never in an id
  const inId = await at.me.entry.history({ garageId, text: lift.slice(0, 8) });
  expect(inId.entries).toEqual([]);
  const both = await at.me.entry.history({ garageId, gearId: lift, carId: at.carId });
  expect(both.entries).toEqual([]);
});

test('car.lastValues starts the wheels from the last torque, a finding from the last place', async () => {
  const own = await home('api last fast');
  try {
    const torque = { text: '110', unit: 'nm' } as const;
    const torqued = own.draft('wheels', { on: '2026-06-01', change: 'torqued', torque });
    await own.record(torqued);
    await own.record(own.draft('wheels', { on: '2026-06-02', change: 'off' }));
    const cracked = { what: 'Crack', severity: 'watch', where: 'rearLeft' } as const;
    const placed = own.draft('finding', { on: '2026-06-01', ...cracked });
    await own.record(placed);
    await own.record(own.draft('finding', { on: '2026-06-02', what: 'Hum', severity: 'watch' }));
    const { garageId, carId } = own;
    const last = await own.me.car.lastValues({ garageId, carId });
    expect(last.wheels).toEqual(torqued);
    expect(last.finding).toEqual(placed);
  } finally {
    await own.close();
  }
});

test('the same session moved onto another of its day is asked about; amended in place it is not', async () => {
  const own = await home('api twin');
  try {
    const session = (on: string) => own.draft('session', { use: 'circuit', sessions: 3, on });
    await own.record(session('2026-06-13'));
    const other = session('2026-06-12');
    await own.record(other);
    const amend = (entry: EntryDraft, more = {}) =>
      own.me.entry.amend({
        garageId: own.garageId,
        commandId: randomUUID(),
        entryId: other.id,
        baseRevision: 1,
        entry,
        ...more,
      });
    const moved = { ...other, on: '2026-06-13' };
    expect((await refused(amend(moved))).code).toBe('looksTheSame');
    await amend(moved, { confirmed: ['looksTheSame'] });
    await amend({ ...moved, note: 'Dry.' } as EntryDraft, { baseRevision: 2 });
  } finally {
    await own.close();
  }
});

test('the same session written down twice is asked about once, and kept when it happened twice', async () => {
  const session = () =>
    entry({
      kind: 'session',
      use: 'circuit',
      sessions: 3,
      car: at.carId,
      on: '2026-06-13',
      time: '14:00',
    });
  await at.record(session());
  const again = session();
  const refusal = await refused(at.record(again));
  expect(refusal.code).toBe('looksTheSame');
  expect(refusal.message).toContain(
    'This looks the same as what is recorded of that day at 14:00: Circuit, 3 sessions.',
  );
  await at.record(again, { confirmed: ['looksTheSame'] });
  // from a queue nobody is asked
  await at.record(session(), { queued: true });
});

test('people.names knows the garage’s people and who was written down as a driver', async () => {
  const { garageId } = at;
  await at.me.gear.add({
    ...command(),
    gearId: randomUUID(),
    gear: { kind: 'person', name: 'Wren' },
  });
  await at.record(
    entry({ kind: 'drive', use: 'road', car: at.carId, driver: 'Moss', on: '2026-06-12' }),
  );
  expect(await at.me.people.names({ garageId })).toEqual(['Moss', 'Wren']);
  // one name, however it is typed; the list's spelling stands
  await at.record(
    entry({ kind: 'drive', use: 'road', car: at.carId, driver: 'wren', on: '2026-06-14' }),
  );
  expect(await at.me.people.names({ garageId })).toEqual(['Wren', 'Moss']);
  expect((await at.me.car.view({ garageId, carId: at.carId })).people).toEqual(['Wren', 'Moss']);
});

test('pocket.sheet holds what a phone needs, the car last recorded of first', async () => {
  const other = randomUUID();
  await at.me.car.add({ ...command(), carId: other, car: { name: 'Sorrel 1', unit: 'km' } });
  const order = async () => {
    const [garage] = (await at.me.pocket.sheet()).garages;
    return garage?.cars.map(({ view }) => view.car.name);
  };
  expect(await order()).toEqual(['Brindle 2', 'Sorrel 1']);
  await at.record(
    entry({ kind: 'oilCheck', car: other, level: { how: 'fraction', fraction: 0.5 } }),
  );
  const sheet = await at.me.pocket.sheet();
  expect(await order()).toEqual(['Sorrel 1', 'Brindle 2']);
  expect(sheet.at).toBe('2026-06-15T10:00:00.000Z');
  expect(sheet.garages[0]?.gear.map(({ gear }) => gear.name).toSorted()).toEqual(['Lift', 'Wren']);
  expect(sheet.garages[0]?.cars[0]?.last.oilCheck).toMatchObject({ kind: 'oilCheck' });
});

test('car.view shows the components that are on the car now', async () => {
  const pads = randomUUID();
  await at.me.gear.add({
    ...command(),
    gearId: pads,
    gear: { kind: 'component', name: 'Pads', sort: 'pads', condition: 'new' },
  });
  const names = async () =>
    (await at.me.car.view({ garageId: at.garageId, carId: at.carId })).gear.map(
      ({ gear }) => gear.name,
    );
  const fit = (change: 'on' | 'off', on: string) =>
    at.record(
      entry({ kind: 'fit', component: pads, car: at.carId, change, on, positions: ['front'] }),
    );
  expect(await names()).toEqual([]);
  await fit('on', '2026-06-01');
  expect(await names()).toEqual(['Pads']);
  await fit('off', '2026-06-02');
  expect(await names()).toEqual([]);
});
