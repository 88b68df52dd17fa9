import 'fake-indexeddb/auto';
import { expect, test, vi } from 'vitest';
import { openPocket, pocketDb } from '../queue/store.ts';
import { lastRecorded, noteRecorded } from './last-recorded.ts';
import { type KeptSheet, keepSheet, readSheet } from './pocket-sheet.ts';

const sheetWith = (days: unknown[] | undefined) =>
  ({
    sheet: { at: '2026-06-15T10:00:00Z', garages: [{ cars: [], ...(days && { days }) }] },
    aheadMs: 5,
  }) as unknown as KeptSheet;

test('readSheet() reads a sheet that an earlier version kept, without pages of events', async () => {
  const db = await openPocket('sheet-1');
  await db.put('kept', sheetWith(undefined), 'sheet');
  expect((await readSheet(db))?.sheet.garages[0]).toEqual({ cars: [], days: [] });
  const page = { event: { eventId: 'e' }, ticks: [] };
  await keepSheet(db, sheetWith([page]));
  expect((await readSheet(db))?.sheet.garages[0]?.days).toEqual([page]);
});

test('noteRecorded() keeps the last time something was recorded, garage by garage', async () => {
  vi.useFakeTimers({ toFake: ['Date'], now: 1_000 });
  await noteRecorded('here');
  vi.setSystemTime(2_000);
  await noteRecorded('here');
  vi.useRealTimers();
  const db = await pocketDb();
  expect(await lastRecorded(db, 'here')).toBe(2_000);
  expect(await lastRecorded(db, 'elsewhere')).toBeNull();
});
