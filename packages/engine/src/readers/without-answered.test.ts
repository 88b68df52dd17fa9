import { expect, test } from 'vitest';
import { book } from '../log/book.ts';
import { sameUseNotice } from '../log/looks-the-same.ts';
import { analyseBook } from './analyse-book.ts';

const zone = 'Europe/Lisbon';
const session = (id: string) => ({ id, kind: 'session', use: 'circuit', sessions: 4 });
const answer = (notice: string, more: object = {}) => ({
  id: 'answer',
  kind: 'answer',
  notice,
  answer: 'Both are right',
  ...more,
});

/** Pairs that the analysis still asks about. */
function asked(drafts: object[]): string[] {
  const entries = drafts.map((draft, recorded) => ({
    on: '2026-05-02',
    zone,
    recorded,
    ...draft,
  }));
  const read = book.parse({
    format: 'log/1',
    asOf: '2026-06-01',
    garage: { zone },
    car: { id: 'c', unit: 'km' },
    items: [],
    layUps: [],
    planned: [],
    entries,
  });
  return analyseBook(read)
    .flags.filter(({ code }) => code === 'looksTheSame')
    .map(({ entry, other }) => `${entry} ${other}`);
}

test('sameUseNotice() names a pair the same way round, whichever comes first', () => {
  expect(sameUseNotice('b', 'a')).toBe('looksTheSame:a:b');
  expect(sameUseNotice('a', 'b')).toBe('looksTheSame:a:b');
});

test('withoutAnswered() leaves a pair out of which somebody said that both are right', () => {
  const twins = [session('a'), session('b')];
  expect(asked(twins)).toEqual(['b a']);
  expect(asked([...twins, answer(sameUseNotice('b', 'a'))])).toEqual([]);
});

test('withoutAnswered() answers that pair alone', () => {
  const three = [session('a'), session('b'), session('c')];
  expect(asked([...three, answer(sameUseNotice('a', 'b'))])).toEqual(['c a']);
});

test('withoutAnswered() asks again once the answer is removed, or while it lies ahead', () => {
  const twins = [session('a'), session('b')];
  const notice = sameUseNotice('a', 'b');
  expect(asked([...twins, answer(notice, { removed: true })])).toEqual(['b a']);
  expect(asked([...twins, answer(notice, { on: '2026-06-02' })])).toEqual(['b a']);
});

test('withoutAnswered() leaves what else is odd alone', () => {
  const twins = [session('a'), session('b')];
  expect(asked([...twins, answer('a')])).toEqual(['b a']);
});
