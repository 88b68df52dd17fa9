import { describe, expect, it } from 'vitest';
import { parseDay } from '../calendar/day-number.ts';
import { dayTable, HORIZON_DAYS } from './day-table.ts';

const TODAY = '2025-03-10';
const window = (from: string, until: string) => ({ from: parseDay(from), until: parseDay(until) });

function tableOf(first: string, storage: [string, string][] = []) {
  const table = dayTable(
    parseDay(first),
    parseDay(TODAY),
    storage.map(([from, until]) => window(from, until)),
  );
  const at = (list: ArrayLike<number>, day: string) => list[parseDay(day) - parseDay(first)];
  return { table, at };
}

describe('dayTable()', () => {
  it('knows the month of every day, leap days and the turn of a year with them', () => {
    const { table, at } = tableOf('2023-12-30');
    const months: [string, number][] = [
      ['2023-12-30', 11],
      ['2023-12-31', 11],
      ['2024-01-01', 0],
      ['2024-02-28', 1],
      ['2024-02-29', 1],
      ['2024-03-01', 2],
      ['2025-02-28', 1],
      ['2025-03-01', 2],
      ['2028-02-29', 1],
      ['2028-03-01', 2],
      ['2028-03-10', 2],
    ];
    for (const [day, month] of months) expect(at(table.month, day), day).toBe(month);
    // three years ahead of 10 March 2025, one of them with a leap day
    expect(parseDay(TODAY) + HORIZON_DAYS).toBe(parseDay('2028-03-10'));
    expect(table.month).toHaveLength(parseDay('2028-03-10') - parseDay('2023-12-30') + 1);
  });

  it('marks storage with both ends, and clips what lies outside', () => {
    const { table, at } = tableOf('2025-01-10', [
      ['2024-12-01', '2025-01-12'],
      ['2025-11-01', '2025-11-03'],
      ['2028-03-01', '2030-01-01'],
    ]);
    expect(Array.from(table.stored.slice(0, 4))).toEqual([1, 1, 1, 0]);
    expect(
      ['2025-10-31', '2025-11-01', '2025-11-03', '2025-11-04'].map((day) => at(table.stored, day)),
    ).toEqual([0, 1, 1, 0]);
    expect(table.stored.at(-1)).toBe(1);
    // 1,096 days but the three of November and the ten of March that are left
    expect(table.activeAhead[HORIZON_DAYS]).toBe(HORIZON_DAYS - 3 - 10);
  });

  it('counts the days ahead that are not stored, from tomorrow on', () => {
    const { table } = tableOf(TODAY, [['2025-03-12', '2025-03-13']]);
    expect(Array.from(table.activeAhead.slice(0, 6))).toEqual([0, 1, 1, 1, 2, 3]);
  });

  it('asks for the habit only more than 183 days from the middle of any lay-up', () => {
    // 151 days, the middle one 15 January
    const { table, at } = tableOf('2024-06-01', [['2024-11-01', '2025-03-31']]);
    expect(at(table.habitual, '2024-07-15')).toBe(1);
    expect(at(table.habitual, '2024-07-16')).toBe(0);
    expect(at(table.habitual, '2025-07-17')).toBe(0);
    expect(at(table.habitual, '2025-07-18')).toBe(1);
    expect(at(table.habitual, '2026-01-15')).toBe(1);
  });

  it('asks for no habit where there is no lay-up', () => {
    expect(tableOf('2024-06-01').table.habitual.some((it) => it === 1)).toBe(false);
  });

  it('fits a log that begins today', () => {
    const { table } = tableOf(TODAY);
    expect(table.month).toHaveLength(HORIZON_DAYS + 1);
  });
});
