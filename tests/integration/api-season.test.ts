import { randomUUID } from 'node:crypto';
import type { EventDraft } from '@quartermark/engine/log';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Home, home } from '../support/api-house.ts';

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
