import { expect, test } from 'vitest';
import { carBook, km, type Line } from '../../test/car-book.ts';
import { conditionWords, storyWords, verdictWords } from '../display/oil-story-words.ts';
import type { BookDraft } from '../log/book.ts';
import { analyseBook } from './analyse-book.ts';
import { oilStory } from './oil-story.ts';

type More = { condition?: 'cold' | 'hotIdle' | 'hotStopped'; minutes?: number };
const check = (on: string, odo: number, fraction: number, more: More = {}): Line => ({
  kind: 'oilCheck',
  on,
  odometer: km(odo),
  level: { how: 'fraction', fraction, step: 0.25 },
  ...(more.condition && {
    condition: {
      state: more.condition,
      ...(more.minutes !== undefined && { minutesAfterStop: more.minutes }),
    },
  }),
});
const LINES: Line[] = [
  check('2026-03-01', 40_000, 1),
  check('2026-03-20', 40_900, 0.75),
  { kind: 'session', on: '2026-04-01', use: 'circuit', sessions: 4 },
  check('2026-04-02', 41_400, 0.25),
  { kind: 'oilTopUp', on: '2026-04-02', time: '18:00', volume: { text: '0.5', unit: 'l' } },
  { kind: 'repair', on: '2026-04-10', text: 'Valve seals', affectsOilUse: true },
  check('2026-04-20', 41_900, 0.75),
  { kind: 'oilChange', on: '2026-05-01', odometer: km(42_300), filterRenewed: true },
  check('2026-06-12', 42_900, 0.75),
];
const storyOf = (lines: readonly Line[], profile: BookDraft['car']['profile'] = { oilSpanL: 1 }) =>
  oilStory(carBook(lines, { profile }));

test('oilStory() tells what happened to the oil in order, and leaves out what only was driven', () => {
  const { entries, totalKm, spanL } = storyOf(LINES);
  expect(entries.map(({ what }) => what)).toEqual([
    'reading',
    'reading',
    'reading',
    'topUp',
    'repair',
    'reading',
    'change',
    'reading',
  ]);
  expect(entries[3]).toMatchObject({ entry: 'e4', on: '2026-04-02', addedL: 0.5, levels: [] });
  expect(totalKm).toBe(2900);
  expect(spanL).toBe(1);
});

test('oilStory() has the level higher after a bottle, and close to MAX after a change', () => {
  const { entries } = storyOf(LINES);
  const [bottle, change] = [entries[3], entries[6]];
  expect((bottle?.after.likely ?? 0) - (bottle?.before.likely ?? 0)).toBeCloseTo(0.5, 1);
  expect(change?.after.likely).toBeGreaterThan(-0.2);
  for (const { after } of entries) {
    expect(after.low).toBeLessThan(after.likely);
    expect(after.high).toBeGreaterThan(after.likely);
  }
});

test('oilStory() knows no rate at first, road before hard use, and ends on today’s', () => {
  const { entries } = storyOf(LINES);
  expect(entries[0]?.rates).toEqual({ road: null, hard: null });
  const last = entries.at(-1)?.rates;
  const { roadRate } = analyseBook(carBook(LINES, { profile: { oilSpanL: 1 } })).oil;
  // since the last entry a few days of driving were expected
  expect(last?.road?.likely).toBeCloseTo(roadRate.p50, 2);
  expect(last?.hard?.likely).toBeGreaterThan(last?.road?.likely ?? 0);
  const roadOnly = storyOf(LINES.filter(({ kind }) => kind !== 'session'));
  expect(roadOnly.entries.at(-1)?.rates?.hard).toBeNull();
});

test('oilStory() judges how a level was read, and says so in words', () => {
  const dry = { oilSpanL: 1, sump: 'dry' as const };
  const cold = { condition: 'cold' as const };
  const { entries } = storyOf(
    [
      check('2026-03-01', 40_000, 1),
      check('2026-03-02', 40_010, 0.4, cold),
      check('2026-03-03', 40_020, 0.4, cold),
    ],
    dry,
  );
  const words = entries.map((entry) => verdictWords(entry, 'l').join(' '));
  expect(words[0]).toBe('');
  expect(words[1]).toContain('counts for little, being the first since a good one');
  expect(words[2]).toContain('Off the car’s procedure: listed, not counted.');
  expect(entries.map((entry) => conditionWords(entry.condition))).toEqual([null, 'cold', 'cold']);
});

test('oilStory() corrects a cold level of a wet sump, and takes an early one for less', () => {
  const profile = {
    oilSpanL: 1,
    oilCapacityL: 6,
    sump: 'wet' as const,
    dipstick: { state: 'hotStopped' as const, minutesAfterStop: 10 },
  };
  const { entries } = storyOf(
    [
      check('2026-03-01', 40_000, 0.5, { condition: 'cold' }),
      check('2026-03-02', 40_010, 0.5, { condition: 'hotStopped', minutes: 2 }),
    ],
    profile,
  );
  // 0.0007 / K * 6 L * 70 K = 0.294 L
  expect(entries[0]?.levels[0]?.correctionL).toBeCloseTo(0.294, 9);
  const words = entries.map((entry) => verdictWords(entry, 'l').join(' '));
  expect(words[0]).toContain('taken as 0.3 L more');
  expect(words[1]).toContain('Read early after the stop');
  expect(conditionWords(entries[1]?.condition ?? null)).toBe('hot, 2 minutes after stopping');
});

test('oilStory() marks what is out of line', () => {
  const { entries } = storyOf([...LINES, check('2026-06-13', 42_950, 0)]);
  expect(entries.at(-1)?.verdict).toBe('doubtful');
  expect(verdictWords(entries.at(-1) as (typeof entries)[number], 'l')).toEqual([
    'Out of line with what came before: counts for little, unless the next one agrees.',
  ]);
});

test('storyWords() says what was poured, changed and read', () => {
  const filled: Line = {
    kind: 'oilTopUp',
    on: '2026-06-13',
    volume: { text: '1', unit: 'usQt' },
    toMax: true,
    levelBefore: { how: 'none' },
  };
  const words = storyOf([...LINES, filled]).entries.map((entry) => storyWords(entry, 'usQt'));
  expect(words[0]).toBe('At MAX');
  expect(words[3]).toBe('0.53 US qt added');
  expect(words[4]).toBe('Repair that affects oil use');
  expect(words[6]).toBe('Oil changed');
  expect(words.at(-1)).toBe('1 US qt added to MAX, none on the stick before');
});

test('oilStory() holds which oil went in, as somebody named it', () => {
  const bottle: Line = {
    kind: 'oilTopUp',
    on: '2026-06-13',
    volume: { text: '1', unit: 'l' },
    grade: '5W-40',
  };
  const change: Line = {
    kind: 'oilChange',
    on: '2026-06-14',
    filterRenewed: true,
    approval: 'ACEA C3',
  };
  const { entries } = storyOf([...LINES, bottle, change]);
  expect(entries.at(-2)?.oil).toEqual({ grade: '5W-40' });
  expect(entries.at(-1)?.oil).toEqual({ approval: 'ACEA C3' });
  expect(entries[0]?.oil).toBeNull();
});
