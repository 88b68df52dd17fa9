import type { LaneItem } from '@quartermark/engine/display';
import { expect, test } from 'vitest';
import {
  dueBefore,
  mayGo,
  placeEvents,
  placeItem,
  placeMonths,
  placeSpan,
  placeWhisker,
} from './place.ts';

const axis = { today: '2026-06-15', days: 100 };

const item = (more: Partial<LaneItem>): LaneItem => ({
  id: 'i',
  name: 'Brake fluid',
  state: 'fine',
  reasonCode: null,
  binding: 'months',
  limit: 12,
  remaining: null,
  unit: null,
  day: null,
  ...more,
});
const event = (eventId: string, start: string, more: { name?: string; cars?: string[] } = {}) => ({
  eventId,
  event: { name: 'Meet', start, cars: [], ...more },
});

test('placeItem() puts a date on the axis as far as it is off', () => {
  expect(placeItem(item({ day: '2026-06-15' }), null, axis)).toEqual({ where: 'axis', at: 0 });
  expect(placeItem(item({ day: '2026-07-05' }), null, axis)).toEqual({ where: 'axis', at: 0.2 });
  expect(placeItem(item({ day: '2026-09-23' }), null, axis)).toEqual({ where: 'axis', at: 1 });
  expect(placeItem(item({ day: '2026-09-24' }), null, axis)).toEqual({ where: 'later' });
});

test('placeItem() puts what is overdue at the edge, with a date or without', () => {
  expect(placeItem(item({ state: 'overdue', day: '2026-05-01' }), null, axis)).toEqual({
    where: 'edge',
  });
  expect(placeItem(item({ state: 'overdue', reasonCode: 'asked' }), null, axis)).toEqual({
    where: 'edge',
  });
});

test('placeItem() gives what is not known no date, even where a limit has one', () => {
  expect(placeItem(item({}), null, axis)).toEqual({ where: 'undated' });
  expect(placeItem(item({ state: 'unknown', day: '2026-07-05' }), null, axis)).toEqual({
    where: 'undated',
  });
});

test('placeItem() lets what has run out in a lay-up wait for the day it ends', () => {
  const over = item({ state: 'overdue', day: '2026-05-01' });
  expect(placeItem(over, { since: '2026-01-01', until: '2026-07-04' }, axis)).toEqual({
    where: 'axis',
    at: 0.2,
  });
  expect(placeItem(over, { since: '2026-01-01', until: null }, axis)).toEqual({
    where: 'undated',
  });
});

test('placeSpan() cuts to the axis and counts the last day', () => {
  expect(placeSpan({ from: '2026-01-01', to: '2026-06-24' }, axis)).toEqual({ from: 0, to: 0.1 });
  expect(placeSpan({ from: '2026-06-25', to: null }, axis)).toEqual({ from: 0.1, to: 1 });
  expect(placeSpan({ from: '2026-06-01', to: '2026-06-14' }, axis)).toBeNull();
  expect(placeSpan({ from: '2027-01-01', to: null }, axis)).toBeNull();
});

test('placeMonths() names the months that begin on the axis, over the turn of a year', () => {
  expect(placeMonths(axis)).toEqual([
    { name: 'July', at: 0.16 },
    { name: 'August', at: 0.47 },
    { name: 'September', at: 0.78 },
  ]);
  const winter = placeMonths({ today: '2026-11-20', days: 100 });
  expect(winter.map(({ name }) => name)).toEqual(['December', 'January', 'February']);
});

test('placeEvents() orders by day, leaves out what is not on the axis, keeps names off lines', () => {
  const { placed, rows } = placeEvents(
    [
      event('far', '2027-01-01'),
      event('late', '2026-08-30'),
      event('b', '2026-06-21'),
      event('over', '2026-06-01'),
      event('a', '2026-06-20', { name: 'A name of some length' }),
    ],
    axis,
  );
  expect(placed.map(({ eventId, row }) => [eventId, row])).toEqual([
    ['a', 1],
    ['b', 0],
    ['late', 0],
  ]);
  expect(rows).toBe(2);
  expect(placeEvents([], axis)).toEqual({ placed: [], rows: 0 });
});

test('placeEvents() gives the same whatever the order in which the events come', () => {
  const events = ['2026-06-20', '2026-06-20', '2026-06-22', '2026-07-01'].map((start, at) =>
    event(String(at), start),
  );
  expect(placeEvents([...events].reverse(), axis)).toEqual(placeEvents(events, axis));
});

test('dueBefore() finds the first event that begins on the day it is due, or later', () => {
  const { placed } = placeEvents(
    [
      event('other', '2026-07-05', { cars: ['b'] }),
      event('mine', '2026-07-10', { cars: ['a'] }),
      event('early', '2026-06-20'),
    ],
    axis,
  );
  const named = (at: number) => dueBefore('a', { where: 'axis', at }, placed)?.eventId;
  expect(named(0.01)).toBe('early');
  expect(named(0.05)).toBe('early');
  expect(named(0.06)).toBe('mine');
  expect(named(0.9)).toBeUndefined();
  expect(dueBefore('a', { where: 'edge' }, placed)?.eventId).toBe('early');
  expect(dueBefore('a', { where: 'undated' }, placed)).toBeNull();
});

test('mayGo() lets any car go where none is named', () => {
  expect(mayGo(event('e', '2026-07-05'), 'a')).toBe(true);
  expect(mayGo(event('e', '2026-07-05', { cars: ['b'] }), 'a')).toBe(false);
});

test('placeItem() stands on the likely day, and at the end where that is out of sight', () => {
  const km = { binding: 'km', limit: 10_000, remaining: 2_300 };
  expect(placeItem(item({ ...km, likely: '2026-07-05', early: '2026-06-20' }), null, axis)).toEqual(
    {
      where: 'axis',
      at: 0.2,
    },
  );
  expect(placeItem(item({ ...km, likely: '2027-07-05', early: null }), null, axis)).toEqual({
    where: 'later',
  });
  expect(placeItem(item({ ...km, likely: null, early: null }), null, axis)).toEqual({
    where: 'later',
  });
});

test('placeItem() gives what is done once and for all no place', () => {
  const done = item({ reasonCode: 'doneOnce', day: '2026-05-01' });
  expect(placeItem(done, null, axis)).toEqual({ where: 'undated' });
});

test('placeWhisker() reaches back from the likely day to the early one, as far as the axis goes', () => {
  const whisker = (early: string | null, likely: string | null) =>
    placeWhisker(item({ early, likely }), null, axis);
  expect(whisker('2026-06-25', '2026-07-05')).toEqual({ from: 0.1, to: 0.2 });
  expect(whisker('2026-06-10', '2026-07-05')).toEqual({ from: 0, to: 0.2 });
  expect(whisker('2026-06-25', '2027-07-05')).toEqual({ from: 0.1, to: 1 });
  expect(whisker('2026-06-25', null)).toEqual({ from: 0.1, to: 1 });
  expect(whisker('2027-06-25', '2027-07-05')).toBeNull();
  expect(whisker('2026-07-05', '2026-07-05')).toBeNull();
  expect(whisker(null, null)).toBeNull();
});

test('placeWhisker() draws none for an item that waits for its car to wake', () => {
  const soon = item({ state: 'dueSoon', early: '2026-06-25', likely: '2026-07-05' });
  expect(placeWhisker(soon, { since: '2026-01-01', until: '2026-07-04' }, axis)).toBeNull();
});
