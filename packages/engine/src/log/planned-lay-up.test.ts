import { describe, expect, test } from 'vitest';
import { isUnconfirmed, plannedLayUp, plannedStorage } from './planned-lay-up.ts';

const winter = { id: 'p', start: '2026-11-01', end: '2027-03-25' };
const open = { id: 'p', start: '2026-11-01' };

test('plannedLayUp refuses an end before the start and takes a single day', () => {
  expect(plannedLayUp.safeParse({ start: '2026-11-01', end: '2026-10-31' }).success).toBe(false);
  expect(plannedLayUp.safeParse({ start: '2026-11-01', end: '2026-11-01' }).success).toBe(true);
});

describe('plannedStorage()', () => {
  test('plannedStorage() hands on as it is what begins after the day', () => {
    expect(plannedStorage([winter, open], [], '2026-10-31')).toEqual([winter, open]);
  });

  test('plannedStorage() counts a plan that has begun from tomorrow on, never today or the past', () => {
    for (const asOf of ['2026-11-01', '2026-12-10', '2027-03-24']) {
      const [part] = plannedStorage([winter], [], asOf);
      expect(part?.start.localeCompare(asOf)).toBe(1);
      expect(part?.end).toBe('2027-03-25');
    }
    expect(plannedStorage([winter], [], '2026-12-31')[0]?.start).toBe('2027-01-01');
  });

  test('plannedStorage() leaves out a plan whose last day has come', () => {
    expect(plannedStorage([winter], [], '2027-03-25')).toEqual([]);
  });

  test('plannedStorage() ends a plan without an end 150 days from its own start, however late it is asked', () => {
    const [part] = plannedStorage([open], [], '2026-12-10');
    expect(part).toEqual({ id: 'p', start: '2026-12-11', end: '2027-03-31' });
    expect(plannedStorage([open], [], '2027-03-31')).toEqual([]);
  });

  test('plannedStorage() keeps the plan beside a lay-up of the log that lasts, and ends it where the car woke', () => {
    const laidUp = { id: 'e', start: '2026-11-03' };
    expect(plannedStorage([winter], [laidUp], '2026-12-10')).toHaveLength(1);
    const woken = { ...laidUp, end: '2027-03-01' };
    expect(plannedStorage([winter], [woken], '2027-03-01')).toHaveLength(1);
    expect(plannedStorage([winter], [woken], '2027-03-02')).toEqual([]);
  });

  test('plannedStorage() is not ended by the winter before', () => {
    const before = { id: 'e', start: '2025-11-01', end: '2026-03-20' };
    expect(plannedStorage([winter], [before], '2026-12-10')).toHaveLength(1);
  });
});

describe('isUnconfirmed()', () => {
  test('isUnconfirmed() asks from the first day on, and not once a lay-up of these days is on record', () => {
    expect(isUnconfirmed(winter, [], '2026-10-31')).toBe(false);
    expect(isUnconfirmed(winter, [], '2026-11-01')).toBe(true);
    expect(isUnconfirmed(winter, [{ id: 'e', start: '2026-10-20' }], '2026-11-05')).toBe(false);
    const before = { id: 'e', start: '2025-11-01', end: '2026-03-20' };
    expect(isUnconfirmed(winter, [before], '2026-11-05')).toBe(true);
  });
});
