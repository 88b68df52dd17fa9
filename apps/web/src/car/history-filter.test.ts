import { ENTRY_KINDS } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { historyQuestion, readFilter, writeFilter } from './history-filter.ts';
import { KIND_GROUPS } from './kind-groups.ts';

const all = { kind: null, text: '', removed: false, car: null };
const CAR = '01900000-0000-7001-a000-000000000000';

test('readFilter() reads back what writeFilter() wrote', () => {
  const filter = { kind: 'oilCheck', text: 'smells & 100 %', removed: true, car: CAR } as const;
  const back = (written: string) => readFilter(Object.fromEntries(new URLSearchParams(written)));
  expect(back(writeFilter(filter))).toEqual(filter);
  const group = { ...all, kind: 'trouble' } as const;
  expect(back(writeFilter(group))).toEqual(group);
});

test('readFilter() leaves out what it cannot read', () => {
  expect(readFilter({ kind: 'nonsense', removed: 'perhaps', car: '../x' })).toEqual(all);
  expect(readFilter({ text: ['first', 'second'] }).text).toBe('first');
  expect(readFilter({ text: 'x'.repeat(300) }).text).toHaveLength(200);
});

test('writeFilter() leaves the address bare while nothing is filtered', () => {
  expect(writeFilter({ ...all, text: '  ' })).toBe('');
});

test('historyQuestion() names only what is filtered, so that server and screen ask the same', () => {
  const where = { garageId: 'g', carId: 'c' };
  expect(historyQuestion(where, { ...all, text: ' ' })).toEqual(where);
  expect(historyQuestion(where, { ...all, kind: 'note', text: ' fuel ', removed: true })).toEqual({
    ...where,
    kinds: ['note'],
    text: 'fuel',
    removed: true,
  });
});

test('historyQuestion() asks for all kinds of a group, and for one car of a garage', () => {
  const asked = historyQuestion({ garageId: 'g' }, { ...all, kind: 'trouble', car: CAR });
  expect(asked).toEqual({
    garageId: 'g',
    carId: CAR,
    kinds: ['finding', 'incident', 'answer'],
  });
});

test('no group of kinds has the name of a kind, and every kind is reached by a group', () => {
  expect(ENTRY_KINDS.filter((kind) => KIND_GROUPS.some((group) => String(group) === kind))).toEqual(
    [],
  );
  const reached = KIND_GROUPS.flatMap(
    (kind) => historyQuestion({ garageId: 'g' }, { ...all, kind }).kinds ?? [],
  );
  expect(reached.toSorted()).toEqual(ENTRY_KINDS.toSorted());
});
