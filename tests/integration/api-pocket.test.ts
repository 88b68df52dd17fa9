import { gzipSync } from 'node:zlib';
import type { PocketSheet } from '@quartermark/api/client';
import type { CarReadiness } from '@quartermark/engine/readiness';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Caller, cookieOf, type House, house, refused } from '../support/api-house.ts';
import { eventually } from '../support/eventually.ts';
import { workerOn } from '../support/jobs-worker.ts';

const NOW = new Date('2026-06-15T10:00:00Z');
/**
 * What a phone fetches at the edge of a signal, gzipped and shared out over the demo's cars: 3.7 KB. On top, of each car that goes to one of the next
 * events: 1.5 KB.
 */
const BYTES_A_CAR_MAX = 4 * 1024;
const BYTES_A_START_MAX = 2 * 1024;

let at: House;
let demo: Caller;
let sheet: PocketSheet;

beforeAll(async () => {
  at = await house('api pocket', () => NOW);
  const opened = await at.post('/setup/demo', { token: at.token });
  demo = at.caller(cookieOf(opened));
  const worker = workerOn(at.database, null, { clock: { now: () => NOW } });
  try {
    await worker.ready;
    await eventually('every car to be computed', async () => {
      sheet = await demo.pocket.sheet();
      return sheet.garages[0]?.cars.every(({ view }) => view.analysis !== null) ?? false;
    });
  } finally {
    await worker.stop();
  }
});
afterAll(() => at?.close());

const garage = () => {
  const [first] = sheet.garages;
  if (!first) throw new Error('the sheet has no garage');
  return first;
};

test('the sheet says of each car, each piece and each form what the pages say', async () => {
  const { garage: of, cars, gear, events } = garage();
  expect(cars.length).toBeGreaterThan(5);
  for (const { view, last } of cars) {
    const where = { garageId: of.id, carId: view.carId };
    const page = await demo.car.view(where);
    const items = page.analysis?.items.map((item) => ({ ...item, evidence: [] }));
    const road = page.road && openAlone(page.road);
    expect(view).toEqual({ ...page, road, analysis: { ...page.analysis, items } });
    expect(last).toEqual(await demo.car.lastValues(where));
  }
  expect(gear).toEqual((await demo.gear.list({ garageId: of.id })).rows);
  const listed = (await demo.event.list({ garageId: of.id })).events;
  expect(events).toEqual(listed.filter(({ event }) => (event.end ?? event.start) >= of.today));
  expect(events.length).toBeGreaterThan(0);
  expect(cars.some(({ view }) => view.gear.length > 0)).toBe(true);
});

test('the sheet says of the next events what their pages say, as far as it is of use without signal', async () => {
  const { garage: of, events, days } = garage();
  const soon = events.filter(({ event }) => event.start <= '2026-06-29').slice(0, 4);
  expect(days.map(({ event }) => event)).toEqual(soon);
  expect(days.flatMap(({ cars }) => cars).length).toBeGreaterThan(3);
  for (const day of days) {
    const page = await demo.event.view({ garageId: of.id, eventId: day.event.eventId });
    const cars = page.cars.map((car) => ({
      ...car,
      readiness: car.readiness && openAlone(car.readiness),
      recorded: [],
      items: [],
    }));
    expect(day).toEqual({ ...page, cars, proposal: null, former: null });
  }
});

const openAlone = (readiness: CarReadiness): CarReadiness => ({
  ...readiness,
  needs: readiness.needs
    .filter(({ status }) => status !== 'met')
    .map((need) => ({ ...need, evidence: [] })),
});

test('the car with the newest entry comes first', async () => {
  const { garage: of, cars } = garage();
  const newest: string[] = [];
  for (const { view } of cars) {
    const where = { garageId: of.id, carId: view.carId };
    const [first] = (await demo.entry.history(where)).entries;
    newest.push(first ? `${first.entry.on} ${String(first.recorded).padStart(9, '0')}` : '');
  }
  expect(newest).toEqual([...newest].sort().reverse());
  expect(new Set(newest).size).toBe(cars.length);
});

test('the sheet is small enough for the edge of a signal', () => {
  const bytes = (value: unknown) => gzipSync(JSON.stringify(value)).length;
  const { days, ...rest } = garage();
  expect(bytes(rest) / rest.cars.length).toBeLessThan(BYTES_A_CAR_MAX);
  const starts = days.flatMap(({ cars }) => cars).length;
  expect(bytes(days) / starts).toBeLessThan(BYTES_A_START_MAX);
});

test('who tried the demo gets the sheet of the demo garage alone, who is signed out none', async () => {
  expect(sheet.garages.map(({ garage: of }) => of.demo)).toEqual([true]);
  expect(sheet.at).toBe(NOW.toISOString());
  expect((await refused(at.caller().pocket.sheet())).code).toBe('signedOut');
});
