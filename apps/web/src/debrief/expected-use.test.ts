import type { EntryInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { closingDay, daysOfUse, missingUse } from './expected-use.ts';

const weekend = { sort: 'circuit', start: '2026-06-13', end: '2026-06-14' } as const;
const common = { id: 'e', zone: 'Europe/London', car: 'c' };
const session = (on: string, sessions: number): EntryInput => ({
  ...common,
  kind: 'session',
  use: 'circuit',
  on,
  sessions,
});

test('daysOfUse() has a line for each day of a circuit weekend, and none for days to come', () => {
  expect(daysOfUse(weekend, '2026-06-15')).toEqual(['2026-06-13', '2026-06-14']);
  expect(daysOfUse(weekend, '2026-06-13')).toEqual(['2026-06-13']);
  expect(daysOfUse(weekend, '2026-06-12')).toEqual([]);
});

test('daysOfUse() has one line for a trip of several days', () => {
  expect(daysOfUse({ ...weekend, sort: 'roadTrip' }, '2026-06-15')).toEqual(['2026-06-13']);
});

test('closingDay() is the last day, or today while it is on', () => {
  expect(closingDay(weekend, '2026-06-20')).toBe('2026-06-14');
  expect(closingDay(weekend, '2026-06-13')).toBe('2026-06-13');
});

test('missingUse() shares a plan out over the days and takes off what is on record', () => {
  const planned = { ...weekend, use: { sessions: 9 } };
  expect(missingUse(planned, '2026-06-13', [])).toEqual({ count: '5', distance: '' });
  expect(missingUse(planned, '2026-06-14', [])).toEqual({ count: '4', distance: '' });
  const recorded = [session('2026-06-14', 1), session('2026-06-14', 2)];
  expect(missingUse(planned, '2026-06-14', recorded)).toEqual({ count: '1', distance: '' });
  expect(missingUse(planned, '2026-06-13', [session('2026-06-13', 7)]).count).toBe('');
});

test('missingUse() counts starts at a drag strip, launches before passes', () => {
  const planned = { sort: 'dragStrip', start: '2026-06-13', use: { launches: 6 } } as const;
  const strip: EntryInput = { ...common, kind: 'strip', on: '2026-06-13', passes: [{}, {}] };
  expect(missingUse(planned, '2026-06-13', [strip]).count).toBe('4');
  expect(missingUse(planned, '2026-06-13', [{ ...strip, launches: 5 }]).count).toBe('1');
});

test('missingUse() proposes the distance of a trip as it was planned until a drive is on record', () => {
  const use = { distance: { text: '1,100', unit: 'km' as const } };
  const trip = { sort: 'roadTrip', start: '2026-06-13', end: '2026-06-14', use } as const;
  expect(missingUse(trip, '2026-06-13', [])).toEqual({ count: '', distance: '1,100' });
  const drive: EntryInput = { ...common, kind: 'drive', use: 'touring', on: '2026-06-13' };
  expect(missingUse(trip, '2026-06-13', [drive]).distance).toBe('');
});

test('missingUse() proposes nothing where nothing was planned', () => {
  expect(missingUse(weekend, '2026-06-13', [])).toEqual({ count: '', distance: '' });
});
