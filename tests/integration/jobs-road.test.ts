import { randomUUID } from 'node:crypto';
import type { EntryDraft, GearDraft } from '@quartermark/engine/log';
import { usualRequirements } from '@quartermark/engine/readiness';
import type { RunningWorker } from '@quartermark/jobs/worker';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Home, home } from '../support/api-house.ts';
import { eventually } from '../support/eventually.ts';
import { workerOn } from '../support/jobs-worker.ts';

let at: Home;
let worker: RunningWorker;
beforeAll(async () => {
  at = await home('jobs road');
  const now = () => new Date('2026-06-15T10:00:00Z');
  worker = workerOn(at.database, null, { clock: { now } });
  await worker.ready;
});
afterAll(async () => {
  await worker.stop();
  await at.close();
});

const command = () => ({ garageId: at.garageId, commandId: randomUUID() });
const mm = (text: string) => ({ text, unit: 'mm' as const });

async function addCar(name: string): Promise<string> {
  const carId = randomUUID();
  await at.me.car.add({ ...command(), carId, car: { name, unit: 'km' } });
  return carId;
}

async function addPads(more: Partial<GearDraft> = {}): Promise<string> {
  const gearId = randomUUID();
  const pads = { kind: 'component', name: 'Front pads', sort: 'pads', condition: 'new' } as const;
  const gear = { ...pads, leastDepth: mm('3'), newDepth: mm('12'), ...more } as GearDraft;
  await at.me.gear.add({ ...command(), gearId, gear });
  return gearId;
}

const record = (kind: EntryDraft['kind'], more: Partial<EntryDraft> & Record<string, unknown>) =>
  at.record(at.draft(kind as 'note', more as never));
const fitted = (component: string, car: string, change: 'on' | 'moved') =>
  record('fit', { component, car, change, positions: ['front'], condition: 'new' });
const wanted = async (carId: string) =>
  (await at.me.car.view({ garageId: at.garageId, carId })).wantedVersion;

/** The car once it was worked out from all that is recorded. */
const counted = (carId: string) =>
  eventually('the car to be worked out', async () => {
    const view = await at.me.car.view({ garageId: at.garageId, carId });
    return view.version === view.wantedVersion && view.analysis !== null && view;
  });
const laneOf = async (carId: string) => {
  await counted(carId);
  const { rows } = await at.me.garage.overview({ garageId: at.garageId });
  return rows.find((row) => row.carId === carId)?.lane?.road;
};

describe('readiness for the road', () => {
  test('is stored with the snapshot, and its word with the lane', async () => {
    const car = await addCar('Plover 1');
    const { road } = await counted(car);
    expect(road).toMatchObject({ car, use: 'road', event: null, verdict: { word: 'notOnRecord' } });
    const blocking = road?.needs.filter(
      ({ weight, status }) => weight === 'blocking' && status !== 'met',
    );
    expect(blocking?.length).toBeGreaterThan(0);
    const lane = await laneOf(car);
    expect(lane).toMatchObject({ word: 'notOnRecord', by: null, needs: blocking?.length });
    expect(lane?.why).toContain(blocking?.[0]?.title);

    await record('finding', { car, what: 'Brake hose chafed', severity: 'doNotDrive' });
    expect(await laneOf(car)).toMatchObject({ word: 'notInTime', needs: (lane?.needs ?? 0) + 1 });
  });

  test('is not said of a car that is not in use', async () => {
    const car = await addCar('Plover 2');
    await record('handover', { car, what: 'lent', who: 'A friend' });
    expect((await counted(car)).road).toBeNull();
    expect(await laneOf(car)).toBeNull();
  });

  test('follows the parts that are on the car, as they change', async () => {
    const car = await addCar('Plover 3');
    const pads = await addPads();
    const padNeed = async () =>
      (await counted(car)).road?.needs.find(({ id }) => id === `pads:${pads}`);
    expect(await padNeed()).toBeUndefined();
    await fitted(pads, car, 'on');
    expect((await padNeed())?.status).toBe('unknown');
    // about the set alone: its car is not named
    await record('measure', {
      car: undefined,
      component: pads,
      pads: [{ corner: 'frontLeft', inner: mm('2.5') }],
    });
    expect(await padNeed()).toMatchObject({ margin: { value: -0.5, unit: 'mm' } });
    const gear = { kind: 'component', name: 'Old pads', sort: 'pads', condition: 'new' } as const;
    await at.me.gear.change({ ...command(), gearId: pads, baseRevision: 1, gear });
    expect((await padNeed())?.title).toBe('Old pads');
  });

  test('follows what the garage asks of the road', async () => {
    const car = await addCar('Plover 4');
    const odometer = async () =>
      (await counted(car)).road?.needs.find(({ id }) => id === 'odometer')?.weight;
    expect(await odometer()).toBe('blocking');
    const usual = usualRequirements('road');
    const requirements = { ...usual, weights: { ...usual.weights, odometer: 'advice' as const } };
    const change = { ...command(), use: 'road' as const, baseRevision: 0, requirements };
    await at.me.requirements.change(change);
    expect(await odometer()).toBe('advice');
  });

  test('asks about an event that is over until something of it is on record', async () => {
    const car = await addCar('Plover 5');
    const eventId = randomUUID();
    const event = { name: 'May day', sort: 'circuit', start: '2026-05-16', cars: [car] } as const;
    await at.me.event.add({ ...command(), eventId, event: { ...event, cars: [car] } });
    const last = async () =>
      (await counted(car)).road?.needs.find(({ kind }) => kind === 'lastEvent');
    expect((await last())?.status).toBe('unknown');
    await record('answer', { car, notice: eventId, answer: 'did not go' });
    expect((await last())?.status ?? 'met').toBe('met');
  });
});

describe('what raises a car’s version', () => {
  test('a part that moves raises the car it leaves and the one it goes on, and no other', async () => {
    const [from, to, other] = [await addCar('Reeve 1'), await addCar('Reeve 2'), await addCar('x')];
    const pads = await addPads();
    await fitted(pads, from, 'on');
    const before = await Promise.all([from, to, other].map(wanted));
    const moved = await fitted(pads, to, 'moved');
    const after = await Promise.all([from, to, other].map(wanted));
    expect(after.map((version, index) => version - (before[index] ?? 0))).toEqual([1, 1, 0]);
    expect(moved.version).toBe(after[1]);
    // what happens on the car where it was is part of its life
    await record('session', { car: from, on: '2026-06-14', use: 'circuit' });
    expect(await wanted(to)).toBe((after[1] ?? 0) + 1);
    expect(await wanted(other)).toBe(after[2]);
    // taken back, it is where it was
    await at.me.entry.remove({ ...command(), entryId: moved.id, baseRevision: 1 });
    expect(await wanted(from)).toBe((after[0] ?? 0) + 2);
    expect(await wanted(to)).toBe((after[1] ?? 0) + 2);
  });

  test('an item of a part, and an order for it, raise the car it is on', async () => {
    const car = await addCar('Ruddy 1');
    const [pads, loose] = [await addPads(), await addPads({ name: 'Spare pads' })];
    await fitted(pads, car, 'on');
    const before = await wanted(car);
    const item = { name: 'Pins', limits: [{ measure: 'months' as const, value: 12 }] };
    const itemId = randomUUID();
    await at.me.item.add({ ...command(), gearId: pads, itemId, item });
    expect(await wanted(car)).toBe(before + 1);
    const named = { ...item, name: 'Pins and springs' };
    await at.me.item.change({ ...command(), itemId, baseRevision: 1, item: named });
    expect(await wanted(car)).toBe(before + 2);
    const orderId = randomUUID();
    await at.me.order.add({ ...command(), itemId, orderId, order: { on: '2026-06-10' } });
    expect(await wanted(car)).toBe(before + 3);
    await at.me.item.remove({ ...command(), itemId, baseRevision: 2 });
    expect(await wanted(car)).toBe(before + 4);
    await at.me.item.add({ ...command(), gearId: loose, itemId: randomUUID(), item });
    expect(await wanted(car)).toBe(before + 4);
  });
});
