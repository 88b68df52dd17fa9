import type { LetterWish } from '@quartermark/api/client';
import { expect, test } from 'vitest';
import { readWish, wishAnswer, wishFields, wishLines, wishSchema } from './wish-fields.ts';

const NIGHTLY: LetterWish = {
  rhythm: { every: 'night' },
  onlyIfNew: true,
  beforeEvents: true,
  pausedUntil: null,
  mail: true,
  cars: 'all',
};
const WEEKLY: LetterWish = {
  rhythm: { every: 'week', on: 7 },
  onlyIfNew: false,
  beforeEvents: false,
  pausedUntil: '2026-07-01',
  mail: false,
  cars: ['c-1', 'c-2'],
};

test('readWish() gives back what wishFields() was made of', () => {
  for (const wish of [NIGHTLY, WEEKLY]) {
    expect(readWish(wishFields(wish, 3))).toEqual({ body: wish });
    expect(wishSchema.parse(wish)).toEqual(wish);
  }
});

test('readWish() asks for a car where only some are chosen and none is ticked', () => {
  const fields = { ...wishFields(NIGHTLY, 1), cars: 'some' as const };
  expect(readWish(fields)).toHaveProperty(['problems', 'wish.cars']);
  expect(readWish({ ...fields, some: ['c-2'] })).toHaveProperty(['body', 'cars'], ['c-2']);
});

test('wishLines() names the weekday, the day and the cars', () => {
  const names: Record<string, string> = { 'c-1': 'Tarnfell', 'c-2': 'Velmora' };
  expect(wishLines(WEEKLY, (id) => names[id] ?? '').map(({ words }) => words)).toEqual([
    'Every Sunday',
    'No',
    'No',
    'Wed 1 July 2026',
    'Only here',
    'Tarnfell, Velmora',
  ]);
});

test('wishAnswer() says when and where, and that nothing comes while paused', () => {
  const said = (wish: LetterWish, to: string | null, today = '2026-06-15') =>
    wishAnswer({ wish, today, hour: '06:00', to });
  expect(said(NIGHTLY, 'me@example.org')).toBe(
    'A letter each day at 06:00, if something is new, here and at me@example.org.',
  );
  expect(said(WEEKLY, null)).toBe('Your letters are paused until Wed 1 July.');
  expect(said(WEEKLY, null, '2026-07-02')).toBe(
    'A letter each Sunday at 06:00, here, in the garage.',
  );
});
