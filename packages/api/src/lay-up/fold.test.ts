import { expect, test } from 'vitest';
import { foldLayUps, type StorageEntry, windowOn } from './fold.ts';

const entry = (kind: 'layUp' | 'wakeUp', id: string, on: string, until?: string): StorageEntry =>
  ({ kind, id, on, zone: 'Europe/London', car: 'c', ...(until ? { until } : {}) }) as StorageEntry;

test('foldLayUps() closes a window on the day before the car wakes', () => {
  expect(
    foldLayUps([entry('layUp', 'a', '2025-11-02'), entry('wakeUp', 'b', '2026-03-14')]),
  ).toEqual([{ id: 'a', startOn: '2025-11-02', endOn: '2026-03-13', closedBy: 'b' }]);
});

test('foldLayUps() keeps an open window open and a planned end as planned', () => {
  expect(foldLayUps([entry('layUp', 'a', '2025-11-02')])[0]?.endOn).toBeNull();
  expect(foldLayUps([entry('layUp', 'a', '2025-11-02', '2026-03-31')])[0]?.endOn).toBe(
    '2026-03-31',
  );
});

test('foldLayUps() keeps the day of a car that is laid up and woken on one day', () => {
  const [window] = foldLayUps([
    entry('layUp', 'a', '2026-02-28'),
    entry('wakeUp', 'b', '2026-02-28'),
  ]);
  expect(window).toMatchObject({ startOn: '2026-02-28', endOn: '2026-02-28', closedBy: 'b' });
});

test('foldLayUps() lets a wake-up outside any window close none', () => {
  const windows = foldLayUps([
    entry('layUp', 'a', '2025-01-01', '2025-02-01'),
    entry('wakeUp', 'b', '2025-03-01'),
  ]);
  expect(windows).toEqual([
    { id: 'a', startOn: '2025-01-01', endOn: '2025-02-01', closedBy: null },
  ]);
});

test('foldLayUps() pairs two winters each with its own spring', () => {
  const windows = foldLayUps([
    entry('layUp', 'a', '2024-11-01'),
    entry('wakeUp', 'b', '2025-03-01'),
    entry('layUp', 'c', '2025-11-01'),
    entry('wakeUp', 'd', '2026-03-01'),
  ]);
  expect(windows.map(({ id, endOn, closedBy }) => [id, endOn, closedBy])).toEqual([
    ['a', '2025-02-28', 'b'],
    ['c', '2026-02-28', 'd'],
  ]);
});

test('windowOn() finds the open window of a day, both ends included', () => {
  const windows = foldLayUps([entry('layUp', 'a', '2025-01-01', '2025-02-01')]);
  expect(windowOn(windows, '2025-01-01')?.id).toBe('a');
  expect(windowOn(windows, '2025-02-01')?.id).toBe('a');
  expect(windowOn(windows, '2024-12-31')).toBeUndefined();
  expect(windowOn(windows, '2025-02-02')).toBeUndefined();
});
