import { expect, test } from 'vitest';
import type { Outlook, RunsOut } from '../what-if/outlook.ts';
import { outlookMark, outlookSentences, workWords } from './outlook-words.ts';

const spoken = { asOf: '2026-06-01' };
const fluid: RunsOut = {
  id: 'fluid',
  name: 'Front brake fluid',
  how: 'likely',
  latestWork: '2026-06-12',
  notBefore: null,
  tooShort: false,
  parts: { kind: 'orderBy', day: '2026-06-05', feasible: true },
  leadDays: 7,
};
const outlook = (more: Partial<Outlook>): Outlook => ({
  id: 'e',
  runsOut: [],
  notKnown: [],
  lasts: 3,
  ...more,
});
const say = (more: Partial<Outlook>) => outlookSentences(outlook(more), spoken);

test('outlookSentences() says what runs out with the latest work and the order', () => {
  expect(say({ runsOut: [fluid] })).toEqual([
    'Likely to run out before the end: Front brake fluid (latest work Fri 12 June, order the parts by 5 June, they take 7 days).',
  ]);
});

test('outlookSentences() says what has run out first, and that nothing else known does', () => {
  const over: RunsOut = { ...fluid, how: 'already', latestWork: null, parts: null, name: 'Belts' };
  const could: RunsOut = { ...fluid, how: 'could', parts: null, name: 'Coolant' };
  expect(say({ runsOut: [over, could] })).toEqual([
    'Has run out already: Belts.',
    'Could run out before the end: Coolant (latest work Fri 12 June).',
  ]);
  expect(say({ runsOut: [over] })).toEqual([
    'Has run out already: Belts.',
    'Nothing else known does.',
  ]);
  expect(say({ runsOut: [over], lasts: 0 })).toEqual(['Has run out already: Belts.']);
});

test('outlookSentences() never calls good what nobody can say', () => {
  const notKnown: Outlook['notKnown'] = [
    { id: 'a', name: 'Coolant', reasonCode: 'noBaseline' },
    { id: 'b', name: 'Gearbox oil', reasonCode: 'lowerBound' },
  ];
  expect(say({})).toEqual(['Nothing known runs out before the end.']);
  const both = ['Not on record: Coolant.', 'History incomplete: Gearbox oil.'];
  expect(say({ notKnown })).toEqual(['Nothing known runs out before the end.', ...both]);
  expect(say({ notKnown, lasts: 0 })).toEqual(both);
  expect(say({ lasts: 0 })).toEqual(['Nothing is watched on it.']);
});

test('outlookMark() is that of the worst', () => {
  const notKnown: Outlook['notKnown'] = [{ id: 'a', name: 'Coolant', reasonCode: 'noBaseline' }];
  expect(outlookMark(outlook({}))).toBe('inLimits');
  expect(outlookMark(outlook({ notKnown }))).toBe('notOnRecord');
  expect(outlookMark(outlook({ lasts: 0 }))).toBe('notOnRecord');
  expect(outlookMark(outlook({ notKnown, runsOut: [fluid] }))).toBe('dueSoon');
  expect(outlookMark(outlook({ runsOut: [fluid, { ...fluid, how: 'already' }] }))).toBe('overdue');
});

test('workWords() says today, too early, too short and too late', () => {
  const words = (more: Partial<RunsOut>) => workWords({ ...fluid, parts: null, ...more }, spoken);
  expect(words({ latestWork: '2026-06-01' })).toBe('latest work today');
  expect(words({ notBefore: '2026-06-09' })).toBe(
    'latest work Fri 12 June, done before 9 June it would run out again before the end',
  );
  expect(words({ tooShort: true })).toBe(
    'latest work Fri 12 June, even work on the day before would not last to the end',
  );
  expect(words({ parts: { kind: 'orderBy', day: '2026-05-30', feasible: false } })).toBe(
    'latest work Fri 12 June, order the parts now, they take 7 days',
  );
  const ordered = (expected: string) =>
    words({ parts: { kind: 'ordered', order: { on: '2026-05-20', expected }, late: false } });
  expect(ordered('2026-06-12')).toBe(
    'latest work Fri 12 June, parts ordered 20 May, expected 12 June',
  );
  expect(ordered('2026-06-13')).toBe(
    'latest work Fri 12 June, parts ordered 20 May, expected 13 June, too late for it',
  );
});
