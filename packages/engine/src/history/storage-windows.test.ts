import { describe, expect, it } from 'vitest';
import { formatDay, parseDay } from '../calendar/day-number.ts';
import { isStored, storageWindows } from './storage-windows.ts';

const windows = (asOf: string, ...storage: [string, string | null][]) =>
  storageWindows(
    storage.map(([start, end]) => ({ id: start, start, end })),
    parseDay(asOf),
  ).map(({ from, until }) => [formatDay(from), formatDay(until)]);

describe('storageWindows()', () => {
  it('joins windows that overlap or touch, in any order', () => {
    expect(
      windows(
        '2026-06-01',
        ['2026-01-11', '2026-02-01'],
        ['2025-11-01', '2026-01-10'],
        ['2026-01-20', '2026-01-25'],
      ),
    ).toEqual([['2025-11-01', '2026-02-01']]);
  });

  it('keeps windows apart that leave a day between them', () => {
    expect(
      windows('2026-06-01', ['2026-01-12', '2026-02-01'], ['2025-11-01', '2026-01-10']),
    ).toEqual([
      ['2025-11-01', '2026-01-10'],
      ['2026-01-12', '2026-02-01'],
    ]);
  });

  it('lets an open window last 150 days, or until asOf', () => {
    expect(windows('2025-12-01', ['2025-11-01', null])).toEqual([['2025-11-01', '2026-03-31']]);
    expect(windows('2026-06-01', ['2025-11-01', null])).toEqual([['2025-11-01', '2026-06-01']]);
  });

  it('leaves out a window that ends before it starts', () => {
    expect(windows('2026-06-01', ['2026-03-01', '2026-02-01'])).toEqual([]);
  });
});

describe('isStored()', () => {
  it('counts both ends', () => {
    const merged = [
      { from: 10, until: 20 },
      { from: 30, until: 30 },
    ];
    expect([9, 10, 20, 21, 29, 30, 31].map((day) => isStored(merged, day))).toEqual([
      false,
      true,
      true,
      false,
      false,
      true,
      false,
    ]);
  });
});
