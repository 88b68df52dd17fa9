import { describe, expect, test } from 'vitest';
import { carBook, type Line } from '../../../test/car-book.ts';
import { eventInput } from '../../log/event.ts';
import { pastEventsOf } from './past-events-of.ts';

const today = '2026-06-15';
const circuit = (id: string, start: string, end?: string, cars = ['car']) => ({
  id,
  event: eventInput.parse({ name: `Day ${id}`, sort: 'circuit', start, ...(end && { end }), cars }),
});
const past = (events: ReturnType<typeof circuit>[], lines: readonly Line[] = []) =>
  pastEventsOf('car', events, carBook(lines).entries, today);

describe('pastEventsOf()', () => {
  test('pastEventsOf() looks back 60 days from yesterday, the last first', () => {
    const events = [
      circuit('old', '2026-04-15'),
      circuit('oldest', '2026-04-16'),
      circuit('last', '2026-06-13', '2026-06-14'),
      circuit('running', '2026-06-14', '2026-06-15'),
      circuit('not mine', '2026-06-01', undefined, ['another']),
      circuit('open', '2026-06-01', undefined, []),
    ];
    const own = { sort: 'circuit', onRecord: false };
    expect(past(events)).toEqual([
      { id: 'last', name: 'Day last', start: '2026-06-13', end: '2026-06-14', ...own },
      { id: 'oldest', name: 'Day oldest', start: '2026-04-16', end: '2026-04-16', ...own },
    ]);
  });

  test('pastEventsOf() knows an event by its use', () => {
    const use: Line = { kind: 'session', use: 'circuit', on: '2026-06-01' };
    const events = [circuit('e', '2026-06-01')];
    expect(past(events, [use])).toMatchObject([{ onRecord: true }]);
    expect(past(events, [{ ...use, car: 'another' }])).toMatchObject([{ onRecord: false }]);
    expect(past(events, [{ ...use, removed: true }])).toMatchObject([{ onRecord: false }]);
  });

  test('pastEventsOf() knows an event by the answer that the car did not go', () => {
    const answer: Line = { kind: 'answer', notice: 'e', answer: 'did not go', on: '2026-06-02' };
    const events = [circuit('e', '2026-06-01'), circuit('f', '2026-06-08')];
    expect(past(events, [answer]).map(({ id, onRecord }) => [id, onRecord])).toEqual([
      ['f', false],
      ['e', true],
    ]);
    expect(past(events, [{ ...answer, car: 'another' }])[1]).toMatchObject({ onRecord: false });
    expect(past(events, [{ ...answer, removed: true }])[1]).toMatchObject({ onRecord: false });
  });
});
