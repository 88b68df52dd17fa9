import { expect, test } from 'vitest';
import { type DueFilter, readDueFilter, WHOLE_LIST, writeDueFilter } from './due-filter.ts';
import { dueQuestion, soonQuestion } from './due-question.ts';

const car = '01900000-0000-7001-a000-000000000000';
const narrow: DueFilter = { sort: 'early', car, state: 'dueSoon', before: '2026-07-01' };
const again = (filter: DueFilter) =>
  readDueFilter(Object.fromEntries(new URLSearchParams(writeDueFilter(filter))));

test('readDueFilter() reads what writeDueFilter() wrote', () => {
  expect(again(narrow)).toEqual(narrow);
  expect(writeDueFilter(WHOLE_LIST)).toBe('');
  expect(again(WHOLE_LIST)).toEqual(WHOLE_LIST);
});

test('readDueFilter() leaves out what no filter can be', () => {
  const odd = { sort: 'price', car: 'mine', state: 'good', before: '2026-02-30' };
  expect(readDueFilter(odd)).toEqual(WHOLE_LIST);
  expect(readDueFilter({ sort: ['car', 'early'] }).sort).toBe('car');
  // half typed: it waits in the field and not in the address
  expect(writeDueFilter({ ...WHOLE_LIST, before: '0002-07-01' })).toBe('');
});

test('dueQuestion() never leaves out by a day what may be due on any', () => {
  const asked = (part: 'dated' | 'unsure') => dueQuestion('g', narrow, part).filter;
  expect(asked('dated')).toEqual({
    part: 'dated',
    carId: car,
    state: 'dueSoon',
    before: '2026-06-30',
  });
  expect(asked('unsure')).not.toHaveProperty('before');
  expect(dueQuestion('g', WHOLE_LIST, 'apart').filter).toEqual({ part: 'apart' });
});

test('soonQuestion() asks for what could be due in the next fortnight, whatever the filter', () => {
  expect(soonQuestion('g', null, '2026-06-15')).toEqual({
    garageId: 'g',
    sort: 'early',
    filter: { part: 'dated', before: '2026-06-29' },
  });
  expect(soonQuestion('g', car, '2026-06-15').filter).toHaveProperty('carId', car);
});
