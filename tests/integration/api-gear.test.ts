import { randomUUID } from 'node:crypto';
import type { EntryDraft, GearDraft } from '@quartermark/engine/log';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Home, home, refused } from '../support/api-house.ts';

let at: Home;
let secondCar: string;

beforeAll(async () => {
  at = await home('api gear');
  secondCar = randomUUID();
  await at.me.car.add({ ...command(), carId: secondCar, car: { name: 'Sorrel 1', unit: 'km' } });
});
afterAll(() => at.close());

const command = () => ({ garageId: at.garageId, commandId: randomUUID() });
const SET: GearDraft = {
  kind: 'component',
  name: 'Slicks',
  sort: 'tyreSet',
  condition: 'new',
};
const WRENCH: GearDraft = { kind: 'equipment', name: 'Torque wrench', sort: 'torqueWrench' };

async function add(gear: GearDraft, items: Parameters<typeof at.me.gear.add>[0]['items'] = []) {
  const gearId = randomUUID();
  await at.me.gear.add({ ...command(), gearId, gear, items });
  return gearId;
}

type Bare<T> = T extends unknown ? Omit<T, 'id' | 'zone'> : never;
const entry = (body: Bare<EntryDraft>): EntryDraft =>
  ({ id: randomUUID(), zone: 'Europe/London', ...body }) as EntryDraft;
const fit = (component: string, car: string, on: string, change: 'on' | 'off' | 'moved') =>
  entry({
    kind: 'fit',
    component,
    car,
    on,
    change,
    condition: change === 'on' ? 'new' : undefined,
  });
const session = (car: string, on: string, sessions: number) =>
  entry({ kind: 'session', use: 'circuit', car, on, sessions, time: '12:00' });
const view = (gearId: string) => at.me.gear.view({ garageId: at.garageId, gearId });

test('gear.view counts the sessions of a set that went from one car to the other', async () => {
  const set = await add(SET);
  await at.record({ ...fit(set, at.carId, '2026-04-01', 'on'), time: '08:00' } as EntryDraft);
  await at.record(session(at.carId, '2026-04-02', 4));
  await at.record({ ...fit(set, at.carId, '2026-04-03', 'off'), time: '18:00' } as EntryDraft);
  await at.record(session(at.carId, '2026-04-20', 3));
  await at.record({
    ...fit(set, secondCar, '2026-05-01', 'on'),
    time: '08:00',
    condition: undefined,
  } as EntryDraft);
  await at.record(session(secondCar, '2026-05-02', 5));
  await at.record(
    entry({
      kind: 'measure',
      component: set,
      on: '2026-05-03',
      tread: [{ corner: 'frontLeft', depth: { text: '4,1', unit: 'mm' } }],
    }),
  );
  const { row, cars } = await view(set);
  expect(row.life?.sessions).toEqual({ amount: 9, known: true });
  expect(row.fittedTo).toMatchObject({ carId: secondCar, name: 'Sorrel 1', since: '2026-05-01' });
  expect(row.life?.measured.map(({ sessionsThen }) => sessionsThen)).toEqual([9]);
  expect(cars).toEqual({ [at.carId]: 'Brindle 2', [secondCar]: 'Sorrel 1' });
});

test('a set that is on one car cannot go on another, unless it is recorded as moved', async () => {
  const set = await add(SET);
  await at.record(fit(set, at.carId, '2026-05-10', 'on'));
  const again = fit(set, secondCar, '2026-05-20', 'on');
  const refusal = await refused(at.record(again));
  expect(refusal).toMatchObject({ code: 'alreadyFitted', field: 'entry.change' });
  expect(refusal.message).toBe(
    'By the record it is on Brindle 2 since 10 May 2026. Take it off there first, or record it as moved.',
  );
  await at.record({ ...again, change: 'moved' } as EntryDraft);
  expect((await view(set)).row.fittedTo?.carId).toBe(secondCar);
});

test('of two phones that fit one set at the same time, one is told that it is on already', async () => {
  const set = await add(SET);
  const tries = [at.carId, secondCar].map((car) => at.record(fit(set, car, '2026-06-01', 'on')));
  const settled = await Promise.allSettled(tries);
  expect(settled.map(({ status }) => status).toSorted()).toEqual(['fulfilled', 'rejected']);
  const lost = settled.findIndex(({ status }) => status === 'rejected');
  const refusal = await refused(tries[lost] as Promise<unknown>);
  const winner = lost === 0 ? 'Sorrel 1' : 'Brindle 2';
  expect(refusal).toMatchObject({
    code: 'alreadyFitted',
    message: `By the record it is on ${winner} since 1 June 2026. Take it off there first, or record it as moved.`,
  });
});

test('amending a fit is held against the others, not against itself', async () => {
  const set = await add(SET);
  const on = fit(set, at.carId, '2026-05-10', 'on');
  await at.record(on);
  const amend = (body: EntryDraft, entryId: string, baseRevision: number) =>
    at.me.entry.amend({ ...command(), entryId, baseRevision, entry: body });
  await amend({ ...on, on: '2026-05-11' }, on.id, 1);
  expect((await view(set)).row.fittedTo?.since).toBe('2026-05-11');
});

test('a tool falls due like a car does, and a service of it is an entry without a car', async () => {
  const itemId = randomUUID();
  const wrench = await add(WRENCH, [
    {
      itemId,
      item: {
        name: 'Calibration',
        limits: [{ measure: 'months', value: 12 }],
        baseline: { on: '2025-06-01' },
      },
    },
  ]);
  const state = async () => (await view(wrench)).row.analysis?.items[0]?.state;
  expect(await state()).toBe('overdue');
  await at.record(entry({ kind: 'service', gear: wrench, items: [itemId], on: '2026-06-14' }));
  expect(await state()).not.toBe('overdue');
  const other = await refused(
    at.record(entry({ kind: 'service', gear: wrench, items: [randomUUID()], on: '2026-06-14' })),
  );
  expect(other.message).toContain('is no service item of this piece');
});

test('an entry must be about a car or a piece, and what only a car does needs one', async () => {
  const wrench = await add(WRENCH);
  const without = await refused(
    at.record(entry({ kind: 'finding', what: 'Frayed', severity: 'watch', on: '2026-06-14' })),
  );
  expect(without.message).toContain('car: is missing; say which car it was');
  const driven = await refused(
    at.record(
      entry({
        kind: 'odometer',
        gear: wrench,
        on: '2026-06-14',
        odometer: { text: '1', unit: 'km' },
      }),
    ),
  );
  expect(driven.message).toContain('car: is missing');
  const strange = await refused(
    at.record(
      entry({
        kind: 'finding',
        gear: randomUUID(),
        what: 'Frayed',
        severity: 'watch',
        on: '2026-06-14',
      }),
    ),
  );
  expect(strange.code).toBe('notFound');
  const tool = await refused(at.record(fit(wrench, at.carId, '2026-06-14', 'on')));
  expect(tool.message).toContain('only a component is fitted to a car');
});

test('a piece that was changed meanwhile is a conflict that carries its newest form', async () => {
  const set = await add(SET);
  const change = (name: string, baseRevision: number) =>
    at.me.gear.change({ ...command(), gearId: set, baseRevision, gear: { ...SET, name } });
  await change('Slicks, hard', 1);
  const refusal = await refused(change('Slicks, soft', 1));
  expect(refusal.code).toBe('conflict');
  expect(refusal.conflict?.body).toMatchObject({ name: 'Slicks, hard' });
  const kind = await refused(
    at.me.gear.change({ ...command(), gearId: set, baseRevision: 2, gear: WRENCH }),
  );
  expect(kind.field).toBe('gear.kind');
});

test('a piece is not taken off the list while it is on a car', async () => {
  const set = await add(SET);
  await at.record(fit(set, at.carId, '2026-06-02', 'on'));
  const remove = (baseRevision: number) =>
    at.me.gear.remove({ ...command(), gearId: set, baseRevision });
  expect((await refused(remove(1))).message).toBe(
    'It is on Brindle 2 since 2 June 2026; record first that it was taken off.',
  );
  await at.record(fit(set, at.carId, '2026-06-03', 'off'));
  await remove(1);
  const { rows } = await at.me.gear.list({ garageId: at.garageId });
  expect(rows.map(({ gearId }) => gearId)).not.toContain(set);
});

test('gear.add sent twice adds it once, and one command id is not used for two', async () => {
  const once = { ...command(), gearId: randomUUID(), gear: SET };
  const [first, second] = await Promise.all([at.me.gear.add(once), at.me.gear.add(once)]);
  expect(first).toEqual(second);
  const other = { ...once, gearId: randomUUID() };
  expect((await refused(at.me.gear.add(other))).code).toBe('commandReused');
});

test('item.addMany adds all or none, and an item has one owner', async () => {
  const item = (name: string) => ({
    itemId: randomUUID(),
    item: { name, limits: [{ measure: 'months' as const, value: 12 }] },
  });
  const twice = item('Coolant');
  const broken = { ...command(), carId: at.carId, items: [item('Belts'), twice, twice] };
  expect((await refused(at.me.item.addMany(broken))).code).toBe('idInUse');
  const names = async () =>
    (await at.me.car.view({ garageId: at.garageId, carId: at.carId })).items.map(
      (each) => each.item.name,
    );
  expect(await names()).toEqual([]);
  const whole = { ...command(), carId: at.carId, items: [item('Belts'), twice] };
  expect(await at.me.item.addMany(whole)).toEqual(await at.me.item.addMany(whole));
  expect(await names()).toEqual(['Belts', 'Coolant']);
  const both = { ...command(), carId: at.carId, gearId: await add(WRENCH), ...item('Whose') };
  expect((await refused(at.me.item.add(both))).message).toContain('an item has one owner');
});
