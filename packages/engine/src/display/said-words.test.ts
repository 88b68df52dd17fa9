import { expect, test } from 'vitest';
import type { JudgedLine, SaidTally } from '../said/result.ts';
import { saidAnswer, saidSentences } from './said-answer.ts';
import { firstToRunOutWords, happenedWords, saidThenWords } from './said-words.ts';

const SAID: JudgedLine['said'] = {
  car: 'c',
  item: 'i',
  saidOn: '2025-07-01',
  since: '2025-03-17',
  early: '2025-07-23',
  likely: '2025-08-16',
  late: '2026-01-13',
  binding: 'sessions',
  engineVersion: 3,
  afterwards: false,
};
const line = (more: Partial<JudgedLine>): JudgedLine => ({
  said: SAID,
  outcome: 'inside',
  reachedOn: null,
  doneOn: null,
  knownUntil: '2025-08-24',
  daysOff: null,
  daysOutside: null,
  atLeast: false,
  ...more,
});

test.each([
  [
    {},
    'On 1 July 2025 we said: likely by 16 August, could be as early as 23 July, nine times in ten by 13 January 2026.',
  ],
  [
    { afterwards: true, late: null },
    'For 1 July 2025, worked out afterwards from the log: likely by 16 August, could be as early as 23 July, perhaps not within three years.',
  ],
  [
    { early: '2025-07-01' },
    'On 1 July 2025 we said: likely by 16 August, could be due already, nine times in ten by 13 January 2026.',
  ],
  [
    { early: '2025-09-01', likely: '2025-09-01', late: '2025-09-01' },
    'On 1 July 2025 we said: due on 1 September, a day of the calendar.',
  ],
])('saidThenWords() of %j', (more, words) => {
  expect(saidThenWords({ ...SAID, ...more })).toBe(words);
});

test('firstToRunOutWords() names a measure, and hard use', () => {
  expect(firstToRunOutWords('sessions')).toBe('its sessions');
  expect(firstToRunOutWords('months:severe')).toBe('its months, by the schedule for hard use');
  expect(firstToRunOutWords(null)).toBeNull();
});

test.each<[Partial<JudgedLine>, string]>([
  [
    { reachedOn: '2025-08-02', daysOff: -14 },
    'A limit was reached on 2 August 2025, 14 days before the likely day.',
  ],
  [
    { reachedOn: '2025-08-16', daysOff: 0 },
    'A limit was reached on 16 August 2025, on the likely day.',
  ],
  [
    { outcome: 'earlier', reachedOn: '2025-07-20', daysOff: -27 },
    'A limit was reached on 20 July 2025, 27 days before the likely day.',
  ],
  [
    { outcome: 'later', reachedOn: '2025-08-17', daysOff: 1 },
    'A limit was reached on 17 August 2025, 1 day after the likely day.',
  ],
  [
    { outcome: 'later', knownUntil: '2026-02-01', daysOff: 169, atLeast: true },
    'No limit was reached by 1 February 2026, at least 169 days after the likely day.',
  ],
  [
    {
      outcome: 'later',
      knownUntil: '2026-02-01',
      doneOn: '2026-02-01',
      daysOff: 169,
      atLeast: true,
    },
    'No limit was reached by 1 February 2026, at least 169 days after the likely day, when it was done.',
  ],
  [{ outcome: 'open' }, 'No limit reached by 24 August 2025.'],
  [{ outcome: 'doneFirst', doneOn: '2025-08-01' }, 'It was done on 1 August 2025.'],
  [
    { outcome: 'notKnown' },
    'Part of the use it would take to tell is not in the log, or was not read since.',
  ],
  [{ outcome: 'changed' }, 'Its limits, or the service it counts from, are others now.'],
])('happenedWords() of %j', (more, words) => {
  expect(happenedWords(line(more))).toBe(words);
});

const TALLY: SaidTally = {
  inside: 12,
  verdicts: 14,
  earlier: 1,
  later: 1,
  byCalendar: 0,
  open: 0,
  doneFirst: 0,
  notKnown: 0,
  changed: 0,
  horizons: {
    under30: { inside: 0, verdicts: 0 },
    from30: { inside: 0, verdicts: 0 },
    over90: { inside: 0, verdicts: 0 },
  },
  tooNarrow: null,
};

test.each<[Partial<SaidTally>, string]>([
  [{}, 'Of 14 dates with an outcome 12 fell inside what was said.'],
  [{ inside: 14 }, 'Of 14 dates with an outcome all fell inside what was said.'],
  [{ inside: 0 }, 'Of 14 dates with an outcome none fell inside what was said.'],
  [{ verdicts: 1, inside: 1 }, 'The one date with an outcome fell inside what was said.'],
  [{ verdicts: 1, inside: 0 }, 'The one date with an outcome fell outside what was said.'],
  [{ verdicts: 0, inside: 0 }, 'No date that was said has an outcome yet.'],
])('saidAnswer() of %j', (more, words) => {
  expect(saidAnswer({ ...TALLY, ...more })).toBe(words);
});

const COUNTS = 'An item counts once between two services, by what was said the longest before.';

test('saidSentences() says how many missed on which side, and that eight in ten should hit', () => {
  expect(saidSentences(TALLY)).toEqual([
    'Eight in ten should fall inside.',
    '1 came earlier and 1 later.',
    COUNTS,
  ]);
});

test('saidSentences() says that fewer than ten are too few yet', () => {
  const few = { ...TALLY, verdicts: 9, inside: 9, earlier: 0, later: 0 };
  expect(saidSentences(few)).toEqual([
    'Eight in ten should fall inside. Fewer than ten outcomes are too few yet to say whether they do.',
    COUNTS,
  ]);
  expect(saidSentences({ ...few, verdicts: 0, inside: 0 })).toEqual([COUNTS]);
});

test('saidSentences() says what is too narrow, and by how much', () => {
  const narrow = {
    ...TALLY,
    inside: 7,
    earlier: 0,
    later: 7,
    tooNarrow: { days: 9, atLeast: false },
  };
  expect(saidSentences(narrow)[0]).toBe(
    'Eight in ten should fall inside. What is said is too narrow: with 9 days more at either end eight in ten would have been inside. Plan with that much to spare.',
  );
  expect(saidSentences({ ...narrow, tooNarrow: { days: 1, atLeast: true } })[0]).toContain(
    'with at least 1 day more at either end',
  );
});

test('saidSentences() says what is left out because it could not miss', () => {
  expect(saidSentences({ ...TALLY, byCalendar: 1 })).toContain(
    'One more was a day of the calendar that came as it must, and is not counted.',
  );
  expect(saidSentences({ ...TALLY, byCalendar: 5 })).toContain(
    '5 more were days of the calendar that came as they must, and are not counted.',
  );
});
