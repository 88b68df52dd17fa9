import { describe, expect, test } from 'vitest';
import { carBook, km, type Line } from '../../../test/car-book.ts';
import { type EventDraft, eventInput } from '../../log/event.ts';
import { type DatedEvent, usesOfEvent } from './uses-of-event.ts';

const dated = (id: string, more: Partial<EventDraft> = {}): DatedEvent => ({
  id,
  event: eventInput.parse({
    name: id,
    sort: 'circuit',
    start: '2026-05-09',
    end: '2026-05-10',
    cars: ['car'],
    ...more,
  }),
});
const session = (on: string, more: object = {}): Line => ({
  kind: 'session',
  use: 'circuit',
  on,
  ...more,
});
const idsOf = (event: DatedEvent, lines: readonly Line[], others: readonly DatedEvent[] = []) =>
  usesOfEvent(event, carBook(lines).entries, others).map(({ id }) => id);

describe('usesOfEvent()', () => {
  test('usesOfEvent() takes what was done on its days, the first and the last among them', () => {
    const lines = ['2026-05-08', '2026-05-09', '2026-05-10', '2026-05-11'].map((on) => session(on));
    expect(idsOf(dated('e'), lines)).toEqual(['e1', 'e2']);
  });

  test('usesOfEvent() takes what an entry says of its event, whatever its day', () => {
    const lines = [
      session('2026-05-20', { event: 'e' }),
      session('2026-05-09', { event: 'other' }),
      session('2026-05-09', { use: 'autocross', event: 'e' }),
    ];
    expect(idsOf(dated('e'), lines)).toEqual(['e2', 'e0']);
  });

  test('usesOfEvent() takes no other class, car, kind, and nothing that was removed', () => {
    const lines: Line[] = [
      session('2026-05-09', { use: 'autocross' }),
      session('2026-05-09', { car: 'another' }),
      { kind: 'note', note: 'wet', on: '2026-05-09' },
      session('2026-05-09', { removed: true }),
      { kind: 'drive', use: 'road', on: '2026-05-09' },
      { kind: 'strip', passes: [{}], on: '2026-05-09' },
    ];
    expect(idsOf(dated('e'), lines)).toEqual([]);
    expect(idsOf(dated('s', { sort: 'dragStrip' }), lines)).toEqual(['e5']);
  });

  test('usesOfEvent() takes neither of two events that fit as well', () => {
    const lines = [session('2026-05-10')];
    const twin = dated('twin', { start: '2026-05-10' });
    expect(idsOf(dated('e'), lines, [dated('e'), twin])).toEqual([]);
    const elsewhere = dated('f', { start: '2026-05-11', end: '2026-05-12' });
    expect(idsOf(dated('e'), lines, [dated('e'), elsewhere])).toEqual(['e0']);
  });

  test('usesOfEvent() prefers an event that names the car to one that names none', () => {
    const lines = [session('2026-05-10')];
    const open = dated('open', { cars: [] });
    expect(idsOf(dated('e'), lines, [open])).toEqual(['e0']);
    expect(idsOf(open, lines, [dated('e')])).toEqual([]);
    expect(idsOf(open, lines, [dated('e', { cars: ['another'] })])).toEqual(['e0']);
  });

  test('usesOfEvent() takes a road trip that runs into its days, and what was planned on them', () => {
    const trip: Line = {
      kind: 'drive',
      use: 'touring',
      distance: km(900),
      on: '2026-05-07',
      until: '2026-05-09',
    };
    expect(idsOf(dated('t', { sort: 'roadTrip' }), [trip])).toEqual(['e0']);
    const moved = session('2026-05-17', { plannedOn: '2026-05-10' });
    expect(idsOf(dated('e'), [moved])).toEqual(['e0']);
  });
});
