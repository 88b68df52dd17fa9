import { randomUUID } from 'node:crypto';
import type { EventDraft, ReadyFor, Requirements } from '@quartermark/engine/log';
import { usualRequirements } from '@quartermark/engine/readiness';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Home, home, refused } from '../support/api-house.ts';

let at: Home;
beforeAll(async () => {
  at = await home('api requirements');
});
afterAll(() => at.close());

const command = () => ({ garageId: at.garageId, commandId: randomUUID() });
const list = async () => (await at.me.requirements.list({ garageId: at.garageId })).rows;
const row = async (use: ReadyFor) => (await list()).find((one) => one.use === use);
const change = (use: ReadyFor, baseRevision: number, requirements: Requirements | null) =>
  at.me.requirements.change({ ...command(), use, baseRevision, requirements });
const version = async () =>
  (await at.me.car.view({ garageId: at.garageId, carId: at.carId })).wantedVersion;

/** The usual, but for some. */
const asked = (use: ReadyFor, weights: Partial<Requirements['weights']>): Requirements => {
  const usual = usualRequirements(use);
  return { ...usual, weights: { ...usual.weights, ...weights } };
};

test('requirements.list has the usual ones for the road and each sort, until the garage says otherwise', async () => {
  const rows = await list();
  expect(rows.map(({ use }) => use)).toEqual([
    'road',
    'meet',
    'roadTrip',
    'circuit',
    'dragStrip',
    'autocross',
  ]);
  for (const { use, requirements, usual, revision } of rows) {
    expect(requirements).toEqual(usualRequirements(use));
    expect([usual, revision]).toEqual([true, 0]);
  }
});

test('requirements.change holds for the garage, and null goes back to the usual ones', async () => {
  const own = asked('meet', { odometer: 'off' });
  expect((await change('meet', 0, own)).revision).toBe(1);
  expect(await row('meet')).toEqual({ use: 'meet', requirements: own, usual: false, revision: 1 });
  expect((await change('meet', 1, null)).revision).toBe(2);
  const usual = { requirements: usualRequirements('meet'), usual: true, revision: 2 };
  expect(await row('meet')).toMatchObject(usual);
  expect((await change('meet', 2, own)).revision).toBe(3);
});

test('requirements.change from a stale revision is a conflict that shows both', async () => {
  const first = asked('dragStrip', { noise: 'off' });
  await change('dragStrip', 0, first);
  const stale = await refused(change('dragStrip', 0, asked('dragStrip', { noise: 'advice' })));
  expect(stale).toMatchObject({ code: 'conflict', conflict: { revision: 1, by: 'Ada Fern' } });
  expect(stale.conflict?.body).toEqual(first);
  const none = await refused(change('autocross', 4, first));
  expect(none).toMatchObject({ code: 'badInput', field: 'baseRevision' });
  const loud = { ...usualRequirements('circuit'), noiseDb: 900 };
  expect((await refused(change('circuit', 0, loud))).field).toBe('requirements.noiseDb');
});

test('what the road asks concerns every car, what an event asks none', async () => {
  const before = await version();
  await change('circuit', 0, asked('circuit', { odometer: 'advice' }));
  expect(await version()).toBe(before);
  await change('road', 0, asked('road', { odometer: 'off' }));
  expect(await version()).toBe(before + 1);
});

test('an event asks its own, else the garage’s, else the usual ones', async () => {
  const add = async (more: Partial<EventDraft>) => {
    const eventId = randomUUID();
    const event = { name: 'x', start: '2026-06-20', cars: [at.carId], ...more } as EventDraft;
    await at.me.event.add({ ...command(), eventId, event });
    const page = await at.me.event.view({ garageId: at.garageId, eventId });
    const odometer = page.cars[0]?.readiness?.needs.find(({ id }) => id === 'odometer');
    return { weight: odometer?.weight, requirements: page.requirements };
  };
  expect((await add({ sort: 'autocross' })).weight).toBe('blocking');
  // as the garage said in the test before
  expect((await add({ sort: 'circuit' })).weight).toBe('advice');
  const own = asked('circuit', { odometer: 'off' });
  const one = await add({ sort: 'circuit', requirements: own });
  expect(one.weight).toBeUndefined();
  expect(one.requirements).toEqual({
    own,
    garage: asked('circuit', { odometer: 'advice' }),
    usual: usualRequirements('circuit'),
  });
});
