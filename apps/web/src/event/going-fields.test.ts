import { expect, test } from 'vitest';
import { crewFields, readCrew, readTravel, travelFields } from './going-fields.ts';
import { crewWords, travelWords } from './going-words.ts';

const cars = ['a', 'b'];
const crew = [{ car: 'a', people: ['p', 'q'] }];
const travel = { distance: { text: '1,20', unit: 'mi' as const }, trailered: ['b'] };

test('readCrew() gives back what crewFields() was made of, and leaves out cars that do not go', () => {
  const fields = { ...crewFields({ crew }), gone: ['p'], b: [] };
  expect(readCrew({ cars, crew: fields })).toEqual(crew);
  expect(readCrew({ cars: ['b'], crew: fields })).toBeUndefined();
});

test('readTravel() gives back what travelFields() was made of, and leaves out cars that do not go', () => {
  const fields = travelFields({ travel }, 'km');
  expect(readTravel({ cars, travel: fields }, {})).toEqual(travel);
  expect(readTravel({ cars: ['a'], travel: fields }, {})).toEqual({ ...travel, trailered: [] });
  expect(readTravel({ cars, travel: travelFields({}, 'km') }, {})).toBeUndefined();
});

test('readTravel() says beside the field what is no distance', () => {
  const problems = {};
  readTravel({ cars, travel: { distance: 'far', unit: 'km', trailered: [] } }, problems);
  expect(problems).toEqual({
    'event.travel.distance.text':
      'Distance: "far" is not a number; write digits with one decimal point, such as 12.5',
  });
});

const car = (id: string) => `car ${id}`;

test('crewWords() names who drives what', () => {
  expect(crewWords({ crew }, car, (id) => id)).toBe('car a: p, q');
  expect(crewWords({}, car, car)).toBe('not said yet');
});

test.each([
  [undefined, 'not said yet'],
  [{ trailered: [] }, 'distance not said; driven'],
  [travel, '1,20 mi each way; car b on a trailer, others driven'],
  [{ ...travel, trailered: ['a', 'b'] }, '1,20 mi each way; car a, car b on a trailer'],
])('travelWords() of %j', (way, words) => {
  expect(travelWords({ cars, travel: way }, car)).toBe(words);
});
