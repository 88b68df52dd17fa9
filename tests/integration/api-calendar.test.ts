import { randomUUID } from 'node:crypto';
import type { EventDraft } from '@quartermark/engine/log';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Home, home, refused } from '../support/api-house.ts';

let at: Home;
beforeAll(async () => {
  at = await home('api calendar');
});
afterAll(() => at.close());

const command = () => ({ garageId: at.garageId, commandId: randomUUID() });
const add = async (event: EventDraft) => {
  const eventId = randomUUID();
  await at.me.event.add({ ...command(), eventId, event });
  return eventId;
};
const list = async () => (await at.me.event.list({ garageId: at.garageId })).events;

test('event.list gives what comes by date and what ended in the last 30 days', async () => {
  await add({ name: 'Late', sort: 'meet', start: '2026-08-01' });
  await add({ name: 'Soon', sort: 'circuit', start: '2026-06-20', cars: [at.carId] });
  await add({ name: 'Long past', sort: 'meet', start: '2026-05-15' });
  await add({ name: 'Just past', sort: 'roadTrip', start: '2026-05-10', end: '2026-05-16' });
  expect((await list()).map(({ event }) => event.name)).toEqual(['Just past', 'Soon', 'Late']);
});

test('event.list names the cars that its events speak of, and no others', async () => {
  const { cars } = await at.me.event.list({ garageId: at.garageId });
  expect(Object.keys(cars)).toEqual([at.carId]);
  expect(cars[at.carId]).toEqual(expect.any(String));
});

test('an event is changed from its newest revision, and removed for good', async () => {
  const event: EventDraft = { name: 'Evening', sort: 'dragStrip', start: '2026-07-01' };
  const eventId = await add(event);
  const change = (name: string, baseRevision: number) =>
    at.me.event.change({ ...command(), eventId, baseRevision, event: { ...event, name } });
  expect((await change('Friday evening', 1)).revision).toBe(2);
  expect((await refused(change('Saturday', 1))).conflict?.body).toMatchObject({
    name: 'Friday evening',
  });
  await at.me.event.remove({ ...command(), eventId, baseRevision: 2 });
  expect((await list()).map((each) => each.eventId)).not.toContain(eventId);
  expect((await refused(change('Back', 3))).code).toBe('removed');
});

test('an event that ends before it begins, or takes a strange car, is refused with the mend', async () => {
  const swapped = add({ name: 'x', sort: 'meet', start: '2026-07-02', end: '2026-07-01' });
  expect((await refused(swapped)).message).toContain('the last day is before the first');
  const strange = add({ name: 'x', sort: 'meet', start: '2026-07-02', cars: [randomUUID()] });
  expect((await refused(strange)).field).toBe('event.cars.0');
});

test('a spec sheet is written as a whole, and a stale one is a conflict', async () => {
  const where = { garageId: at.garageId, carId: at.carId };
  expect(await at.me.spec.view(where)).toEqual({ sheet: { lines: [] }, revision: 0 });
  const sheet = (value: string) => ({
    lines: [{ group: 'torques' as const, what: 'Wheel bolts', value }],
  });
  const write = (value: string, baseRevision: number) =>
    at.me.spec.change({ ...command(), carId: at.carId, baseRevision, sheet: sheet(value) });
  expect((await write('110 N·m', 0)).revision).toBe(1);
  expect((await refused(write('120 N·m', 0))).conflict?.body).toEqual(sheet('110 N·m'));
  expect((await write('120 N·m', 1)).revision).toBe(2);
  expect(await at.me.spec.view(where)).toEqual({ sheet: sheet('120 N·m'), revision: 2 });
  expect((await refused(write('130 N·m', 7))).code).toBe('conflict');
});

test('what is asked of the calendar and the sheets twice is done once and answered the same', async () => {
  const event: EventDraft = { name: 'Twice', sort: 'meet', start: '2026-09-01' };
  const add = { ...command(), eventId: randomUUID(), event };
  const [first, again] = await Promise.all([at.me.event.add(add), at.me.event.add(add)]);
  expect(again).toEqual(first);
  const named = (await list()).filter((each) => each.event.name === 'Twice');
  expect(named.map(({ revision }) => revision)).toEqual([1]);
  const other = { ...add, event: { ...event, name: 'Thrice' } };
  expect((await refused(at.me.event.add(other))).code).toBe('commandReused');

  const carId = randomUUID();
  await at.me.car.add({ ...command(), carId, car: { name: 'Sorrel 1', unit: 'km' } });
  const write = { ...command(), carId, baseRevision: 0, sheet: { lines: [] } };
  expect(await at.me.spec.change(write)).toEqual(await at.me.spec.change(write));
  expect((await at.me.spec.view({ garageId: at.garageId, carId })).revision).toBe(1);
});

test('of two who write the first sheet at once, one wins and the other is shown it', async () => {
  const carId = randomUUID();
  await at.me.car.add({ ...command(), carId, car: { name: 'Teasel 4', unit: 'km' } });
  const sheet = (value: string) => ({
    lines: [{ group: 'fluids' as const, what: 'Oil', value }],
  });
  const tries = ['5 L', '6 L'].map((value) =>
    at.me.spec.change({ ...command(), carId, baseRevision: 0, sheet: sheet(value) }),
  );
  const settled = await Promise.allSettled(tries);
  const lost = settled.findIndex(({ status }) => status === 'rejected');
  expect(settled.filter(({ status }) => status === 'rejected')).toHaveLength(1);
  const { code, conflict } = await refused(tries[lost] as Promise<unknown>);
  expect(code).toBe('conflict');
  expect(conflict?.body).toEqual(sheet(lost === 0 ? '6 L' : '5 L'));
  expect(conflict?.by).toBe('Ada Fern');
});

test('a sheet that is changed from a revision there never was is refused with the mend', async () => {
  const carId = randomUUID();
  await at.me.car.add({ ...command(), carId, car: { name: 'Marram 3', unit: 'km' } });
  const early = { ...command(), carId, baseRevision: 3, sheet: { lines: [] } };
  expect((await refused(at.me.spec.change(early))).message).toContain('no spec sheet yet');
});
