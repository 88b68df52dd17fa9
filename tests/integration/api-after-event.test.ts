import { randomUUID } from 'node:crypto';
import type { EntryDraft, EventDraft } from '@quartermark/engine/log';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Home, home, refused } from '../support/api-house.ts';

let at: Home;
beforeAll(async () => {
  at = await home('api after event');
});
afterAll(() => at.close());

const command = () => ({ garageId: at.garageId, commandId: randomUUID() });

async function add(event: EventDraft): Promise<string> {
  const eventId = randomUUID();
  await at.me.event.add({ ...command(), eventId, event });
  return eventId;
}

const record = (more: object) =>
  at.me.entry.record({
    ...command(),
    entry: { id: randomUUID(), car: at.carId, zone: 'Europe/Oslo', ...more } as EntryDraft,
  });

const open = async () =>
  (await at.me.event.unrecorded({ garageId: at.garageId })).events.map(({ eventId, cars }) => ({
    eventId,
    cars: cars.map(({ carId }) => carId),
  }));

test('event.unrecorded asks of a car that was named by an event, until a use or an answer is on record', async () => {
  const cars = [at.carId];
  const first = await add({ name: 'First', sort: 'circuit', start: '2026-05-30', cars });
  const second = await add({ name: 'Second', sort: 'circuit', start: '2026-06-06', cars });
  await add({ name: 'Nobody', sort: 'circuit', start: '2026-06-07' });
  await add({ name: 'Ahead', sort: 'circuit', start: '2026-12-01', cars });
  expect(await open()).toEqual([
    { eventId: second, cars },
    { eventId: first, cars },
  ]);
  await record({ kind: 'session', use: 'circuit', sessions: 4, on: '2026-06-06' });
  expect(await open()).toEqual([{ eventId: first, cars }]);
  await record({ kind: 'answer', notice: first, answer: 'did not go', on: '2026-05-30' });
  expect(await open()).toEqual([]);
});

test('an answer to an event is taken for a car it names alone, and an id that leads nowhere is refused', async () => {
  const nobody = await add({ name: 'Nobody', sort: 'meet', start: '2026-06-06' });
  const stayed = { kind: 'answer', answer: 'did not go', on: '2026-06-06' };
  expect(await refused(record({ ...stayed, notice: nobody }))).toMatchObject({
    field: 'entry.car',
    message: expect.stringContaining('does not name this car'),
  });
  expect(await refused(record({ ...stayed, notice: randomUUID() }))).toMatchObject({
    field: 'entry.notice',
  });
});

test('event.propose takes what the car did at the last three events of the sort, else the garage, else the usual', async () => {
  const carId = randomUUID();
  await at.me.car.add({ ...command(), carId, car: { name: 'Other', unit: 'km' } });
  const propose = (sort: 'autocross' | 'meet', of: string | null = at.carId) =>
    at.me.event.propose({ garageId: at.garageId, sort, days: 2, carId: of });
  expect(await propose('autocross')).toEqual({
    sort: 'autocross',
    proposal: { use: { sessions: 2 }, from: 'practice', events: [] },
  });
  expect(await propose('meet')).toEqual({ sort: 'meet', proposal: null });
  const days = ['2026-02-07', '2026-03-07', '2026-04-04', '2026-05-02'];
  const ids: string[] = [];
  for (const [index, start] of days.entries()) {
    ids.push(await add({ name: start, sort: 'autocross', start, cars: [at.carId] }));
    await record({ kind: 'session', use: 'autocross', sessions: index + 1, on: start });
  }
  const last = ids.slice(1);
  expect((await propose('autocross')).proposal).toEqual({
    use: { sessions: 6 },
    from: 'car',
    events: last,
  });
  expect((await propose('autocross', carId)).proposal).toMatchObject({
    from: 'garage',
    events: last,
  });
  expect((await propose('autocross', null)).proposal).toMatchObject({ from: 'garage' });
});

test('event.list names everybody of the garage, and no tool or set', async () => {
  const gear = (body: object) =>
    at.me.gear.add({ ...command(), gearId: randomUUID(), gear: body as never });
  await gear({ kind: 'person', name: 'Bo' });
  await gear({ kind: 'person', name: 'Ann' });
  await gear({ kind: 'equipment', name: 'Wrench', sort: 'torqueWrench' });
  const { people } = await at.me.event.list({ garageId: at.garageId });
  expect(people.map(({ name }) => name)).toEqual(['Ann', 'Bo']);
});
