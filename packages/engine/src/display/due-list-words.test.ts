import { describe, expect, test } from 'vitest';
import {
  type DueListCounts,
  type DueListLine,
  dueGroup,
  dueLineWords,
  dueListSentences,
  duePartsWords,
  mondayOf,
} from './due-list-words.ts';

const asOf = '2026-06-15';
const spoken = { asOf };

/** Engine oil of a car in use, in limits, with 2,300 km left. */
function line(more: Partial<DueListLine> = {}): DueListLine {
  return {
    id: 'oil',
    name: 'Engine oil',
    state: 'fine',
    reasonCode: null,
    binding: 'km',
    limit: 10_000,
    remaining: 2_300,
    unit: 'km',
    day: null,
    dates: { early: null, likely: null, late: null },
    overdueSince: null,
    lastDone: '2026-01-05',
    leadDays: 0,
    parts: null,
    carId: 'c',
    carName: 'Brindle 2',
    carUnit: 'km',
    status: 'inUse',
    laidUp: false,
    asOf,
    ...more,
  };
}
const due = (early: string | null, likely: string | null, more: Partial<DueListLine> = {}) =>
  line({ early, likely, dates: { early, likely, late: null }, ...more });
const over = line({ state: 'overdue', remaining: -100, overdueSince: '2026-06-01' });

describe('dueGroup()', () => {
  const title = (one: DueListLine, order: 'likely' | 'early' | 'car' = 'likely') =>
    dueGroup(one, order, spoken).title;

  test('dueGroup() names the week by its Monday, by whichever day sorts', () => {
    expect(title(due('2026-06-10', '2026-06-21'))).toBe('Week of Mon 15 June');
    expect(title(due('2026-06-10', '2026-06-22'))).toBe('Week of Mon 22 June');
    expect(title(due('2026-06-10', '2026-06-22'), 'early')).toBe('Week of Mon 8 June');
    expect(mondayOf('2026-06-14')).toBe('2026-06-08');
  });

  test('dueGroup() names months from a quarter of a year ahead, and the end of the forecast', () => {
    expect(title(due(null, '2026-09-13'))).toBe('Week of Mon 7 September');
    expect(title(due(null, '2026-09-14'))).toBe('September 2026');
    expect(title(due(null, '2027-01-02'))).toBe('January 2027');
    expect(title(due(null, null))).toBe('Nothing likely before June 2029');
    expect(title(due(null, null), 'early')).toBe('Nothing before June 2029');
    expect(title(line({ state: null }))).toBe('No date yet');
  });

  test('dueGroup() keeps overdue, cars that are not in use and what is not on record apart', () => {
    expect(title(over)).toBe('Overdue');
    const laidUp = { status: 'laidUp', laidUp: true } as const;
    expect(title(line({ ...laidUp, state: 'overdue' }))).toBe('Before it wakes: laid-up cars');
    const unknown = { state: 'unknown', reasonCode: 'lowerBound' } as const;
    for (const order of ['likely', 'early', 'car'] as const)
      expect(title(due('2026-06-16', '2026-06-17', { ...unknown, ...laidUp }), order)).toBe(
        'Not on record, or only in part',
      );
  });

  test('dueGroup() by car is the car, with where it stands', () => {
    expect(title(over, 'car')).toBe('Brindle 2');
    expect(title(line({ status: 'laidUp', laidUp: true }), 'car')).toBe('Brindle 2, laid up');
  });
});

describe('dueLineWords()', () => {
  test('dueLineWords() says the early day however far off the likely one is', () => {
    expect(dueLineWords(due('2026-08-30', '2026-10-03'))).toEqual({
      mark: 'inLimits',
      word: 'In limits',
      detail: 'likely by Sat 3 October, could be as early as 30 August; 2,300 km left',
    });
  });

  test('dueLineWords() calls nothing overdue on a car that is in pieces or away', () => {
    expect(dueLineWords(over)).toMatchObject({ mark: 'overdue', word: 'Overdue' });
    for (const status of ['inPieces', 'away'] as const)
      expect(dueLineWords({ ...over, status })).toMatchObject({
        mark: 'beforeItWakes',
        word: 'Before its next drive',
      });
    expect(dueLineWords({ ...over, status: 'laidUp', laidUp: true }).word).toBe('Before it wakes');
  });
});

test('duePartsWords() tells of parts to order only where that is near, of an order always', () => {
  const parts = (day: string, more = {}) =>
    duePartsWords(line({ leadDays: 9, parts: { kind: 'orderBy', day, feasible: true }, ...more }));
  expect(parts('2026-07-15')).toBe('Order the parts by 15 July, they take 9 days.');
  expect(parts('2026-07-16')).toBeNull();
  expect(parts('2026-07-16', { state: 'dueSoon' })).not.toBeNull();
  const order = { on: '2026-06-01', expected: '2026-06-12' };
  expect(
    duePartsWords(line({ parts: { kind: 'ordered', order, late: false }, asOf: '2026-06-05' })),
  ).toBe('Parts ordered 1 June, expected 12 June.');
});

describe('dueListSentences()', () => {
  const NONE: DueListCounts = {
    overdue: 0,
    dueSoon: 0,
    unknown: 0,
    fine: 0,
    noDate: 0,
    apart: 0,
    carsToCome: 0,
  };
  const say = (soon: DueListLine[], counts: Partial<DueListCounts>, more = false) =>
    dueListSentences({ soon, more, before: '2026-06-30', counts: { ...NONE, ...counts } }, spoken);

  test('dueListSentences() counts what is likely due before the day and names the first', () => {
    const first = due('2026-06-17', '2026-06-20', { state: 'dueSoon' });
    const next = due('2026-06-18', '2026-06-29', { state: 'dueSoon' });
    const could = due('2026-06-19', '2026-06-30', { state: 'dueSoon' });
    expect(say([first, next, could], { dueSoon: 3, fine: 4 })).toEqual([
      'Two things are likely due before 30 June; the first is Engine oil of Brindle 2, likely by Sat 20 June, could be as early as 17 June.',
    ]);
    expect(say([first, next], { dueSoon: 3 }, true)[0]).toContain('At least 2 things are likely');
    expect(say([could], { dueSoon: 1 })).toEqual([
      'Nothing is likely due before 30 June, but one thing could be; the first is Engine oil of Brindle 2, likely by Tue 30 June, could be as early as 19 June.',
    ]);
    expect(say([], { fine: 4 })).toEqual(['Nothing known is due before 30 June.']);
  });

  test('dueListSentences() begins with what is overdue', () => {
    const first = due('2026-06-20', '2026-06-20', { state: 'dueSoon', name: 'Belts' });
    expect(say([over, first], { overdue: 1, dueSoon: 1 })).toEqual([
      'One thing is overdue and one likely due before 30 June.',
      'The first: Engine oil of Brindle 2.',
      'Then Belts of Brindle 2, likely by Sat 20 June.',
    ]);
    expect(say([over], { overdue: 2 })[0]).toBe(
      'Two things are overdue, nothing else known is due before 30 June.',
    );
  });

  test('dueListSentences() never lets what is not on record pass for nothing due', () => {
    expect(say([], { fine: 1, unknown: 2 })).toEqual([
      'Nothing known is due before 30 June.',
      'Two things are not on record, or only in part.',
    ]);
    expect(say([], { unknown: 1 })).toEqual(['One thing is not on record, or only in part.']);
    expect(say([], { carsToCome: 1 })).toEqual(['One car is still being worked out.']);
    expect(say([], { fine: 1, carsToCome: 2 })[1]).toBe('Two cars are still being worked out.');
    expect(say([], {})).toEqual(['Nothing is watched on any car yet.']);
    expect(say([], { apart: 3 })).toEqual(['What is watched is of cars that are not in use.']);
  });
});
