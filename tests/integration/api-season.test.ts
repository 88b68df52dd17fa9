import { randomUUID } from 'node:crypto';
import type { EventDraft } from '@quartermark/engine/log';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Home, home, refused } from '../support/api-house.ts';

let at: Home;
let other: string;
beforeAll(async () => {
  at = await home('api season');
  other = randomUUID();
  await at.me.car.add({ ...command(), carId: other, car: { name: 'Sorrel 1', unit: 'km' } });
});
afterAll(() => at.close());

const command = () => ({ garageId: at.garageId, commandId: randomUUID() });
const versionOf = async (carId: string) =>
  (await at.me.car.view({ garageId: at.garageId, carId })).wantedVersion;
const versions = async () => [await versionOf(at.carId), await versionOf(other)];

/** By how much the versions of the two cars rise while something is done. */
async function raisedBy(work: () => Promise<unknown>): Promise<number[]> {
  const before = await versions();
  await work();
  return (await versions()).map((version, index) => version - (before[index] ?? 0));
}

describe('an event', () => {
  const day: EventDraft = { name: 'Day', sort: 'circuit', start: '2026-07-04' };
  const put = async (cars: string[]) => {
    const eventId = randomUUID();
    await at.me.event.add({ ...command(), eventId, event: { ...day, cars } });
    return eventId;
  };

  test('event.add raises the cars it names, and the only one by the version it answers', async () => {
    const event = { ...day, cars: [at.carId], use: { sessions: 4 } };
    const add = { ...command(), eventId: randomUUID(), event };
    const before = await versionOf(at.carId);
    const written = await at.me.event.add(add);
    expect(written.version).toBe(before + 1);
    expect(await raisedBy(() => at.me.event.add(add))).toEqual([0, 0]);
    expect(await raisedBy(() => put([]))).toEqual([0, 0]);
    expect(await raisedBy(() => put([at.carId, other]))).toEqual([1, 1]);
  });

  test('event.change raises the cars that went before and those that go now', async () => {
    const eventId = await put([at.carId]);
    const change = (cars: string[], baseRevision: number) =>
      at.me.event.change({ ...command(), eventId, baseRevision, event: { ...day, cars } });
    expect(await raisedBy(() => change([other], 1))).toEqual([1, 1]);
    expect(await raisedBy(() => change([other], 2))).toEqual([0, 1]);
    expect(await raisedBy(() => change([], 3))).toEqual([0, 1]);
    // a conflict leaves nothing behind
    expect(await raisedBy(() => change([at.carId], 1).catch(() => null))).toEqual([0, 0]);
  });

  test('event.remove raises the cars that went', async () => {
    const eventId = await put([other]);
    const remove = { ...command(), eventId, baseRevision: 1 };
    expect(await raisedBy(() => at.me.event.remove(remove))).toEqual([0, 1]);
  });

  test('event.list gives back what was planned of the use, as typed', async () => {
    const use = { distance: { text: '1,100', unit: 'mi' as const } };
    const event = { name: 'Passes', sort: 'roadTrip' as const, start: '2026-08-01', use };
    const eventId = randomUUID();
    await at.me.event.add({ ...command(), eventId, event });
    const { events } = await at.me.event.list({ garageId: at.garageId });
    const found = events.find((one) => one.eventId === eventId);
    expect(found?.event).toEqual({ ...event, cars: [], attend: 0.9 });
  });
});

describe('a planned lay-up', () => {
  const winter = { start: '2026-11-01', end: '2027-03-25' };
  const put = async (carId: string, layUp: { start: string; end?: string } = winter) => {
    const layUpId = randomUUID();
    await at.me.plannedLayUp.add({ ...command(), carId, layUpId, layUp });
    return layUpId;
  };
  const standing = async () =>
    (await at.me.car.view({ garageId: at.garageId, carId: at.carId })).plannedLayUps;

  test('plannedLayUp.add, change and remove raise its car alone, each once', async () => {
    const layUpId = randomUUID();
    const add = { ...command(), carId: at.carId, layUpId, layUp: winter };
    expect(await raisedBy(() => at.me.plannedLayUp.add(add))).toEqual([1, 0]);
    expect(await raisedBy(() => at.me.plannedLayUp.add(add))).toEqual([0, 0]);
    const later = { start: '2026-11-15' };
    const change = { ...command(), layUpId, baseRevision: 1, layUp: later };
    expect(await raisedBy(() => at.me.plannedLayUp.change(change))).toEqual([1, 0]);
    expect(await standing()).toEqual([{ layUpId, carId: at.carId, layUp: later, revision: 2 }]);
    const remove = { ...command(), layUpId, baseRevision: 2 };
    expect(await raisedBy(() => at.me.plannedLayUp.remove(remove))).toEqual([1, 0]);
    expect(await standing()).toEqual([]);
  });

  test('plannedLayUp.change from a stale revision is a conflict that shows the newest', async () => {
    const layUpId = await put(other);
    const change = (start: string) =>
      at.me.plannedLayUp.change({ ...command(), layUpId, baseRevision: 1, layUp: { start } });
    await change('2026-11-10');
    const { code, conflict } = await refused(change('2026-12-01'));
    expect(code).toBe('conflict');
    expect(conflict).toMatchObject({ revision: 2, body: { start: '2026-11-10' } });
    await at.me.plannedLayUp.remove({ ...command(), layUpId, baseRevision: 2 });
    expect((await refused(change('2026-12-01'))).code).toBe('removed');
  });

  test('plannedLayUp.add refuses days that are swapped, naming the mend', async () => {
    const swapped = put(at.carId, { start: '2026-11-01', end: '2026-10-01' });
    expect(await refused(swapped)).toMatchObject({ code: 'badInput', field: 'layUp.end' });
  });

  test('event.list lists the planned lay-ups, and names their cars', async () => {
    const layUpId = await put(other, { start: '2027-11-01' });
    await put(other, { start: '2026-05-01', end: '2026-05-10' });
    const { plannedLayUps, cars } = await at.me.event.list({ garageId: at.garageId });
    expect(plannedLayUps.map((row) => row.layUpId)).toEqual([layUpId]);
    expect(cars[other]).toBe('Sorrel 1');
  });
});

describe('an order', () => {
  const watch = async () => {
    const itemId = randomUUID();
    const item = { name: 'Belts', limits: [{ measure: 'months' as const, value: 60 }] };
    await at.me.item.add({ ...command(), carId: at.carId, itemId, item });
    return itemId;
  };
  const ordersOf = async (itemId: string) =>
    (await at.me.car.view({ garageId: at.garageId, carId: at.carId })).orders.filter(
      (row) => row.itemId === itemId,
    );

  test('order.add, change and remove raise the car of the item, each once', async () => {
    const itemId = await watch();
    const order = { on: '2026-06-03', expected: '2026-06-12', what: 'Belt kit' };
    const add = { ...command(), itemId, orderId: randomUUID(), order };
    const { orderId } = add;
    expect(await raisedBy(() => at.me.order.add(add))).toEqual([1, 0]);
    expect(await raisedBy(() => at.me.order.add(add))).toEqual([0, 0]);
    expect((await refused(at.me.order.add({ ...add, order: { on: '2026-06-04' } }))).code).toBe(
      'commandReused',
    );
    const here = { ...order, arrived: '2026-06-11' };
    const change = { ...command(), orderId, baseRevision: 1, order: here };
    expect(await raisedBy(() => at.me.order.change(change))).toEqual([1, 0]);
    expect(await ordersOf(itemId)).toEqual([{ orderId, itemId, order: here, revision: 2 }]);
    const stale = at.me.order.change({ ...change, ...command() });
    expect((await refused(stale)).conflict?.body).toEqual(here);
    const remove = { ...command(), orderId, baseRevision: 2 };
    expect(await raisedBy(() => at.me.order.remove(remove))).toEqual([1, 0]);
    expect(await ordersOf(itemId)).toEqual([]);
  });

  test('order.add refuses days that have not come, and an arrival before the order', async () => {
    const itemId = await watch();
    const add = (order: { on: string; expected?: string; arrived?: string }) =>
      refused(at.me.order.add({ ...command(), itemId, orderId: randomUUID(), order }));
    expect(await add({ on: '2026-07-01' })).toMatchObject({
      code: 'afterTomorrow',
      field: 'order.on',
    });
    expect(await add({ on: '2026-06-10', arrived: '2026-07-01' })).toMatchObject({
      code: 'afterTomorrow',
      field: 'order.arrived',
    });
    expect((await add({ on: '2026-06-10', expected: '2026-06-01' })).field).toBe('order.expected');
    expect((await add({ on: '2026-06-10', arrived: '2026-06-01' })).field).toBe('order.arrived');
  });

  test('an order for an item of a tool is listed at the tool and raises no car', async () => {
    const gearId = randomUUID();
    const itemId = randomUUID();
    const item = { name: 'Calibration', limits: [{ measure: 'months' as const, value: 12 }] };
    const gear = { kind: 'person' as const, name: 'Odd Holm' };
    await at.me.gear.add({ ...command(), gearId, gear, items: [{ itemId, item }] });
    const orderId = randomUUID();
    const order = { on: '2026-06-03' };
    const add = { ...command(), itemId, orderId, order };
    expect(await raisedBy(() => at.me.order.add(add))).toEqual([0, 0]);
    const { row } = await at.me.gear.view({ garageId: at.garageId, gearId });
    expect(row.orders).toEqual([{ orderId, itemId, order, revision: 1 }]);
  });
});
