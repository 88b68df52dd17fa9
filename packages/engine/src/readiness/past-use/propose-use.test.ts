import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { carBook, km, type Line } from '../../../test/car-book.ts';
import { eventInput, eventUse } from '../../log/event.ts';
import { EVENT_SORTS, type EventSort } from '../../log/event-sort.ts';
import { eventDays, usualUse } from '../../log/planned-event.ts';
import { type FormerEvent, proposeUse } from './propose-use.ts';
import { usesOfEvent } from './uses-of-event.ts';

const former = (
  id: string,
  sort: EventSort,
  days: [string, string],
  lines: readonly Line[],
): FormerEvent => {
  const [start, end] = days;
  const event = { id, event: eventInput.parse({ name: id, sort, start, end, cars: ['car', 'b'] }) };
  const own = lines.map((line, at) => ({ ...line, id: `${id}${at}` }));
  return { event, uses: usesOfEvent(event, carBook(own).entries, []) };
};
const weekend: [string, string] = ['2026-05-09', '2026-05-10'];
const oneDay: [string, string] = ['2026-05-09', '2026-05-09'];
const sessions = (count: number, car = 'car'): Line => ({
  kind: 'session',
  use: 'circuit',
  on: '2026-05-09',
  sessions: count,
  car,
});

describe('proposeUse()', () => {
  test('proposeUse() scales the median of what the car did a day to the days', () => {
    const past = [
      former('a', 'circuit', weekend, [sessions(6), sessions(4)]),
      former('b', 'circuit', oneDay, [sessions(3)]),
      former('c', 'circuit', oneDay, [sessions(9), sessions(1, 'b')]),
    ];
    expect(proposeUse('circuit', 3, 'km', 'car', past)).toEqual({
      use: { sessions: 15 },
      from: 'car',
      events: ['a', 'b', 'c'],
    });
    // between two the middle of both: (5 + 3) / 2 a day
    expect(proposeUse('circuit', 1, 'km', 'car', past.slice(0, 2)).use).toEqual({ sessions: 4 });
  });

  test('proposeUse() takes what the other cars did where this one did none', () => {
    const past = [former('a', 'circuit', weekend, [sessions(10), sessions(6, 'b')])];
    expect(proposeUse('circuit', 1, 'km', 'new', past)).toEqual({
      use: { sessions: 4 },
      from: 'garage',
      events: ['a'],
    });
  });

  test.each(EVENT_SORTS)(
    'proposeUse() proposes the usual for a %s where nobody did one',
    (sort) => {
      const on = '2026-05-09';
      const done: Line[] = [
        sessions(9),
        { ...sessions(9), use: 'autocross' } as Line,
        { kind: 'strip', on, passes: [{}] },
        { kind: 'drive', use: 'touring', on, distance: km(70) },
      ];
      const others = EVENT_SORTS.filter((other) => other !== sort).map((other) =>
        former(other, other, oneDay, done),
      );
      expect(proposeUse(sort, 2, 'mi', 'car', [...others, former('n', sort, oneDay, [])])).toEqual({
        use: usualUse(sort, 2, 'mi'),
        from: 'practice',
        events: [],
      });
    },
  );

  test('proposeUse() counts launches, and passes where they were not counted apart', () => {
    const strip = (passes: number, launches?: number): Line => ({
      kind: 'strip',
      on: '2026-05-09',
      passes: Array.from({ length: passes }, () => ({})),
      ...(launches !== undefined && { launches }),
    });
    const past = [former('a', 'dragStrip', oneDay, [strip(4, 7), strip(2)])];
    expect(proposeUse('dragStrip', 1, 'km', 'car', past).use).toEqual({ launches: 9 });
  });

  test('proposeUse() proposes a distance in the unit asked for, and skips a trip without one', () => {
    const drive = (more: object): Line => ({
      kind: 'drive',
      use: 'touring',
      on: '2026-05-09',
      ...more,
    });
    const told = former('a', 'roadTrip', weekend, [drive({ distance: km(643.7376) })]);
    const untold = former('b', 'roadTrip', oneDay, [drive({ distance: km(10) }), drive({})]);
    expect(proposeUse('roadTrip', 1, 'mi', 'car', [told, untold])).toEqual({
      use: { distance: { text: '200', unit: 'mi' } },
      from: 'car',
      events: ['a'],
    });
    expect(proposeUse('roadTrip', 1, 'km', 'car', [told]).use.distance?.text).toBe('320');
    const short = former('c', 'meet', oneDay, [drive({ distance: km(43.4) })]);
    expect(proposeUse('meet', 1, 'km', 'car', [short]).use.distance?.text).toBe('43');
  });

  test('proposeUse() is a use that an event can hold, and asks more for more days', () => {
    const amounts = fc.array(
      fc.integer({ min: 0, max: 800 }).map((tenths) => tenths / 10),
      { maxLength: 6 },
    );
    fc.assert(
      fc.property(amounts, fc.integer({ min: 1, max: 9 }), (counts, days) => {
        const past = counts.map((count, at) =>
          former(`e${at}`, 'circuit', at % 2 === 0 ? oneDay : weekend, [sessions(count)]),
        );
        const { use } = proposeUse('circuit', days, 'km', 'car', past);
        expect(eventUse.parse(use)).toEqual(use);
        expect(Number.isInteger(use.sessions)).toBe(true);
        const longer = proposeUse('circuit', days + 1, 'km', 'car', past).use;
        expect(longer.sessions).toBeGreaterThanOrEqual(use.sessions ?? 0);
        const most = Math.max(
          ...past.map(({ event }, at) => (counts[at] ?? 0) / eventDays(event.event)),
        );
        if (counts.some((count) => count > 0))
          expect(use.sessions).toBeLessThanOrEqual(Math.max(1, Math.round(most * days)));
      }),
    );
  });
});
