import { describe, expect, test } from 'vitest';
import { plannedEvent } from './book.ts';
import { type EventDraft, eventInput } from './event.ts';
import { eventDays, plannedEventOf, usualUse } from './planned-event.ts';

const event = (more: Partial<EventDraft>) =>
  eventInput.parse({ name: 'Day', sort: 'circuit', start: '2026-07-04', cars: ['a'], ...more });

describe('eventInput', () => {
  test('eventInput reads an event that was stored before anything was planned of its use', () => {
    const stored = { name: 'Day', sort: 'circuit', start: '2026-07-04', cars: ['a'] };
    expect(eventInput.parse(stored)).toEqual({ ...stored, attend: 0.9 });
  });

  test('eventInput refuses a use that is not counted at events of the sort, naming what is', () => {
    const { error } = eventInput.safeParse({
      name: 'Trip',
      sort: 'roadTrip',
      start: '2026-07-04',
      use: { launches: 2 },
    });
    expect(error?.issues[0]).toMatchObject({ path: ['use', 'launches'] });
    expect(error?.issues[0]?.message).toContain('give distance or hours');
  });

  test.each([[-0.1], [1.1], [Number.NaN]])(
    'eventInput refuses %s as how likely the cars go',
    (attend) => {
      expect(eventInput.safeParse({ ...event({}), attend }).success).toBe(false);
    },
  );
});

describe('usualUse()', () => {
  test.each([
    ['circuit', 2, { sessions: 8 }],
    ['autocross', 2, { sessions: 2 }],
    ['dragStrip', 2, { launches: 12 }],
    ['roadTrip', 4, { distance: { text: '1000', unit: 'km' } }],
    ['meet', 1, {}],
  ] as const)('usualUse() proposes for a %s of %i days', (sort, days, use) => {
    expect(usualUse(sort, days, 'km')).toEqual(use);
  });

  test('usualUse() proposes whole miles where distances are in miles', () => {
    expect(usualUse('roadTrip', 2, 'mi')).toEqual({ distance: { text: '300', unit: 'mi' } });
  });
});

test('eventDays() counts both ends', () => {
  expect(eventDays({ start: '2026-07-24' })).toBe(1);
  expect(eventDays({ start: '2026-07-24', end: '2026-07-27' })).toBe(4);
});

describe('plannedEventOf()', () => {
  test('plannedEventOf() gives what a named car is to do, in kilometres, as a book holds it', () => {
    const trip = event({
      sort: 'roadTrip',
      end: '2026-07-07',
      use: { distance: { text: '600', unit: 'mi' } },
      attend: 0.5,
    });
    const planned = plannedEventOf('e', trip, 'a');
    expect(planned).toEqual({
      id: 'e',
      name: 'Day',
      start: '2026-07-04',
      end: '2026-07-07',
      use: 'touring',
      km: 600 * 1.609344,
      attend: 0.5,
    });
    expect(plannedEvent.parse(planned)).toEqual(planned);
  });

  test.each([
    ['circuit', 'circuit', { sessions: 4, hours: 1.5 }],
    ['autocross', 'autocross', { sessions: 1 }],
    ['dragStrip', 'strip', { launches: 6 }],
    ['meet', 'touring', { distance: { text: '80', unit: 'km' } }],
  ] as const)('plannedEventOf() counts a %s as %s', (sort, use, given) => {
    expect(plannedEventOf('e', event({ sort, use: given }), 'a')?.use).toBe(use);
  });

  test('plannedEventOf() invents nothing: no car named, another car, nothing said, or nothing but zero', () => {
    const use = { sessions: 4 };
    expect(plannedEventOf('e', event({ cars: [], use }), 'a')).toBeNull();
    expect(plannedEventOf('e', event({ cars: ['b'], use }), 'a')).toBeNull();
    expect(plannedEventOf('e', event({}), 'a')).toBeNull();
    expect(plannedEventOf('e', event({ use: {} }), 'a')).toBeNull();
    expect(plannedEventOf('e', event({ use: { sessions: 0 } }), 'a')).toBeNull();
  });
});
