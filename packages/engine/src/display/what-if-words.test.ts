import { expect, test } from 'vitest';
import type { Outlook, RunsOut } from '../what-if/outlook.ts';
import type { WhatIf, WhatIfLine } from '../what-if/what-if.ts';
import type { DueLine } from './due-line.ts';
import { movedWords, sideWords, whatIfSentences } from './what-if-words.ts';

const asOf = '2026-06-15';
const due = (
  early: string | null,
  likely: string | null,
  more: Partial<DueLine> = {},
): DueLine => ({
  id: 'oil',
  name: 'Engine oil',
  state: 'fine',
  reasonCode: null,
  binding: 'km',
  limit: 10_000,
  remaining: 1_200,
  unit: 'km',
  day: null,
  early,
  likely,
  dates: { early, likely, late: null },
  overdueSince: null,
  lastDone: '2026-01-05',
  leadDays: 0,
  parts: null,
  ...more,
});
const line = (before: DueLine, after: DueLine, name = 'Engine oil'): WhatIfLine => ({
  id: name,
  name,
  before,
  after,
  changed: JSON.stringify(before) !== JSON.stringify(after),
});
const far = due('2026-08-30', '2026-10-03');
const near = due('2026-06-14', '2026-06-20');
const whatIf = (lines: WhatIfLine[], outlooks: Outlook[] = []): WhatIf => ({
  asOf,
  laidUp: false,
  lines,
  outlooks,
});
const say = (...of: Parameters<typeof whatIf>) => whatIfSentences(whatIf(...of), { asOf });
const fluid: RunsOut = {
  id: 'fluid',
  name: 'Brake fluid',
  how: 'likely',
  latestWork: '2026-06-19',
  notBefore: null,
  tooShort: false,
  parts: null,
  leadDays: 0,
};
const outlook = (runsOut: RunsOut[]): Outlook => ({
  id: 'added-1',
  runsOut,
  notKnown: [],
  lasts: 0,
});

test('whatIfSentences() begins with what runs out and by when its work is to be done', () => {
  expect(say([line(far, near)], [outlook([fluid])])).toEqual([
    'Brake fluid is likely to run out before the end of it: latest work Fri 19 June.',
  ]);
  const more = ['Belts', 'Coolant'].map((name) => ({
    ...fluid,
    id: name,
    name,
    how: 'could' as const,
  }));
  expect(say([line(far, near)], [outlook([fluid, ...more])])[1]).toBe(
    'Two more may run out before the end: Belts and Coolant.',
  );
});

test('whatIfSentences() tells which dates move where nothing runs out, the nearest first', () => {
  const other = line(due('2026-07-01', '2026-07-04'), due('2026-07-01', '2026-07-03'), 'Belts');
  expect(say([other, line(far, near)])).toEqual([
    'Two dates move; the first is that of Engine oil, likely by Sat 20 June instead of Sat 3 October.',
  ]);
  expect(say([other])[0]).toBe(
    'One date moves; the first is that of Belts, likely by Fri 3 July instead of Sat 4 July.',
  );
  expect(say([line(due(null, null), near)])[0]).toContain('instead of not within three years');
  const early = line(due('2026-07-01', '2026-07-04'), due('2026-06-28', '2026-07-04'));
  expect(say([early])[0]).toContain('which could be as early as Sun 28 June');
});

test('whatIfSentences() says plainly that nothing moves, and what nobody can say', () => {
  const unknown = due(null, null, { state: 'unknown', reasonCode: 'noBaseline' });
  expect(say([line(far, far), line(unknown, unknown, 'Coolant')])).toEqual([
    'No date that is known would be another.',
    'Not on record, or only in part: Coolant.',
  ]);
  expect(say([])).toEqual(['Nothing is watched on this car, so none of its dates can be told.']);
  const over = { ...fluid, how: 'already' as const, latestWork: null };
  expect(say([line(far, far)], [outlook([over])])).toEqual([
    'No date that is known would be another.',
    'Has run out already: Brake fluid.',
  ]);
});

test('movedWords() counts the days, and says nothing where one side is not known', () => {
  expect(movedWords(line(due(null, '2026-06-26'), near))).toBe('6 days sooner');
  expect(movedWords(line(near, due(null, '2026-06-21')))).toBe('1 day later');
  expect(movedWords(line(near, near))).toBeNull();
  expect(movedWords(line(due(null, null), near))).toBeNull();
});

test('sideWords() says both days of what is near and of what is far off', () => {
  const on = { unit: 'km' as const, laidUp: false, asOf };
  expect(sideWords(far, on).detail).toBe(
    'likely by Sat 3 October, could be as early as 30 August; 1,200 km left',
  );
  expect(sideWords({ ...near, state: 'dueSoon' }, on).word).toBe('Due soon');
  const over = due(null, null, { state: 'overdue', remaining: -100, day: '2026-06-01' });
  const { likely: _, early: __, ...overdue } = over;
  expect(sideWords(overdue, on)).toEqual({
    mark: 'overdue',
    word: 'Overdue',
    detail: '10,000 km reached on 1 June 2026, 100 km over',
  });
});
