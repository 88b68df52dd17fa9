import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays } from '../calendar/add.ts';
import type { JudgedLine, SaidOutcome } from './result.ts';
import { countingLines, tallySaid } from './tally-said.ts';

type Short = {
  outcome?: SaidOutcome;
  on?: string;
  ahead?: number;
  outside?: number;
  car?: string;
  item?: string;
  since?: string;
  oneDay?: boolean;
  atLeast?: boolean;
};

/** A line said `ahead` days before its likely day; `outside` are the days it missed by. */
function line(short: Short): JudgedLine {
  const { outcome = 'inside', on = '2026-01-05', ahead = 60, outside = 0 } = short;
  const { car = 'car', item = 'oil', since = '2025-11-01', oneDay = false } = short;
  const likely = addDays(on, ahead);
  const verdict = outcome === 'inside' || outcome === 'earlier' || outcome === 'later';
  return {
    said: {
      car,
      item,
      saidOn: on,
      since,
      early: oneDay ? likely : addDays(likely, -5),
      likely,
      late: oneDay ? likely : addDays(likely, 5),
      binding: 'km',
      engineVersion: 3,
      afterwards: false,
    },
    outcome,
    reachedOn: null,
    doneOn: null,
    knownUntil: on,
    daysOff: verdict ? 0 : null,
    daysOutside: verdict ? outside : null,
    atLeast: short.atLeast ?? false,
  };
}

/** Verdicts of as many items. */
const items = (count: number, short: Short) =>
  Array.from({ length: count }, (_, at) => line({ ...short, item: `${short.outcome} ${at}` }));

test('tallySaid() counts an item once between two services, by what was said the longest before', () => {
  const weeks = Array.from({ length: 20 }, (_, week) =>
    line({
      on: addDays('2026-01-05', 7 * week),
      outcome: week === 0 ? 'earlier' : 'inside',
      outside: 3,
    }),
  );
  const tally = tallySaid(weeks.toReversed());
  expect(tally).toMatchObject({ verdicts: 1, inside: 0, earlier: 1 });
  const next = line({ since: '2026-05-20', on: '2026-05-25' });
  expect(tallySaid([...weeks, next])).toMatchObject({ verdicts: 2, inside: 1, earlier: 1 });
  expect(tallySaid([...weeks, line({ car: 'other' })])).toMatchObject({ verdicts: 2, inside: 1 });
});

test('tallySaid() counts once in each horizon, with what was said the longest before there', () => {
  const said = [
    line({ on: '2026-01-01', ahead: 91, outcome: 'earlier', outside: 9 }),
    line({ on: '2026-01-08', ahead: 90, outcome: 'earlier', outside: 2 }),
    line({ on: '2026-02-08', ahead: 30 }),
    line({ on: '2026-03-08', ahead: 29 }),
    line({ on: '2026-03-15', ahead: 1 }),
  ];
  expect(tallySaid(said)).toMatchObject({
    verdicts: 1,
    horizons: {
      over90: { verdicts: 1, inside: 0 },
      from30: { verdicts: 1, inside: 0 },
      under30: { verdicts: 1, inside: 1 },
    },
  });
});

test('tallySaid() gives a share only to what has a verdict', () => {
  const others = (['open', 'doneFirst', 'notKnown', 'changed'] as const).map((outcome) =>
    line({ outcome, item: outcome }),
  );
  expect(tallySaid([...others, line({})])).toMatchObject({
    verdicts: 1,
    inside: 1,
    open: 1,
    doneFirst: 1,
    notKnown: 1,
    changed: 1,
  });
});

test('tallySaid() takes what still compares where an earlier line no longer does', () => {
  const said = [line({ outcome: 'changed', on: '2026-01-05' }), line({ on: '2026-02-02' })];
  for (const order of [said, said.toReversed()])
    expect(tallySaid(order)).toMatchObject({ verdicts: 1, inside: 1, changed: 0 });
});

test('tallySaid() does not count a day of the calendar that came as it must, but does count its miss', () => {
  const came = items(3, { oneDay: true });
  expect(tallySaid(came)).toMatchObject({ verdicts: 0, inside: 0, byCalendar: 3 });
  const missed = line({ oneDay: true, outcome: 'earlier', outside: 4, item: 'missed' });
  expect(tallySaid([...came, missed])).toMatchObject({ verdicts: 1, earlier: 1, byCalendar: 3 });
});

test('tallySaid() says what is too narrow from ten verdicts on, below three in four', () => {
  const of = (inside: number, ...outside: number[]) =>
    tallySaid([
      ...items(inside, { outcome: 'inside' }),
      ...outside.map((days, at) => line({ outcome: 'later', outside: days, item: `late ${at}` })),
    ]).tooNarrow;
  expect(of(9)).toBeNull();
  // 9 verdicts, 4 inside: too few to say
  expect(of(4, 1, 2, 3, 4, 5)).toBeNull();
  // 3 in 4 of twelve is enough
  expect(of(9, 1, 2, 3)).toBeNull();
  // 7 of 10: the eighth in order needs 6 days
  expect(of(7, 30, 6, 9)).toEqual({ days: 6, atLeast: false });
  // 5 of 11: nine of eleven are 8 in 10
  expect(of(5, 1, 2, 3, 4, 50, 60)).toEqual({ days: 4, atLeast: false });
});

test('tallySaid() says "at least" where it would take what is not reached yet', () => {
  const late = (days: number, atLeast: boolean, item: string) =>
    line({ outcome: 'later', outside: days, atLeast, item });
  const inside = items(7, { outcome: 'inside' });
  const near = [late(2, true, 'a'), late(20, false, 'b'), late(30, false, 'c')];
  expect(tallySaid([...inside, ...near]).tooNarrow).toEqual({ days: 2, atLeast: true });
  const far = [late(2, false, 'a'), late(20, true, 'b'), late(30, true, 'c')];
  expect(tallySaid([...inside, ...far]).tooNarrow).toEqual({ days: 2, atLeast: false });
});

const arbitraryLine = fc
  .record({
    outcome: fc.constantFrom<SaidOutcome>(
      'inside',
      'earlier',
      'later',
      'open',
      'doneFirst',
      'changed',
    ),
    on: fc.integer({ min: 0, max: 40 }).map((week) => addDays('2026-01-05', 7 * week)),
    ahead: fc.integer({ min: 0, max: 200 }),
    outside: fc.integer({ min: 1, max: 30 }),
    item: fc.constantFrom('oil', 'pads', 'plugs'),
    since: fc.constantFrom('2025-11-01', '2025-12-01'),
  })
  .map((short) => line({ ...short, outside: short.outcome === 'inside' ? 0 : short.outside }));

test('tallySaid() of the lines that count is that of all, in whatever order they come', () => {
  // one line an item and week, as the table holds them
  const week = ({ said }: JudgedLine) => `${said.item} ${said.since} ${said.saidOn}`;
  fc.assert(
    fc.property(fc.uniqueArray(arbitraryLine, { selector: week, maxLength: 60 }), (lines) => {
      const tally = tallySaid(lines);
      expect(tallySaid(countingLines(lines.toReversed()))).toEqual(tally);
      expect(countingLines(lines).length).toBeLessThanOrEqual(18);
      const { inside, earlier, later, byCalendar, verdicts } = tally;
      expect(inside + earlier + later).toBe(verdicts);
      expect(byCalendar).toBe(0);
    }),
  );
});
