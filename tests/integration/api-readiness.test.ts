import { randomUUID } from 'node:crypto';
import type { EntryDraft, EventDraft } from '@quartermark/engine/log';
import postgres from 'postgres';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Home, home, refused } from '../support/api-house.ts';
import { joinMember } from '../support/api-stranger.ts';

let at: Home;
beforeAll(async () => {
  at = await home('api readiness');
});
afterAll(() => at.close());

const command = () => ({ garageId: at.garageId, commandId: randomUUID() });
const mm = (text: string) => ({ text, unit: 'mm' as const });

async function addCar(name: string): Promise<string> {
  const carId = randomUUID();
  await at.me.car.add({ ...command(), carId, car: { name, unit: 'km' } });
  return carId;
}

async function addEvent(more: Partial<EventDraft> = {}): Promise<string> {
  const eventId = randomUUID();
  const event = { name: 'Club day', sort: 'circuit', start: '2026-06-20', ...more } as EventDraft;
  await at.me.event.add({ ...command(), eventId, event });
  return eventId;
}

const view = (eventId: string) => at.me.event.view({ garageId: at.garageId, eventId });

/** A need of the first car that goes. */
async function need(eventId: string, id: string) {
  const [car] = (await view(eventId)).cars;
  return car?.readiness?.needs.find((one) => one.id === id);
}

const accept = (event: string, car: string, of: string, acceptanceId: string = randomUUID()) =>
  at.me.event.accept({
    ...command(),
    acceptanceId,
    acceptance: { event, car, need: of, because: 'Looked at it with the club.' },
  });

describe('event.view', () => {
  test('says what is asked, of whom, by what and what is to be done', async () => {
    const car = await addCar('Tern 4');
    const person = randomUUID();
    await at.me.gear.add({
      ...command(),
      gearId: person,
      gear: { kind: 'person', name: 'Wren Halloway' },
    });
    const eventId = await addEvent({ cars: [car], crew: [{ car, people: [person] }] });
    const page = await view(eventId);
    expect(page.cars.map(({ name }) => name)).toEqual(['Tern 4']);
    const [first] = page.cars;
    expect(first?.readiness?.verdict.word).toBe('notOnRecord');
    expect(first?.readiness?.needs.find(({ id }) => id === 'drivers')?.status).toBe('met');
    expect(first?.take?.oil.measured).toBe(false);
    expect(first?.facts?.odometer).toBeNull();
    expect(page.people).toContainEqual({ gearId: person, name: 'Wren Halloway' });
    expect(page.names).toMatchObject({ [car]: 'Tern 4', [person]: 'Wren Halloway' });
    expect(page.requirements).toMatchObject({ own: null, garage: null });
    expect(page.proposal).toEqual({ use: { sessions: 4 }, from: 'practice', events: [] });
    const odometer = page.work.find(({ needs }) => needs.includes('odometer'));
    expect(odometer).toMatchObject({ car, work: 'writeDown', latest: '2026-06-19' });
    expect(page.at).toBe('2026-06-15T10:00:00.000Z');
  });

  test('answers anew once the odometer is read and a session is recorded', async () => {
    const car = await addCar('Tern 5');
    const eventId = await addEvent({ cars: [car], start: '2026-06-15', use: { sessions: 4 } });
    expect((await need(eventId, 'odometer'))?.status).toBe('unknown');
    const reading = { text: '41200', unit: 'km' as const };
    await at.record(at.draft('odometer', { car, odometer: reading }));
    expect((await need(eventId, 'odometer'))?.status).toBe('met');
    expect((await view(eventId)).cars[0]?.recorded).toEqual([]);
    const session = at.draft('session', { car, use: 'circuit', sessions: 3, event: eventId });
    await at.record(session);
    const [recorded] = (await view(eventId)).cars[0]?.recorded ?? [];
    expect(recorded).toMatchObject({ entry: { id: session.id }, recordedBy: 'Ada Fern' });
  });

  test('answers anew once pads are measured, and once they are on another car', async () => {
    const [car, other] = [await addCar('Tern 6'), await addCar('Tern 7')];
    const pads = randomUUID();
    const least = { leastDepth: mm('3'), newDepth: mm('12') };
    await at.me.gear.add({
      ...command(),
      gearId: pads,
      gear: { kind: 'component', name: 'Front pads', sort: 'pads', condition: 'new', ...least },
    });
    const eventId = await addEvent({ cars: [car], use: { sessions: 4 } });
    expect(await need(eventId, 'pads')).toMatchObject({ status: 'unknown', subject: null });
    const fit = { component: pads, positions: ['front'], condition: 'new' as const };
    await at.record(at.draft('fit', { car, on: '2026-04-01', change: 'on', ...fit }));
    expect(await need(eventId, 'pads')).toBeUndefined();
    expect((await need(eventId, `pads:${pads}`))?.status).toBe('unknown');
    const thin = [{ corner: 'frontLeft' as const, inner: mm('2.5'), outer: mm('2.8') }];
    await at.record(at.draft('measure', { car, component: pads, pads: thin } as never));
    const worn = await need(eventId, `pads:${pads}`);
    expect(worn).toMatchObject({ status: 'metAfterWork', margin: { value: -0.5, unit: 'mm' } });
    expect(worn?.evidence.length).toBe(1);
    await at.record(at.draft('fit', { car: other, change: 'moved', ...fit } as never));
    expect(await need(eventId, `pads:${pads}`)).toBeUndefined();
  });

  test('shows a car whose book cannot be read without an answer, and the others with theirs', async () => {
    const [bad, good] = [await addCar('Tern 8'), await addCar('Tern 9')];
    const eventId = await addEvent({ cars: [bad, good] });
    const odd = at.draft('note', { car: bad, note: 'x' });
    await at.record(odd);
    const sql = postgres(at.database.appUrl, { max: 1 });
    await sql.begin(async (tx) => {
      await tx`select set_config('app.garage', ${at.garageId}, true)`;
      await tx`update entry set body = body - 'note' where id = ${odd.id ?? ''}`;
    });
    await sql.end();
    const page = await view(eventId);
    expect(page.cars.map(({ readiness }) => readiness === null)).toEqual([true, false]);
    expect(page.cars[0]).toMatchObject({ name: 'Tern 8', take: null, facts: null });
  });

  test('proposes what the car did at the last event of the sort, and shows that event', async () => {
    const car = await addCar('Tern 10');
    const past = await addEvent({ name: 'May day', start: '2026-05-16', cars: [car] });
    await at.record(
      at.draft('session', { car, on: '2026-05-16', use: 'circuit', sessions: 7 } as never),
    );
    const eventId = await addEvent({ cars: [car] });
    const page = await view(eventId);
    expect(page.proposal).toEqual({ use: { sessions: 7 }, from: 'car', events: [past] });
    expect(page.former?.eventId).toBe(past);
    const { events } = await at.me.event.former({ garageId: at.garageId });
    expect(events.map((one) => one.eventId)).toEqual([past]);
    await at.me.event.remove({ ...command(), eventId, baseRevision: 1 });
    expect((await refused(view(eventId))).code).toBe('removed');
  });
});

describe('event.add', () => {
  test('refuses a crew and a trailer that do not fit the cars that go, at the field', async () => {
    const [car, other] = [await addCar('Heron'), await addCar('Lark')];
    const person = randomUUID();
    const wrench = randomUUID();
    await at.me.gear.add({ ...command(), gearId: person, gear: { kind: 'person', name: 'Una' } });
    await at.me.gear.add({
      ...command(),
      gearId: wrench,
      gear: { kind: 'equipment', name: 'Wrench', sort: 'torqueWrench' },
    });
    const of = async (more: Partial<EventDraft>) => {
      const { field, message } = await refused(addEvent({ cars: [car], ...more }));
      return [field, message];
    };
    expect(await of({ crew: [{ car: other, people: [person] }] })).toEqual([
      'event.crew.0.car',
      'crew: Lark does not go to this event; add it to the cars that go, or take its drivers off',
    ]);
    const [field, message] = await of({ crew: [{ car, people: [person, wrench] }] });
    expect(field).toBe('event.crew.0.people.1');
    expect(message).toContain('is nobody of this garage');
    expect(await of({ crew: [{ car, people: [person, person] }] })).toEqual([
      'event.crew.0.people.1',
      'crew: Una is named twice in one car; take one away',
    ]);
    const line = { car, people: [person] };
    expect((await of({ crew: [line, line] }))[0]).toBe('event.crew.1.car');
    expect(await of({ travel: { trailered: [other] } })).toEqual([
      'event.travel.trailered.0',
      'trailered: Lark does not go to this event; add it to the cars that go, or take it off the trailer',
    ]);
    expect((await of({ travel: { trailered: [randomUUID()] } }))[0]).toBe(
      'event.travel.trailered.0',
    );
    await addEvent({ cars: [car], crew: [line], travel: { trailered: [car] } });
  });
});

describe('event.accept', () => {
  test('is kept with who said it and why, no longer counts, and can be taken back', async () => {
    const car = await addCar('Avocet');
    const eventId = await addEvent({ cars: [car] });
    const acceptanceId = randomUUID();
    const before = await need(eventId, 'odometer');
    expect(before).toMatchObject({ weight: 'blocking', mayAccept: true, accepted: null });
    await accept(eventId, car, 'odometer', acceptanceId);
    const after = await need(eventId, 'odometer');
    expect(after).toMatchObject({
      status: 'unknown',
      accepted: {
        acceptanceId,
        by: 'Ada Fern',
        on: '2026-06-15',
        because: 'Looked at it with the club.',
      },
    });
    const { work } = await view(eventId);
    expect(work.some(({ needs }) => needs.includes('odometer'))).toBe(false);
    const again = await refused(accept(eventId, car, 'odometer'));
    expect(again).toMatchObject({ field: 'acceptance.need' });
    expect(again.message).toContain('Ada Fern took this on already');
    // it holds for this event alone
    expect((await need(await addEvent({ cars: [car] }), 'odometer'))?.accepted).toBeNull();

    const mate = await joinMember(at, 'mate@club.example');
    const withdraw = () => mate.event.withdraw({ ...command(), acceptanceId });
    await withdraw();
    expect((await need(eventId, 'odometer'))?.accepted).toBeNull();
    expect(await withdraw()).toMatchObject({ id: acceptanceId, revision: 2 });
    const same = await refused(accept(eventId, car, 'odometer', acceptanceId));
    expect(same.code).toBe('idInUse');
    await accept(eventId, car, 'odometer');
  });

  const forbidden: [need: string, entry: () => Partial<EntryDraft>[]][] = [
    ['doNotDrive', () => [{ kind: 'finding', what: 'Brake hose', severity: 'doNotDrive' }]],
    ['incident', () => [{ kind: 'incident', what: 'off' }]],
    [
      'openJob',
      () => [
        {
          kind: 'oilChange',
          drained: { text: '5', unit: 'l' },
          filterRenewed: false,
        } as Partial<EntryDraft>,
      ],
    ],
    ['wheels', () => [{ kind: 'wheels', change: 'off' }]],
    ['torque', () => []],
  ];
  test.each(forbidden)('is refused for %s', async (kind, entries) => {
    const car = await addCar(`Refused ${kind}`);
    for (const one of entries()) {
      const { kind: sort, ...rest } = one;
      await at.record(at.draft(sort as 'note', { ...rest, car } as never));
    }
    const eventId = await addEvent({ cars: [car], start: '2026-06-15' });
    const [first] = (await view(eventId)).cars;
    const found = first?.readiness?.needs.find((one) => one.kind === kind);
    expect(found).toMatchObject({ weight: 'blocking', mayAccept: false });
    const refusal = await refused(accept(eventId, car, found?.id ?? ''));
    expect(refusal).toMatchObject({ code: 'badInput', field: 'acceptance.need' });
    expect(refusal.message).toContain('nobody can take this on');
    expect((await view(eventId)).cars[0]?.readiness).toEqual(first?.readiness);
  });

  test('is refused for what is met, what is not asked, and a car that does not go', async () => {
    const [car, other] = [await addCar('Snipe'), await addCar('Ruff')];
    const reading = { text: '41200', unit: 'km' as const };
    await at.record(at.draft('odometer', { car, odometer: reading }));
    const eventId = await addEvent({ cars: [car] });
    const message = async (asking: Promise<unknown>) => (await refused(asking)).message;
    expect(await message(accept(eventId, car, 'odometer'))).toContain('is met');
    expect(await message(accept(eventId, car, 'limit:none'))).toContain('not asked of this car');
    expect(await message(accept(eventId, other, 'odometer'))).toContain('does not go');
  });
});
