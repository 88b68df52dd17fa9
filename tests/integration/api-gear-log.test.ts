import { randomUUID } from 'node:crypto';
import { connect, type Db, schema, withGarage } from '@quartermark/db';
import type { EntryDraft, GearDraft } from '@quartermark/engine/log';
import { and, eq, sql } from 'drizzle-orm';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Home, home, refused } from '../support/api-house.ts';

let at: Home;
let secondCar: string;

beforeAll(async () => {
  at = await home('api gear log');
  secondCar = randomUUID();
  await at.me.car.add({ ...command(), carId: secondCar, car: { name: 'Sorrel 1', unit: 'km' } });
});
afterAll(() => at.close());

const command = () => ({ garageId: at.garageId, commandId: randomUUID() });
const SET: GearDraft = { kind: 'component', name: 'Slicks', sort: 'tyreSet', condition: 'new' };
const YEARLY = { name: 'Look over', limits: [{ measure: 'months' as const, value: 12 }] };

async function add(gear: GearDraft = SET, itemId?: string) {
  const gearId = randomUUID();
  const items = itemId ? [{ itemId, item: YEARLY }] : [];
  await at.me.gear.add({ ...command(), gearId, gear, items });
  return gearId;
}

type Fit = Extract<EntryDraft, { kind: 'fit' }>;
const fit = (component: string, on: string, change: Fit['change'], car = at.carId): Fit => ({
  id: randomUUID(),
  zone: 'Europe/London',
  kind: 'fit',
  component,
  car,
  on,
  change,
});
const view = (gearId: string) => at.me.gear.view({ garageId: at.garageId, gearId });
const fittedTo = async (gearId: string) => (await view(gearId)).row.fittedTo?.carId ?? null;
const take = (entryId: string) => at.me.entry.remove({ ...command(), entryId, baseRevision: 1 });
const removeGear = (gearId: string) => at.me.gear.remove({ ...command(), gearId, baseRevision: 1 });

test('taking a fit entry out folds the windows anew', async () => {
  const set = await add();
  const [on, off] = [fit(set, '2026-05-01', 'on'), fit(set, '2026-05-20', 'off')];
  await at.record(on);
  await at.record(off);
  expect(await fittedTo(set)).toBeNull();
  await take(off.id);
  expect(await fittedTo(set)).toBe(at.carId);
  expect((await refused(at.record(fit(set, '2026-06-01', 'on', secondCar)))).code).toBe(
    'alreadyFitted',
  );
  await take(on.id);
  expect(await fittedTo(set)).toBeNull();
  await at.record(fit(set, '2026-06-01', 'on', secondCar));
  expect(await fittedTo(set)).toBe(secondCar);
});

test('an amendment that would put a set on two cars at once is refused', async () => {
  const set = await add();
  await at.record(fit(set, '2026-05-01', 'on'));
  await at.record(fit(set, '2026-05-10', 'off'));
  const later = fit(set, '2026-05-12', 'on', secondCar);
  await at.record(later);
  const amend = (on: string) =>
    at.me.entry.amend({
      ...command(),
      entryId: later.id,
      baseRevision: 1,
      entry: { ...later, on },
    });
  const refusal = await refused(amend('2026-05-05'));
  expect(refusal.code).toBe('alreadyFitted');
  expect(refusal.message).toContain('on Brindle 2 since 1 May 2026');
  await amend('2026-05-11');
  expect((await view(set)).row.fittedTo?.since).toBe('2026-05-11');
});

test('a service on the car does the items of the parts that are on it, and raises the car', async () => {
  const itemId = randomUUID();
  const set = await add(SET, itemId);
  const service = () =>
    at.draft('service', { on: '2026-06-10', items: [itemId] }) as EntryDraft & { kind: 'service' };
  expect((await refused(at.record(service()))).message).toContain('is no service item of this car');
  await at.record(fit(set, '2026-06-01', 'on'));
  const { version } = await at.record(service());
  const car = await at.me.car.view({ garageId: at.garageId, carId: at.carId });
  expect(version).toBe(car.wantedVersion);
  const [item] = (await view(set)).row.analysis?.items ?? [];
  expect(item).toMatchObject({ id: itemId, service: '2026-06-10' });
});

test('a set that was removed goes on no car again, while its past can still be put right', async () => {
  const set = await add();
  const on = fit(set, '2026-05-01', 'on');
  await at.record(on);
  await at.record(fit(set, '2026-05-10', 'off'));
  await removeGear(set);
  const refusal = await refused(at.record(fit(set, '2026-06-01', 'on')));
  expect(refusal).toMatchObject({ code: 'removed', field: 'entry.component' });
  const amended = at.me.entry.amend({
    ...command(),
    entryId: on.id,
    baseRevision: 1,
    entry: { ...on, on: '2026-05-02' },
  });
  expect((await amended).revision).toBe(2);
});

test('of a removal and a fit at the same time, one is refused', async () => {
  for (let round = 0; round < 4; round += 1) {
    const set = await add();
    const tries = [removeGear(set), at.record(fit(set, '2026-06-01', 'on'))];
    const settled = await Promise.allSettled(tries);
    const lost = settled.findIndex(({ status }) => status === 'rejected');
    expect(settled.filter(({ status }) => status === 'fulfilled')).toHaveLength(1);
    const { code } = await refused(tries[lost] as Promise<unknown>);
    expect(code).toBe(lost === 0 ? 'badInput' : 'removed');
  }
});

test('what goes on tomorrow is not removed today', async () => {
  const set = await add();
  await at.record(fit(set, '2026-06-16', 'on'));
  expect((await refused(removeGear(set))).message).toContain('on Brindle 2 since 16 June 2026');
});

test('a fit names one piece alone', async () => {
  const set = await add();
  const other = await add({ kind: 'equipment', name: 'Lift', sort: 'lift' });
  const both = { ...fit(set, '2026-06-01', 'on'), gear: other };
  expect(await refused(at.record(both))).toMatchObject({ code: 'badInput', field: 'entry.gear' });
});

test('a change and a removal sent twice are done once and answered the same', async () => {
  const set = await add();
  const change = { ...command(), gearId: set, baseRevision: 1, gear: { ...SET, name: 'Rain' } };
  const [first, again] = await Promise.all([at.me.gear.change(change), at.me.gear.change(change)]);
  expect(again).toEqual(first);
  expect((await view(set)).row).toMatchObject({ revision: 2, gear: { name: 'Rain' } });
  const remove = { ...command(), gearId: set, baseRevision: 2 };
  expect(await at.me.gear.remove(remove)).toEqual(await at.me.gear.remove(remove));
  expect((await refused(view(set))).code).toBe('notFound');
});

test('a book that cannot be read leaves its parts without figures and the others with theirs', async () => {
  const carId = randomUUID();
  await at.me.car.add({ ...command(), carId, car: { name: 'Teasel 4', unit: 'km' } });
  const [itemId, plainItem] = [randomUUID(), randomUUID()];
  const set = await add(SET, itemId);
  const plain = await add({ kind: 'equipment', name: 'Jack', sort: 'jack' }, plainItem);
  await at.record(fit(set, '2026-06-01', 'on', carId));
  const odometer = at.draft('odometer', { car: carId, odometer: { text: '100', unit: 'km' } });
  await at.record(odometer);
  await spoil(odometer.id);
  const { rows } = await at.me.gear.list({ garageId: at.garageId });
  const row = (gearId: string) => rows.find((one) => one.gearId === gearId);
  expect(row(set)).toMatchObject({ analysis: null, life: null, fittedTo: { name: 'Teasel 4' } });
  expect(row(plain)?.analysis?.items.map(({ id }) => id)).toEqual([plainItem]);
  const said = at.logged.filter(({ fields }) => fields.gearId === set);
  expect(said[0]?.fields.problem).toContain(odometer.id);
});

test('an entry of its own that cannot be read leaves a piece without figures and can be fitted anew', async () => {
  const set = await add();
  const on = fit(set, '2026-06-01', 'on');
  await at.record(on);
  await spoil(on.id);
  expect((await view(set)).row).toMatchObject({ analysis: null, life: null, fittedTo: null });
  expect((await at.record(fit(set, '2026-06-02', 'on', secondCar))).revision).toBe(1);
});

/** Leaves an entry as a later schema would not take it. */
async function spoil(entryId: string): Promise<void> {
  const db = connect(at.database.appUrl, { max: 1 });
  const { entry } = schema;
  try {
    const userId = await ownerId(db);
    await withGarage(db, { kind: 'user', userId }, at.garageId, (tx) =>
      tx
        .update(entry)
        .set({ body: sql`${entry.body} - 'zone'` })
        .where(and(eq(entry.garageId, at.garageId), eq(entry.id, entryId))),
    );
  } finally {
    await db.close();
  }
}

async function ownerId(db: Db): Promise<string> {
  const [owner] = await db.orm.select({ id: schema.user.id }).from(schema.user);
  if (!owner) throw new Error('the house has no owner');
  return owner.id;
}
