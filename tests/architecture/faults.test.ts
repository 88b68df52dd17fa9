import { existsSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { exchanged } from '../prove/exchanged.ts';
import { FAULTS } from '../prove/faults/index.ts';

const root = path.resolve(import.meta.dirname, '../..');

test('every fault of `npm run prove` has a name of its own', () => {
  const names = FAULTS.map(({ name }) => name);
  expect(names).toEqual([...new Set(names)]);
});

// what is rewritten takes a fault's text along unseen, and proving all of them takes too long for every change
test.each(FAULTS)(
  '"$name" can still be planted, and its test is there',
  ({ edits, test: named }) => {
    expect(() => exchanged(root, edits)).not.toThrow();
    expect(existsSync(path.join(root, named.file))).toBe(true);
  },
);
