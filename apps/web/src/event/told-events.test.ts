import type { EventList, EventView } from '@quartermark/api/client';
import { eventInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { toldEvents } from './told-events.ts';

const event = (eventId: string, start: string, cars: string[]): EventView => ({
  eventId,
  revision: 1,
  event: eventInput.parse({ name: eventId, sort: 'circuit', start, cars }),
});

test('toldEvents() are the next three, with the first four of the cars that are still here', () => {
  const events = [
    event('fourth', '2026-09-01', ['x']),
    event('past', '2026-06-01', ['y']),
    event('second', '2026-07-01', ['b', 'c', 'left']),
    event('first', '2026-06-20', ['a', 'b']),
    event('third', '2026-08-01', ['d', 'e']),
  ];
  const cars = Object.fromEntries('abcdexy'.split('').map((id) => [id, `Car ${id}`]));
  const garage = { today: '2026-06-15' } as EventList['garage'];
  expect(toldEvents({ events, garage, cars })).toEqual({
    eventIds: ['first', 'second', 'third'],
    unasked: ['a', 'b', 'c', 'd'],
  });
});
