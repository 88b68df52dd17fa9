import { describe, expect, test } from 'vitest';
import { carBook, type Line } from '../../test/car-book.ts';
import { incidentSort } from '../log/common.ts';
import { findOpen, inspectionLines } from './index.ts';

const ids = (lines: readonly Line[]) => {
  const { findings, incidents } = findOpen(carBook(lines).entries, '2026-06-15');
  return [...findings, ...incidents].map(({ entry }) => entry);
};
const hose: Line = { kind: 'finding', on: '2026-06-01', what: 'Hose', severity: 'doNotDrive' };

describe('findOpen()', () => {
  test('findOpen() opens a finding again whose repair was removed', () => {
    const repair: Line = { id: 'r', kind: 'repair', on: '2026-06-02', text: 'New hose' };
    expect(ids([{ ...hose, resolvedBy: 'r' } as Line, repair])).toEqual([]);
    expect(ids([{ ...hose, resolvedBy: 'r' } as Line, { ...repair, removed: true }])).toEqual([
      'e0',
    ]);
  });

  test('findOpen() takes what is dated tomorrow, where it is that day already, and nothing later', () => {
    const soft: Line = { kind: 'incident', on: '2026-06-16', what: 'softPedal' };
    expect(ids([{ ...hose, on: '2026-06-16' }, soft])).toEqual(['e0', 'e1']);
    expect(ids([{ ...hose, on: '2026-06-17' }])).toEqual([]);
  });

  test('findOpen() keeps findings of one severity by due day, then by the order of the log', () => {
    const watch = (on: string, dueBy?: string): Line => ({ ...hose, on, dueBy, severity: 'watch' });
    const lines = [
      watch('2026-06-03'),
      watch('2026-06-04', '2026-07-02'),
      watch('2026-06-05', '2026-07-01'),
      watch('2026-06-02'),
    ];
    expect(ids(lines)).toEqual(['e2', 'e1', 'e3', 'e0']);
  });
});

test.each(incidentSort.options)('inspectionLines() has 4 to 9 short lines for %s', (sort) => {
  const lines = inspectionLines(sort);
  expect(lines.length).toBeGreaterThanOrEqual(4);
  expect(lines.length).toBeLessThanOrEqual(9);
  expect(new Set(lines).size).toBe(lines.length);
  for (const line of lines) expect(line.length).toBeLessThan(90);
});
