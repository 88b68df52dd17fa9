import { randomUUID } from 'node:crypto';
import type { EventDraft } from '@quartermark/engine/log';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Caller, type Home, home, refused } from '../support/api-house.ts';
import { joinMember } from '../support/api-stranger.ts';

const CARS = 40;
const DRIVERS = 60;
/** A page that takes longer is no page any more; on an idle machine of two cores it takes some 3 s. */
const ANSWER_MS_MAX = 30_000;

let at: Home;
let mate: Caller;
let eventId: string;
const cars = Array.from({ length: CARS }, () => randomUUID());
const people = Array.from({ length: DRIVERS }, () => randomUUID());

beforeAll(async () => {
  at = await home('api ticks');
  mate = await joinMember(at, 'mate@club.example');
  for (const [index, carId] of cars.entries()) {
    await at.me.car.add({ ...command(), carId, car: { name: `Car ${index + 1}`, unit: 'km' } });
    const odometer = { text: String(40_000 + index), unit: 'km' as const };
    await at.record(at.draft('odometer', { car: carId, on: '2026-04-01', odometer }));
  }
  for (const [index, gearId] of people.entries()) {
    const gear = { kind: 'person', name: `Driver ${String(index + 1).padStart(2, '0')}` } as const;
    await at.me.gear.add({ ...command(), gearId, gear });
  }
  eventId = await addEvent({ cars, use: { sessions: 4 }, crew: crewOf() });
}, 120_000);
afterAll(() => at.close());

const command = () => ({ garageId: at.garageId, commandId: randomUUID() });

/** Sixty people in forty cars: twenty of them carry two. */
const crewOf = () =>
  cars.map((car, index) => ({
    car,
    people: people.filter((_, each) => each % CARS === index),
  }));

async function addEvent(more: Partial<EventDraft>): Promise<string> {
  const id = randomUUID();
  const event = { name: 'Club day', sort: 'circuit', start: '2026-06-20', ...more } as EventDraft;
  await at.me.event.add({ ...command(), eventId: id, event });
  return id;
}

const page = (id = eventId) => at.me.event.view({ garageId: at.garageId, eventId: id });

const tick = (
  line: string,
  more: Partial<{ tickId: string; done: boolean; madeAt: string }> = {},
) => ({
  ...command(),
  tickId: randomUUID(),
  eventId,
  carId: line.split('/')[0] ?? '',
  line,
  done: true,
  madeAt: '2026-06-15T09:00:00.000Z',
  ...more,
});

describe('forty cars and sixty drivers', () => {
  test('event.view says of each what is asked of it and of those who drive it', async () => {
    const began = performance.now();
    const { cars: shown, work, people: all } = await page();
    expect(performance.now() - began).toBeLessThan(ANSWER_MS_MAX);
    expect(shown.map(({ carId }) => carId)).toEqual(cars);
    expect(all).toHaveLength(DRIVERS);
    for (const { readiness, carId } of shown) {
      expect(readiness?.verdict.word).toBe('notOnRecord');
      expect(readiness?.needs.find(({ id }) => id === 'drivers')?.status).toBe('met');
      expect(work.some(({ car }) => car === carId)).toBe(true);
    }
  });

  test('ticks of two people at once, each sent twice, are all kept once', async () => {
    const { work } = await page();
    const lines = cars.map((carId) => work.find(({ car }) => car === carId)?.id ?? '');
    expect(new Set(lines).size).toBe(CARS);
    const sent = lines.flatMap((line) => [
      { by: at.me, input: tick(line) },
      { by: mate, input: tick(line, { done: false, madeAt: '2026-06-15T09:01:00.000Z' }) },
    ]);
    const twice = await Promise.all(
      sent.map(async ({ by, input }) => {
        const both = await Promise.all([by.event.tick(input), by.event.tick(input)]);
        expect(both[0]).toEqual({ id: input.tickId, revision: 1, version: 0 });
        expect(both[1]).toEqual(both[0]);
      }),
    );
    expect(twice).toHaveLength(2 * lines.length);
    const { ticks } = await page();
    expect(ticks).toHaveLength(2 * lines.length);
    expect(new Set(ticks.map(({ tickId }) => tickId)).size).toBe(ticks.length);
    for (const line of lines) {
      const own = ticks.filter((one) => one.line === line);
      expect(own.map(({ by, done }) => [by, done])).toEqual([
        ['Ada Fern', true],
        ['Odd Holm', false],
      ]);
    }
  }, 120_000);
});

test('a tick that waited for a signal stands where it was made, and a clock ahead gains nothing', async () => {
  const line = `${cars[0]}/oil/oilLevel-order`;
  const made = async (done: boolean, madeAt: string) => {
    const input = tick(line, { done, madeAt });
    await at.me.event.tick(input);
    return input.tickId;
  };
  const ahead = await made(true, '2026-06-30T00:00:00.000Z');
  const now = await made(true, '2026-06-15T09:58:00.000Z');
  const late = await made(false, '2026-06-15T09:30:00.000Z');
  const own = (await page()).ticks.filter((one) => one.line === line);
  expect(own.map(({ tickId }) => tickId)).toEqual([late, now, ahead]);
  expect(own.at(-1)).toMatchObject({
    at: '2026-06-15T10:00:00.000Z',
    madeAt: '2026-06-30T00:00:00.000Z',
  });
});

test('the same tick under another command is answered, another under its id is refused', async () => {
  const line = `${cars[1]}/oil/oilLevel-same`;
  const first = tick(line);
  await at.me.event.tick(first);
  expect(await at.me.event.tick({ ...first, ...command() })).toMatchObject({ id: first.tickId });
  const other = await refused(mate.event.tick({ ...first, ...command(), done: false }));
  expect(other).toMatchObject({ code: 'idInUse', field: 'tickId' });
  expect((await page()).ticks.filter((one) => one.line === line)).toHaveLength(1);
});

test('a tick of an event that was taken off the calendar meanwhile is kept', async () => {
  const gone = await addEvent({ name: 'Called off', cars: [cars[0] ?? ''] });
  await at.me.event.remove({ ...command(), eventId: gone, baseRevision: 1 });
  const late = { ...tick(`${cars[0]}/oil/x`), eventId: gone };
  expect(await at.me.event.tick(late)).toMatchObject({ id: late.tickId });
  const nowhere = await refused(at.me.event.tick({ ...late, ...command(), eventId: randomUUID() }));
  expect(nowhere).toMatchObject({ code: 'notFound', field: 'eventId' });
});
