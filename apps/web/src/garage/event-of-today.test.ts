import type { EventList } from '@quartermark/api/client';
import { expect, test } from 'vitest';
import { eventOfToday } from './event-of-today.ts';

const list = (...days: [start: string, end?: string][]): EventList => ({
  garage: { today: '2026-06-15' } as EventList['garage'],
  events: days.map(([start, end], at) => ({
    eventId: `e${at}`,
    event: { name: `E${at}`, sort: 'circuit', start, ...(end ? { end } : {}), cars: [], attend: 1 },
    revision: 1,
  })),
  plannedLayUps: [],
  people: [],
  cars: {},
});
const on = (...days: [string, string?][]) => eventOfToday(list(...days))?.eventId ?? null;

test('eventOfToday() is one that has begun and is not over, on its first and its last day too', () => {
  expect(on(['2026-06-15'])).toBe('e0');
  expect(on(['2026-06-13', '2026-06-15'])).toBe('e0');
  expect(on(['2026-06-14', '2026-06-16'])).toBe('e0');
  expect(on(['2026-06-14'], ['2026-06-16'])).toBeNull();
  expect(on()).toBeNull();
});

test('eventOfToday() of several is the one that ends first', () => {
  expect(on(['2026-06-10', '2026-06-20'], ['2026-06-15'])).toBe('e1');
});
