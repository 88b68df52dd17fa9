import { eventInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { emptyEvent, eventFields, readEvent } from './event-fields.ts';
import { shownAmount } from './planned-use-fields.ts';

const circuit = { ...emptyEvent('km'), name: 'Day', start: '2026-06-20' };
const withUse = (fields: typeof circuit, use: Partial<(typeof circuit)['use']>) => ({
  ...fields,
  use: { ...fields.use, ...use },
});

test('shownAmount() proposes what is usual for the sort and the days until something is typed', () => {
  expect(shownAmount(circuit, 'sessions')).toBe('4');
  expect(shownAmount({ ...circuit, end: '2026-06-21' }, 'sessions')).toBe('8');
  expect(shownAmount({ ...circuit, sort: 'dragStrip' }, 'launches')).toBe('6');
  expect(shownAmount({ ...circuit, sort: 'roadTrip', end: '2026-06-23' }, 'distance')).toBe('1000');
  expect(shownAmount(circuit, 'distance')).toBe('');
  const typed = withUse({ ...circuit, end: '2026-06-21' }, { sessions: '5' });
  expect(shownAmount(typed, 'sessions')).toBe('5');
  expect(shownAmount(withUse(circuit, { sessions: '' }), 'sessions')).toBe('');
});

test('readEvent() takes the proposal that was left standing, and nothing where it was taken out', () => {
  expect(readEvent(circuit)).toMatchObject({ event: { use: { sessions: 4 } } });
  const read = readEvent(withUse(circuit, { sessions: '' }));
  expect(read).toHaveProperty('event');
  expect(read).not.toHaveProperty(['event', 'use']);
});

test('readEvent() leaves out what is not counted at events of the sort', () => {
  const changed = withUse({ ...circuit, sort: 'dragStrip' }, { sessions: '5', hours: '2' });
  expect(readEvent(changed)).toMatchObject({ event: { use: { launches: 6 } } });
  expect(readEvent(changed)).not.toHaveProperty(['event', 'use', 'sessions']);
});

test('readEvent() says of each amount that cannot be what is wrong, by its field', () => {
  expect(readEvent(withUse(circuit, { sessions: 'four' }))).toHaveProperty([
    'problems',
    'event.use.sessions',
  ]);
  expect(readEvent(withUse(circuit, { sessions: '-1' }))).toHaveProperty([
    'problems',
    'event.use.sessions',
  ]);
  expect(readEvent(withUse(circuit, { distance: '90000' }))).toHaveProperty([
    'problems',
    'event.use.distance.text',
  ]);
});

test('eventFields() shows nothing usual for an event that was stored without it', () => {
  const stored = eventInput.parse({ name: 'Day', sort: 'circuit', start: '2026-06-20' });
  const fields = eventFields(stored, 1, 'km');
  expect(shownAmount(fields, 'sessions')).toBe('');
  expect(readEvent(fields)).toEqual({ event: stored });
});
