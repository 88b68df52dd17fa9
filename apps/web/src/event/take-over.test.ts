import { weekday } from '@quartermark/engine/calendar';
import { eventInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { takeOver } from './take-over.ts';

const former = eventInput.parse({
  name: 'Circuit weekend',
  sort: 'circuit',
  start: '2026-06-06',
  end: '2026-06-07',
  place: 'the far bend',
  cars: ['a', 'gone'],
  use: { sessions: 8 },
  crew: [{ car: 'a', people: ['p', 'left'] }],
  travel: { trailered: ['a'] },
});
const garage = {
  today: '2026-09-01',
  unit: 'km',
  hasLeft: (id: string) => id === 'gone',
  isHere: (id: string) => id === 'p',
} as const;

test('takeOver() moves the days to the same days of the week a year later', () => {
  const { fields, asksDays } = takeOver(former, garage);
  expect([fields.start, fields.end]).toEqual(['2027-06-05', '2027-06-06']);
  expect(weekday(fields.start)).toBe(weekday(former.start));
  expect(asksDays).toBe(false);
});

test('takeOver() keeps what the event said and leaves out cars and people that have left', () => {
  const { fields, left } = takeOver(former, garage);
  expect(fields).toMatchObject({
    baseRevision: 0,
    name: 'Circuit weekend',
    place: 'the far bend',
    cars: ['a'],
    use: { sessions: '8' },
    crew: { a: ['p'] },
    travel: { trailered: ['a'] },
  });
  expect(left).toEqual(['gone']);
});

test('takeOver() never moves an event into the past: it asks for the days', () => {
  const { fields, asksDays } = takeOver(former, { ...garage, today: '2027-06-06' });
  expect([fields.start, fields.end]).toEqual(['', '']);
  expect(asksDays).toBe(true);
});

test('takeOver() leaves the last day of a single day empty', () => {
  const { end: _end, ...single } = former;
  expect(takeOver(single, { ...garage, today: '2027-06-05' }).fields).toMatchObject({
    start: '2027-06-05',
    end: '',
  });
});
