import { describe, expect, test } from 'vitest';
import { km } from '../../../test/car-book.ts';
import { type EventDraft, eventInput } from '../../log/event.ts';
import { tripOf } from './trip.ts';

const trip = (more: Partial<EventDraft>) =>
  tripOf(
    {
      id: 'e',
      event: eventInput.parse({ name: 'E', sort: 'circuit', start: '2026-07-04', ...more }),
    },
    'car',
  );

describe('tripOf()', () => {
  test.each([
    ['sessions of a circuit', { use: { sessions: 5 } }, { roadKm: 0, hardKm: 200, runs: 0 }],
    ['hours of a circuit', { use: { hours: 2 } }, { roadKm: 0, hardKm: 220, runs: 0 }],
    [
      'sessions of autocross',
      { sort: 'autocross', use: { sessions: 2 } },
      { roadKm: 0, hardKm: 10, runs: 0 },
    ],
    [
      'launches on a drag strip',
      { sort: 'dragStrip', use: { launches: 10 } },
      { roadKm: 0, hardKm: 8, runs: 10 },
    ],
    [
      'a distance on a drag strip',
      { sort: 'dragStrip', use: { distance: km(12) } },
      { roadKm: 0, hardKm: 12, runs: 0 },
    ],
    [
      'a road trip in miles',
      { sort: 'roadTrip', use: { distance: { text: '1,000', unit: 'mi' } } },
      { roadKm: 1609.344, hardKm: 0, runs: 0 },
    ],
    ['a meet without a drive', { sort: 'meet' }, { roadKm: 0, hardKm: 0, runs: 0 }],
    ['hours of a road trip', { sort: 'roadTrip', use: { hours: 8 } }, null],
    ['a circuit of which nothing is said', {}, null],
    ['a circuit with no sessions', { use: { sessions: 0 } }, null],
  ] as const)('tripOf() makes kilometres of %s as the history does', (_, more, there) => {
    expect(trip(more).there).toEqual(there);
  });

  test('tripOf() counts the way twice, on its own wheels alone', () => {
    expect(trip({ travel: { distance: km(80) } }).wayKm).toBe(160);
    expect(trip({ travel: { distance: km(80), trailered: ['another'] } }).wayKm).toBe(160);
    expect(trip({ travel: { distance: km(80), trailered: ['car'] } }).wayKm).toBe(0);
    expect(trip({ travel: { trailered: ['car'] } }).wayKm).toBe(0);
    expect(trip({ travel: { trailered: [] } }).wayKm).toBeNull();
    expect(trip({}).wayKm).toBeNull();
  });
});
