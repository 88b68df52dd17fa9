import { randomUUID } from 'node:crypto';
import type { EntryDraft } from '@quartermark/engine/log';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Home, home, refused } from '../support/api-house.ts';

let at: Home;
let secondCar: string;
let lift: string;

beforeAll(async () => {
  at = await home('api answers');
  secondCar = randomUUID();
  await at.me.car.add({ ...command(), carId: secondCar, car: { name: 'Sorrel 1', unit: 'km' } });
  lift = randomUUID();
  await at.me.gear.add({
    ...command(),
    gearId: lift,
    gear: { kind: 'equipment', name: 'Lift', sort: 'lift' },
  });
});
afterAll(() => at.close());

const command = () => ({ garageId: at.garageId, commandId: randomUUID() });
const finding = (more: Partial<EntryDraft> = {}) =>
  at.draft('finding', { what: 'Hose is chafed', severity: 'watch', ...more } as never);
const answer = (notice: string, more: Partial<EntryDraft> = {}) =>
  at.draft('answer', { notice, answer: 'Seen to.', ...more } as never);
const onLift = () => ({ car: undefined, gear: lift });

test('an answer names a finding or an incident of its own car or piece', async () => {
  const hose = finding();
  await at.record(hose);
  expect((await at.record(answer(hose.id))).revision).toBe(1);
  const off = at.draft('incident', { what: 'off' });
  await at.record(off);
  const cable = finding(onLift());
  await at.record(cable);
  expect((await at.record(answer(off.id))).revision).toBe(1);
  expect((await at.record(answer(cable.id, onLift()))).version).toBe(0);

  const elsewhere = await refused(at.record(answer(hose.id, { car: secondCar })));
  expect(elsewhere).toMatchObject({ code: 'badInput', field: 'entry.car' });
  const onCar = await refused(at.record(answer(cable.id)));
  expect(onCar).toMatchObject({ code: 'badInput', field: 'entry.gear' });
});

test('an answer to nothing, or to what is no question, is refused; a notice by its name is not', async () => {
  const note = at.draft('note', { note: 'Washed.' });
  await at.record(note);
  for (const notice of [randomUUID(), note.id]) {
    const refusal = await refused(at.record(answer(notice)));
    expect(refusal).toMatchObject({ code: 'badInput', field: 'entry.notice' });
    expect(refusal.message).toContain('open the one you answer');
  }
  expect((await at.record(answer('bedding', onLift()))).revision).toBe(1);
});

test('an amended answer goes on naming what it named, and a removed finding can be answered', async () => {
  const hose = finding();
  await at.record(hose);
  const said = answer(hose.id);
  await at.record(said);
  await at.me.entry.remove({ ...command(), entryId: hose.id, baseRevision: 1 });
  const amend = (notice: string, baseRevision: number) =>
    at.me.entry.amend({
      ...command(),
      entryId: said.id,
      baseRevision,
      entry: { ...said, notice, answer: 'Renewed.' } as EntryDraft,
    });
  expect((await amend(hose.id, 1)).revision).toBe(2);
  expect((await refused(amend(randomUUID(), 2))).field).toBe('entry.notice');
  expect((await at.record(answer(hose.id))).revision).toBe(1);
});

test('what dealt with a finding is another entry, and an event of a session is on the calendar', async () => {
  const hose = finding();
  await at.record(hose);
  const amend = (resolvedBy: string, baseRevision = 1) =>
    at.me.entry.amend({
      ...command(),
      entryId: hose.id,
      baseRevision,
      entry: { ...hose, resolvedBy } as EntryDraft,
    });
  for (const nothing of [randomUUID(), hose.id])
    expect((await refused(amend(nothing))).field).toBe('entry.resolvedBy');
  const repair = at.draft('repair', { text: 'New hose' });
  await at.record(repair);
  expect((await amend(repair.id)).revision).toBe(2);

  const session = (event: string) => at.draft('session', { use: 'circuit', event });
  expect((await refused(at.record(session(randomUUID())))).field).toBe('entry.event');
  const eventId = randomUUID();
  await at.me.event.add({
    ...command(),
    eventId,
    event: { name: 'Open day', sort: 'circuit', start: '2026-06-15' },
  });
  expect((await at.record(session(eventId))).revision).toBe(1);
});
