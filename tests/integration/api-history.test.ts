import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Home, home, refused } from '../support/api-house.ts';

let at: Home;
beforeAll(async () => {
  at = await home('api record');
});
afterAll(() => at.close());

const here = () => ({ garageId: at.garageId, carId: at.carId });
const command = () => ({ garageId: at.garageId, commandId: randomUUID() });

describe('a lay-up', () => {
  const windows = async () => (await at.me.car.view(here())).layUps;

  test('is opened and closed by its entries, whatever is amended or removed', async () => {
    const layUp = at.draft('layUp', { on: '2025-11-02' });
    await at.record(layUp);
    expect(await windows()).toEqual([{ id: layUp.id, start: '2025-11-02' }]);
    const twice = await refused(at.record(at.draft('layUp', { on: '2025-12-01' })));
    expect(twice).toMatchObject({ code: 'badInput', field: 'entry.on' });
    expect(twice.message).toContain('laid up since 2025-11-02');

    const wake = at.draft('wakeUp', { on: '2026-03-14' });
    await at.record(wake);
    expect(await windows()).toEqual([{ id: layUp.id, start: '2025-11-02', end: '2026-03-13' }]);
    const moved = { ...wake, on: '2026-03-20' };
    await at.me.entry.amend({ ...command(), entryId: wake.id, baseRevision: 1, entry: moved });
    expect(await windows()).toEqual([{ id: layUp.id, start: '2025-11-02', end: '2026-03-19' }]);
    await at.me.entry.remove({ ...command(), entryId: wake.id, baseRevision: 2 });
    expect(await windows()).toEqual([{ id: layUp.id, start: '2025-11-02' }]);
    await at.me.entry.remove({ ...command(), entryId: layUp.id, baseRevision: 1 });
    expect(await windows()).toEqual([]);
    const late = await refused(at.record(at.draft('wakeUp', { on: '2026-03-14' })));
    expect(late.message).toContain('no lay-up covers 2026-03-14');
  });
});

describe('entry.history', () => {
  test('pages newest first without losing or repeating one, and filters by kind and words', async () => {
    const other = await home('api history');
    try {
      const days = Array.from({ length: 70 }, (_, index) => 1 + (index % 28));
      for (const [index, day] of days.entries())
        await other.record(
          other.draft('note', {
            on: `2026-05-${String(day).padStart(2, '0')}`,
            note: `Number ${index} 100%`,
          }),
        );
      await other.record(other.draft('drive', { use: 'road', on: '2026-05-03' }));
      const where = { garageId: other.garageId, carId: other.carId };
      const first = await other.me.entry.history(where);
      expect(first.entries).toHaveLength(50);
      const second = await other.me.entry.history({ ...where, cursor: first.next });
      expect(second.next).toBeNull();
      const all = [...first.entries, ...second.entries];
      expect(new Set(all.map((one) => one.entry.id)).size).toBe(71);
      const places = all.map((one) => `${one.entry.on} ${String(one.recorded).padStart(4, '0')}`);
      expect(places).toEqual([...places].sort().reverse());
      expect((await other.me.entry.history({ ...where, kind: 'drive' })).entries).toHaveLength(1);
      expect(
        (await other.me.entry.history({ ...where, text: 'NUMBER 100% 42' })).entries,
      ).toHaveLength(1);
      expect((await other.me.entry.history({ ...where, text: '_' })).entries).toHaveLength(0);
      expect((await refused(other.me.entry.history({ ...where, cursor: 'made up' }))).field).toBe(
        'cursor',
      );
    } finally {
      await other.close();
    }
  });
});

describe('car.lastValues', () => {
  test('gives the newest of each kind as typed', async () => {
    const other = await home('api last values');
    try {
      const where = { garageId: other.garageId, carId: other.carId };
      expect(await other.me.car.lastValues(where)).toEqual({
        odometer: null,
        oilCheck: null,
        wheels: null,
        fit: null,
        measure: null,
        finding: null,
        oilTopUp: null,
        session: null,
        strip: null,
        drive: null,
        fuel: null,
      });
      const older = other.draft('session', {
        use: 'circuit',
        on: '2026-05-01',
        odometer: { text: '10,5', unit: 'km' },
      });
      const newer = other.draft('session', { use: 'circuit', on: '2026-06-01', sessions: 4 });
      await other.record(newer);
      await other.record(older);
      const last = await other.me.car.lastValues(where);
      expect(last.session).toEqual(newer);
      expect(last.odometer).toEqual({ text: '10,5', unit: 'km', on: '2026-05-01' });
    } finally {
      await other.close();
    }
  });
});

describe('entry.some', () => {
  test('gives entries by day, removed ones marked, and only those of the garage asked', async () => {
    const later = at.draft('note', { on: '2026-06-02', note: 'Later' });
    const sooner = at.draft('note', { on: '2026-06-01', note: 'Sooner' });
    await at.record(later);
    await at.record(sooner);
    await at.me.entry.remove({ ...command(), entryId: later.id, baseRevision: 1 });
    const entryIds = [later.id, randomUUID(), sooner.id];
    const found = await at.me.entry.some({ garageId: at.garageId, entryIds });
    expect(found.map(({ entry, removed }) => [entry.id, removed])).toEqual([
      [sooner.id, false],
      [later.id, true],
    ]);

    const other = await home('api some');
    try {
      expect(await other.me.entry.some({ garageId: other.garageId, entryIds })).toEqual([]);
      const strange = await refused(other.me.entry.some({ garageId: at.garageId, entryIds }));
      expect(strange.code).toBe('notFound');
    } finally {
      await other.close();
    }
  });

  test('takes a hundred at once and says so beyond', async () => {
    const entryIds = Array.from({ length: 101 }, () => randomUUID());
    const many = await refused(at.me.entry.some({ garageId: at.garageId, entryIds }));
    expect(many).toMatchObject({ code: 'badInput', field: 'entryIds' });
  });
});
