import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Home, home } from '../support/api-house.ts';

let at: Home;
beforeAll(async () => {
  at = await home('api pocket days');
});
afterAll(() => at.close());

/** A garage with a car and an event of one day. @returns the car */
async function garageWithEvent(start: string): Promise<string> {
  const [carId, eventId] = [randomUUID(), randomUUID()];
  const { id: garageId } = await at.me.garage.create({
    garageId: randomUUID(),
    commandId: randomUUID(),
    name: `Garage ${start}`,
    zone: 'Europe/Berlin',
    distanceUnit: 'km',
    volumeUnit: 'l',
  });
  const command = () => ({ garageId, commandId: randomUUID() });
  await at.me.car.add({ ...command(), carId, car: { name: 'Sorrel 1', unit: 'km' } });
  const event = { name: 'Meet', sort: 'meet' as const, start, cars: [carId], attend: 1 };
  await at.me.event.add({ ...command(), eventId, event });
  return carId;
}

test('pages of events go along for the garage that is looked at, and for two more whose events come first', async () => {
  for (const start of ['2026-06-18', '2026-06-17', '2026-06-16']) await garageWithEvent(start);
  const last = await garageWithEvent('2026-06-19');
  const starts = async (carId: string | null) =>
    (await at.me.pocket.sheet({ carId })).garages
      .flatMap(({ days }) => days.map(({ event }) => event.event.start))
      .toSorted();
  expect(await starts(last)).toEqual(['2026-06-16', '2026-06-17', '2026-06-19']);
  // the first garage with a car has no event
  for (const unknown of [null, 'no car at all'])
    expect(await starts(unknown)).toEqual(['2026-06-16', '2026-06-17', '2026-06-18']);
});

test('a page that was kept before it said which car it looks at still gets its sheet', async () => {
  expect((await at.me.pocket.sheet()).garages.length).toBeGreaterThan(0);
});

test('of more garages than anybody looks after twenty go along, the one that is looked at first among them', async () => {
  const cars: string[] = [];
  for (let day = 1; day <= 22; day += 1)
    cars.push(await garageWithEvent(`2026-09-${String(day).padStart(2, '0')}`));
  const carsOf = async (carId: string | null) =>
    (await at.me.pocket.sheet({ carId })).garages.map(({ cars: own }) => own[0]?.view.carId);
  const last = cars.at(-1) ?? null;
  const led = await carsOf(last);
  expect(led).toHaveLength(20);
  expect(led[0]).toBe(last);
  expect(await carsOf(null)).not.toContain(last);
});
