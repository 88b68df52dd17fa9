import { expect, test } from 'vitest';
import { proposalWords, proposedTexts } from './proposal-words.ts';

test.each([
  [
    { use: { sessions: 10 }, from: 'car', events: ['a', 'b', 'c'] },
    'circuit',
    2,
    'Finch’s last three circuit days: 5 sessions a day.',
  ],
  [
    { use: { launches: 7 }, from: 'garage', events: ['a'] },
    'dragStrip',
    1,
    'This garage’s last drag-strip day: 7 launches a day.',
  ],
  [
    { use: { sessions: 7 }, from: 'car', events: ['a', 'b'] },
    'autocross',
    2,
    'Finch’s last two autocrosses: 7 sessions in 2 days.',
  ],
  [
    { use: { distance: { text: '750', unit: 'km' } }, from: 'practice', events: [] },
    'roadTrip',
    3,
    'Common practice, no source: 250 km a day.',
  ],
] as const)('proposalWords() of %j', (proposal, sort, days, words) => {
  expect(proposalWords({ ...proposal, events: [...proposal.events] }, sort, days, 'Finch')).toBe(
    words,
  );
});

test('proposedTexts() fills in each measure of the sort, and empties what is not proposed', () => {
  expect(proposedTexts({ sessions: 10 }, 'circuit')).toEqual({
    sessions: '10',
    distance: '',
    hours: '',
  });
});
