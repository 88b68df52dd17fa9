import { eventInput, WEIGHED_NEEDS } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { emptyEvent, eventFields, eventLines, readEvent } from './event-fields.ts';

const full = eventInput.parse({
  name: 'Four days over the passes',
  sort: 'roadTrip',
  start: '2026-07-24',
  end: '2026-07-27',
  place: 'the north road',
  cars: ['a', 'b'],
  use: { distance: { text: '1,100', unit: 'km' }, hours: 20 },
  attend: 0.5,
  crew: [{ car: 'b', people: ['p'] }],
  travel: { distance: { text: '80', unit: 'km' }, trailered: ['a'] },
  requirements: {
    weights: Object.fromEntries(WEIGHED_NEEDS.map((need) => [need, 'advice'])),
    limitsOf: [],
    watched: [],
    oilFloor: 0.5,
    odometerDays: 30,
    inspectionDays: 365,
  },
});

test('readEvent() gives back what eventFields() was made of', () => {
  expect(readEvent(eventFields(full, 3, 'km'))).toEqual({ event: full });
});

test('readEvent() leaves out what was left empty', () => {
  const fields = {
    ...emptyEvent('km'),
    name: 'Meet',
    sort: 'meet',
    start: '2026-07-24',
    place: ' ',
  } as const;
  expect(readEvent(fields)).toEqual({
    event: { name: 'Meet', sort: 'meet', start: '2026-07-24', cars: [], attend: 0.9 },
  });
});

test('readEvent() says what is missing or out of order', () => {
  expect(readEvent(emptyEvent('km'))).toEqual({
    problems: {
      'event.name': 'Fill in a name, such as circuit day.',
      'event.start': 'Choose the day it begins.',
    },
  });
  const turned = { ...eventFields(full, 1, 'km'), end: '2026-07-01' };
  expect(readEvent(turned)).toHaveProperty(['problems', 'event.end']);
});

test('eventLines() says each thing once, cars by their names', () => {
  const names = { car: (id: string) => `car ${id}`, person: (id: string) => `person ${id}` };
  const words = eventLines(full, names).map((line) => line.words);
  expect(words).toEqual([
    'Four days over the passes',
    'Road trip',
    '24 to 27 July 2026',
    'the north road',
    'car a, car b',
    'car b: person p',
    '80 km each way; car a on a trailer, others driven',
    '1,100 km, 20 h',
    'perhaps, one time in two',
    expect.stringMatching(/^its own\. Blocking: nothing\. Advice: Here and in use, /),
  ]);
});
