import { entryInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { type DoneFields, readDone } from './done-fields.ts';

const WHERE = { id: 'e1', gearId: 'g1', zone: 'Europe/London' };
const FIELDS: DoneFields = {
  items: ['i1'],
  on: '2026-06-15',
  time: '',
  byWhom: '',
  cost: ' ',
  note: '',
};

test('readDone() writes a service about the thing itself, without a car', () => {
  const read = readDone({ ...FIELDS, byWhom: 'Ada' }, WHERE);
  const entry = 'entry' in read ? entryInput.parse(read.entry) : expect.fail('not read');
  expect(entry).toEqual({
    kind: 'service',
    id: 'e1',
    gear: 'g1',
    zone: 'Europe/London',
    on: '2026-06-15',
    items: ['i1'],
    byWhom: 'Ada',
  });
});

test('readDone() asks what was done, and when', () => {
  const read = readDone({ ...FIELDS, items: [], on: '' }, WHERE);
  expect('problems' in read && Object.keys(read.problems)).toEqual(['entry.items', 'entry.on']);
});
