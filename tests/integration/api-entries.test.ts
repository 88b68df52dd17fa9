import { randomUUID } from 'node:crypto';
import type { EntryDraft } from '@quartermark/engine/log';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Home, home, refused } from '../support/api-house.ts';

let at: Home;
beforeAll(async () => {
  at = await home('api entries');
});
afterAll(() => at.close());

const count = async () => (await at.me.entry.history({ ...here(), removed: true })).entries.length;
const here = () => ({ garageId: at.garageId, carId: at.carId });
const command = () => ({ garageId: at.garageId, commandId: randomUUID() });

describe('entry.record', () => {
  test('keeps what was typed, letter for letter, and raises the version by one', async () => {
    const first = await at.record(at.draft('note', { note: 'Smells of hot oil.' }));
    const entry = at.draft('fuel', { volume: { text: '38,5', unit: 'l' }, on: '2026-06-01' });
    const second = await at.record(entry);
    expect(second).toEqual({ id: entry.id, revision: 1, version: first.version + 1 });
    const seen = await at.me.entry.one({ garageId: at.garageId, entryId: entry.id });
    expect(seen).toMatchObject({ entry, revision: 1, removed: false, recordedBy: 'Ada Fern' });
  });

  test('answers the same command again with the same result and writes once', async () => {
    const before = await count();
    const entry = at.draft('note', { note: 'Once.' });
    const commandId = randomUUID();
    const first = await at.record(entry, { commandId });
    expect(await at.record(entry, { commandId })).toEqual(first);
    expect(await at.record(entry, { commandId, queued: true })).toEqual(first);
    const both = await Promise.all([1, 2, 3].map(() => at.record(entry, { commandId })));
    expect(both).toEqual([first, first, first]);
    expect(await count()).toBe(before + 1);
  });

  test('writes once when the same command arrives several times at once', async () => {
    const before = await count();
    const entry = at.draft('note', { note: 'All at once.' });
    const commandId = randomUUID();
    const answers = await Promise.all([1, 2, 3, 4].map(() => at.record(entry, { commandId })));
    for (const answer of answers) expect(answer).toEqual(answers[0]);
    expect(await count()).toBe(before + 1);
  });

  test('refuses the same command id with another payload', async () => {
    const commandId = randomUUID();
    const entry = at.draft('note', { note: 'First.' });
    await at.record(entry, { commandId });
    const refusal = await refused(at.record({ ...entry, note: 'Second.' }, { commandId }));
    expect(refusal).toMatchObject({ code: 'commandReused', field: 'commandId' });
    expect((await at.me.entry.one({ garageId: at.garageId, entryId: entry.id })).entry.note).toBe(
      'First.',
    );
  });

  test('refuses an id that is in the log already', async () => {
    const entry = at.draft('note', { note: 'Here.' });
    await at.record(entry);
    expect(await refused(at.record(entry))).toMatchObject({ code: 'idInUse', field: 'entry.id' });
  });

  test('takes tomorrow and refuses the day after, naming the date and today', async () => {
    await at.record(at.draft('note', { note: 'Ahead.', on: '2026-06-16' }));
    const refusal = await refused(at.record(at.draft('note', { note: 'Far.', on: '2026-06-17' })));
    expect(refusal).toMatchObject({ code: 'afterTomorrow', field: 'entry.on' });
    expect(refusal.message).toContain('2026-06-17');
    expect(refusal.message).toContain('today is 2026-06-15');
  });

  const bad: [string, () => unknown, string, RegExp][] = [
    [
      'a negative volume',
      () => at.draft('oilTopUp', { volume: { text: '-1', unit: 'l' } }),
      'entry.volume.text',
      /-1 is outside 0 to 50000/,
    ],
    [
      'an unknown unit',
      () => at.draft('fuel', { volume: { text: '5', unit: 'firkin' as 'l' } }),
      'entry.volume.unit',
      /unit must be one of l, ml, usQt.*firkin/,
    ],
    [
      'an absurd level',
      () => at.draft('oilCheck', { level: { how: 'fraction', fraction: 7 } }),
      'entry.level.fraction',
      /above 1.6 is no level.*use "over MAX".*7/,
    ],
    [
      'a note of 65 KB',
      () => at.draft('note', { note: 'x'.repeat(65 * 1024) }),
      'entry.note',
      /longer than 64 KB; shorten it/,
    ],
    [
      'a date that does not exist',
      () => at.draft('note', { note: 'x', on: '2026-02-30' }),
      'entry.on',
      /2026-02-30 does not exist/,
    ],
    [
      'a kind that is none',
      () => ({ ...at.draft('note', { note: 'x' }), kind: 'song' }),
      'entry.kind',
      /known/,
    ],
    [
      'a field that does not belong',
      () => ({ ...at.draft('note', { note: 'x' }), colour: 'red' }),
      'entry',
      /colour; leave them out/,
    ],
    [
      'a use without its car',
      () => ({ ...at.draft('drive', { use: 'road' }), car: undefined }),
      'entry.car',
      /say which car/,
    ],
    [
      'a character that cannot be stored',
      () => at.draft('note', { note: 'a\u0000b' }),
      'entry.note',
      /cannot be stored/,
    ],
    [
      'a journey that ends before it begins',
      () => at.draft('drive', { use: 'touring', until: '2026-06-10' }),
      'entry.until',
      /last day is before the first.*2026-06-10/,
    ],
    [
      'an item that is not the car’s',
      () => at.draft('service', { items: [randomUUID()] }),
      'entry.items.0',
      /no service item of this car/,
    ],
  ];
  test.each(bad)(
    'refuses %s, naming field, value and mend',
    async (_what, draft, field, message) => {
      const before = await count();
      const refusal = await refused(at.record(draft() as EntryDraft));
      expect(refusal).toMatchObject({ code: 'badInput', field });
      expect(refusal.message).toMatch(message);
      expect(refusal.fields?.[0]).toEqual({ field, message: refusal.message });
      expect(refusal.message.length).toBeLessThan(400);
      expect(await count()).toBe(before);
    },
  );

  test('refuses a service of an item that was removed, and names it', async () => {
    const itemId = randomUUID();
    const item = { name: 'Coolant', limits: [{ measure: 'months' as const, value: 24 }] };
    await at.me.item.add({ ...command(), carId: at.carId, itemId, item });
    const done = await at.record(at.draft('service', { items: [itemId], on: '2026-05-01' }));
    await at.me.item.remove({ ...command(), itemId, baseRevision: 1 });
    const late = at.draft('service', { items: [itemId], on: '2026-05-02' });
    expect((await refused(at.record(late))).field).toBe('entry.items.0');
    // what was done before stays sayable
    const entry = {
      ...at.draft('service', { items: [itemId], on: '2026-05-01' }),
      id: done.id,
      note: 'Blue.',
    };
    await at.me.entry.amend({ ...command(), entryId: done.id, baseRevision: 1, entry });
  });
});

describe('an odometer that goes backwards', () => {
  let other: Home;
  beforeAll(async () => {
    other = await home('api odometer');
    await other.record(
      other.draft('odometer', { on: '2026-05-01', odometer: { text: '41 000', unit: 'km' } }),
    );
    await other.record(
      other.draft('odometer', { on: '2026-06-01', odometer: { text: '42 000', unit: 'km' } }),
    );
  });
  afterAll(() => other.close());
  const low = () =>
    other.draft('odometer', { on: '2026-06-10', odometer: { text: '4 150', unit: 'km' } });

  test('is asked about once, naming both values', async () => {
    const refusal = await refused(other.record(low()));
    expect(refusal).toMatchObject({ code: 'odometerBackwards', field: 'entry.odometer' });
    expect(refusal.message).toContain('4 150 km is lower than 42 000 km');
  });

  test('is asked about too when a backdated value is above a later one', async () => {
    const high = other.draft('odometer', {
      on: '2026-05-10',
      odometer: { text: '42 500', unit: 'km' },
    });
    const refusal = await refused(other.record(high));
    expect(refusal.message).toContain('42 500 km is higher than 42 000 km');
  });

  test('is saved with the same command id once confirmed', async () => {
    const entry = low();
    const commandId = randomUUID();
    await refused(other.record(entry, { commandId }));
    const written = await other.record(entry, { commandId, confirmed: ['odometerBackwards'] });
    expect(written.revision).toBe(1);
    // amending its note does not ask again; another odd value does
    const common = { garageId: other.garageId, entryId: entry.id };
    await other.me.entry.amend({
      ...common,
      commandId: randomUUID(),
      baseRevision: 1,
      entry: { ...entry, note: 'It did show that.' },
    });
    const odd = { ...entry, odometer: { text: '5 000', unit: 'km' as const } };
    const again = other.me.entry.amend({
      ...common,
      commandId: randomUUID(),
      baseRevision: 2,
      entry: odd,
    });
    expect((await refused(again)).code).toBe('odometerBackwards');
  });

  test('is saved unasked when it comes from a queue', async () => {
    expect((await other.record(low(), { queued: true })).revision).toBe(1);
  });
});

describe('work and driving on one day without times', () => {
  const on = '2026-04-04';
  const use = () => at.draft('session', { use: 'circuit', on });
  const work = () => at.draft('fluid', { which: 'brake', on });

  test('is asked about, and answered by an order, a time, or a confirmation', async () => {
    await at.record(use());
    const refusal = await refused(at.record(work()));
    expect(refusal).toMatchObject({ code: 'orderUnclear', field: 'entry.dayOrder' });
    expect(refusal.message).toContain('before or after');
    await at.record({ ...work(), dayOrder: 'beforeDriving' });
    await at.record({ ...work(), time: '07:00' });
    await at.record(work(), { confirmed: ['orderUnclear'] });
    await at.record(work(), { queued: true });
  });

  test('is asked about as well when the driving is recorded second', async () => {
    expect((await refused(at.record(use()))).code).toBe('orderUnclear');
    await at.record({ ...use(), time: '09:00' }, { confirmed: ['looksTheSame'] });
  });

  test('is not asked about where only one of the two shares the day', async () => {
    await at.record(at.draft('fluid', { which: 'brake', on: '2026-04-05' }));
    const second = await at.record(at.draft('fluid', { which: 'coolant', on: '2026-04-05' }));
    expect(second.revision).toBe(1);
  });
});

describe('entry.amend and entry.remove', () => {
  test('amend keeps the ordinal, and every body stays readable with who wrote it', async () => {
    const entry = at.draft('note', { note: 'Rattle, left.' });
    await at.record(entry);
    const one = { garageId: at.garageId, entryId: entry.id };
    const before = await at.me.entry.one(one);
    const amended = { ...entry, note: 'Rattle, right.' };
    const written = await at.me.entry.amend({
      ...command(),
      entryId: entry.id,
      baseRevision: 1,
      entry: amended,
    });
    expect(written.revision).toBe(2);
    const after = await at.me.entry.one(one);
    expect(after).toMatchObject({ entry: amended, revision: 2, recorded: before.recorded });
    const revisions = await at.me.entry.revisions(one);
    expect(revisions.map(({ revision, body, by }) => [revision, body?.note, by])).toEqual([
      [2, 'Rattle, right.', 'Ada Fern'],
      [1, 'Rattle, left.', 'Ada Fern'],
    ]);
  });

  test('a stale amendment is a conflict that shows the newest body', async () => {
    const entry = at.draft('note', { note: 'One.' });
    await at.record(entry);
    const amend = (note: string, commandId = randomUUID()) =>
      at.me.entry.amend({
        garageId: at.garageId,
        commandId,
        entryId: entry.id,
        baseRevision: 1,
        entry: { ...entry, note },
      });
    const commandId = randomUUID();
    const first = await amend('Two.', commandId);
    const refusal = await refused(amend('Three.'));
    expect(refusal).toMatchObject({
      code: 'conflict',
      field: 'baseRevision',
      conflict: { revision: 2, body: { note: 'Two.' }, by: 'Ada Fern' },
    });
    // the same command again is no conflict: it was done
    expect(await amend('Two.', commandId)).toEqual(first);
  });

  test('an amended entry keeps its id, kind and car', async () => {
    const entry = at.draft('note', { note: 'Stay.' });
    await at.record(entry);
    const amend = (changed: EntryDraft) =>
      refused(
        at.me.entry.amend({ ...command(), entryId: entry.id, baseRevision: 1, entry: changed }),
      );
    expect((await amend({ ...entry, id: randomUUID() })).field).toBe('entry.id');
    expect(
      (
        await amend({
          ...entry,
          kind: 'odometer',
          odometer: { text: '1', unit: 'km' },
        } as EntryDraft)
      ).field,
    ).toBe('entry.kind');
    expect((await amend({ ...entry, car: undefined })).field).toBe('entry.car');
  });

  test('a removed entry is a tombstone that no replay, amendment or new record revives', async () => {
    const entry = at.draft('note', { note: 'Wrong car.' });
    const commandId = randomUUID();
    const written = await at.record(entry, { commandId });
    const removal = {
      garageId: at.garageId,
      commandId: randomUUID(),
      entryId: entry.id,
      baseRevision: 1,
    };
    const removed = await at.me.entry.remove(removal);
    expect(removed.revision).toBe(2);
    expect(await at.me.entry.remove(removal)).toEqual(removed);

    expect(await at.record(entry, { commandId })).toEqual(written);
    expect((await refused(at.record(entry))).code).toBe('removed');
    const amend = at.me.entry.amend({ ...command(), entryId: entry.id, baseRevision: 2, entry });
    expect((await refused(amend)).code).toBe('removed');
    expect(
      (await refused(at.me.entry.remove({ ...removal, commandId: randomUUID(), baseRevision: 2 })))
        .code,
    ).toBe('removed');

    const one = { garageId: at.garageId, entryId: entry.id };
    expect(await at.me.entry.one(one)).toMatchObject({ removed: true, revision: 2 });
    expect((await at.me.entry.revisions(one))[0]).toMatchObject({ revision: 2, body: null });
    const shown = await at.me.entry.history({ ...here(), text: 'Wrong car' });
    expect(shown.entries).toEqual([]);
  });
});
