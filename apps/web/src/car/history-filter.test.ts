import { expect, test } from 'vitest';
import { historyQuestion, readFilter, writeFilter } from './history-filter.ts';

const all = { kind: null, text: '', removed: false };

test('readFilter() reads back what writeFilter() wrote', () => {
  const filter = { kind: 'oilCheck', text: 'smells & 100 %', removed: true } as const;
  const written = writeFilter(filter);
  expect(readFilter(Object.fromEntries(new URLSearchParams(written)))).toEqual(filter);
});

test('readFilter() leaves out what it cannot read', () => {
  expect(readFilter({ kind: 'nonsense', removed: 'perhaps' })).toEqual(all);
  expect(readFilter({ text: ['first', 'second'] }).text).toBe('first');
  expect(readFilter({ text: 'x'.repeat(300) }).text).toHaveLength(200);
});

test('writeFilter() leaves the address bare while nothing is filtered', () => {
  expect(writeFilter({ ...all, text: '  ' })).toBe('');
});

test('historyQuestion() names only what is filtered, so that server and screen ask the same', () => {
  const where = { garageId: 'g', carId: 'c' };
  expect(historyQuestion(where, { ...all, text: ' ' })).toEqual(where);
  expect(historyQuestion(where, { kind: 'note', text: ' fuel ', removed: true })).toEqual({
    ...where,
    kind: 'note',
    text: 'fuel',
    removed: true,
  });
});
