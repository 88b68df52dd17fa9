import { expect, test } from 'vitest';
import { attendWords, countedSentence, countedWords, countsAhead } from './planned-use-words.ts';

const day = { sort: 'circuit', cars: ['a'], use: { sessions: 4 }, attend: 0.9 } as const;

test('attendWords() says a number in words, one that has none too', () => {
  expect(attendWords(1)).toBe('certain');
  expect(attendWords(0.9)).toBe('likely, nine times in ten');
  expect(attendWords(0.5)).toBe('perhaps, one time in two');
  expect(attendWords(0.75)).toBe('about 75 times in a hundred');
});

test('countedSentence() says what counts, and what follows from it', () => {
  expect(countedSentence({ ...day, cars: ['a'] }, 'km')).toBe(
    'Counted ahead for the car that goes: 4 sessions (from that follow about 160 km and 1.6 h); likely, nine times in ten.',
  );
  const trip = { distance: { text: '600', unit: 'mi' } } as const;
  expect(countedSentence({ sort: 'roadTrip', cars: ['a', 'b'], use: trip, attend: 1 }, 'km')).toBe(
    'Counted ahead for each car that goes: 600 mi; certain.',
  );
});

test('countedSentence() asks for the cars, then for what they do', () => {
  expect(countedSentence({ ...day, cars: [] }, 'km')).toBe(
    'Name the cars, so that it counts for them.',
  );
  const nothing = { ...day, cars: ['a'], use: { sessions: 0 } };
  expect(countedSentence(nothing, 'km')).toContain('Nothing is counted ahead');
});

test('countedWords() never lets an event seem to count that does not', () => {
  expect(countedWords({ ...day, cars: ['a'] })).toContain('4 sessions, likely');
  expect(countedWords({ ...day, cars: [] })).toBe('Counts for no car’s dates');
  expect(countsAhead({ cars: ['a'], use: undefined })).toBe(false);
  expect(countsAhead({ cars: ['a'], use: { distance: { text: '0', unit: 'km' } } })).toBe(false);
});
