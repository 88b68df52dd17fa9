import { readdirSync, readFileSync } from 'node:fs';
import { analyseFile, canonicalJson, type OilDocument } from '@quartermark/engine';
import { expect, test } from 'vitest';

/**
 * Source: 35 open edge cases of the oil method with the answers of an independent implementation
 * (`expect.reference`). Here: the last level read, by order, validity and reading procedure, and how
 * many values could not be used; notes on distances beyond a lower odometer are not ours to make.
 */
const folder = new URL('./data/oil-edge/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));

test('analyseFile() meets all 35 open oil logs', () => {
  expect(files).toHaveLength(35);
});

test.each(files)('analyseFile() finds the last reading of %s', (name) => {
  const file = JSON.parse(readFileSync(new URL(name, folder), 'utf8'));
  const { oil } = analyseFile(file) as OilDocument;
  const { lastReading, notes } = file.expect.reference;
  expect(canonicalJson(oil.lastReading)).toBe(canonicalJson(lastReading));
  expect(oil.notes).toHaveLength(notes.length);
});
