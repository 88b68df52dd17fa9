import { expect, test } from 'vitest';
import { causeOf } from './causes.ts';

test('causeOf() says plainly that the database was away', () => {
  const refused = Object.assign(new Error('connect failed'), { code: 'ECONNREFUSED' });
  const wrapped = new Error('Failed query: select 1', { cause: refused });
  expect(causeOf(wrapped)).toBe('the database could not be reached; it is tried again by itself');
});

test('causeOf() quotes what it does not know, with what caused it', () => {
  const cause = causeOf(
    new Error('could not read an entry', { cause: new Error('at 2026-03-01') }),
  );
  expect(cause).toBe('could not read an entry: at 2026-03-01');
});

test('causeOf() keeps to 500 characters', () => {
  expect(causeOf(new Error('x'.repeat(900)))).toHaveLength(500);
});

test('causeOf() takes what was thrown without being an error', () => {
  expect(causeOf('out of paper')).toBe('out of paper');
});

test('causeOf() leaves out the text of a query and what was in it', () => {
  const wrapped = new Error('Failed query: insert into car values ($1)\nparams: Grey wagon', {
    cause: new Error('the disk is full'),
  });
  expect(causeOf(wrapped)).toBe('the disk is full');
});
