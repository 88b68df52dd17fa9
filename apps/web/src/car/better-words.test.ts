import type { AmountLimitResult, ItemResult } from '@quartermark/engine';
import { expect, test } from 'vitest';
import { betterWords } from './better-words.ts';

const limit = (more: Partial<AmountLimitResult>): AmountLimitResult => ({
  measure: 'km',
  severe: false,
  limit: 10_000,
  known: true,
  accrued: 100,
  remaining: 9_900,
  fraction: 0.01,
  byClass: {},
  estimated: 0,
  reachedOn: null,
  ...more,
});
const item = (more: Partial<ItemResult>): ItemResult => ({
  id: 'x',
  state: 'fine',
  reason: null,
  reasonCode: null,
  binding: null,
  limits: [limit({})],
  evidence: [],
  ...more,
});

test('betterWords() asks when an item was last done where that is not on record', () => {
  const words = betterWords(item({ state: 'unknown', reasonCode: 'noBaseline', limits: [] }));
  expect(words).toHaveLength(1);
  expect(words[0]).toContain('when it was last done');
});

test('betterWords() asks for the missing part where only a lower bound is known', () => {
  const unsure = item({ limits: [limit({ known: false })] });
  expect(betterWords(unsure)[0]).toContain('what is missing since the last service');
});

test('betterWords() asks for amounts where some were worked out', () => {
  expect(betterWords(item({ limits: [limit({ estimated: 12 })] }))[0]).toContain(
    'Record distances',
  );
});

test('betterWords() says what the days of a forecast rest on', () => {
  const dueDate = { p10: '2026-07-01', p50: '2026-08-01', p90: null };
  expect(betterWords(item({ dueDate }))[0]).toContain('Read the odometer now and then, and plan');
  const sessions = limit({ measure: 'sessions' });
  expect(betterWords(item({ dueDate, limits: [sessions] }))[0]).toMatch(/^Plan events/);
  expect(betterWords(item({ dueDate, state: 'overdue' }))).toEqual([]);
});

test('betterWords() is empty where nothing is missing', () => {
  expect(betterWords(item({}))).toEqual([]);
});
