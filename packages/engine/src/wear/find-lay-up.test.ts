import { describe, expect, it } from 'vitest';
import { parseDay } from '../calendar/day-number.ts';
import { findLayUp } from './find-lay-up.ts';

const find = (asOf: string, ...storage: [string, string | null][]) =>
  findLayUp(
    storage.map(([start, end]) => ({ id: start, start, end })),
    parseDay(asOf),
  );

describe('findLayUp()', () => {
  it('counts both ends', () => {
    const winter: [string, string] = ['2025-11-01', '2026-03-25'];
    const laidUp = { id: '2025-11-01', since: '2025-11-01', until: '2026-03-25' };
    expect(find('2025-10-31', winter)).toBeNull();
    expect(find('2025-11-01', winter)).toEqual(laidUp);
    expect(find('2026-03-25', winter)).toEqual(laidUp);
    expect(find('2026-03-26', winter)).toBeNull();
  });

  it('has no end while a window is open, however long ago it began', () => {
    expect(find('2026-11-25', ['2024-11-01', null])).toEqual({
      id: '2024-11-01',
      since: '2024-11-01',
      until: null,
    });
    expect(find('2024-10-31', ['2024-11-01', null])).toBeNull();
  });

  it('takes windows that overlap or touch as one, under the id begun last', () => {
    expect(
      find(
        '2026-02-15',
        ['2026-02-01', '2026-03-01'],
        ['2025-11-01', '2026-01-31'],
        ['2026-03-02', '2026-03-20'],
      ),
    ).toEqual({ id: '2026-02-01', since: '2025-11-01', until: '2026-03-20' });
  });

  it('sees the window of today beside later ones', () => {
    expect(find('2025-12-01', ['2025-11-01', '2026-01-01'], ['2026-11-01', null])).toEqual({
      id: '2025-11-01',
      since: '2025-11-01',
      until: '2026-01-01',
    });
  });

  it('finds nothing in nothing', () => {
    expect(find('2026-01-01')).toBeNull();
  });
});
