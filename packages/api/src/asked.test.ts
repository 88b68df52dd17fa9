import { expect, test } from 'vitest';
import { z } from 'zod';
import { parse } from './asked.ts';
import { Refused } from './refused.ts';

function refusalFrom(schema: z.ZodType, input: unknown) {
  try {
    parse(schema, input);
  } catch (error) {
    if (error instanceof Refused) return error.refusal;
    throw error;
  }
  return expect.fail('nothing was refused');
}

test.each([
  [z.strictObject({ n: z.number() }), { n: 'two' }, 'n', 'n: must be a number (was "two")'],
  [z.strictObject({ n: z.number() }), {}, 'n', 'n: is missing; give a number'],
  [z.strictObject({ n: z.number().max(3) }), { n: 4 }, 'n', 'n: must be at most 3 (was 4)'],
  [z.strictObject({ n: z.int().min(1) }), { n: 0 }, 'n', 'n: must be at least 1 (was 0)'],
  [
    z.strictObject({ u: z.enum(['km', 'mi']) }),
    { u: 'ft' },
    'u',
    'u: must be one of km, mi (was "ft")',
  ],
  [z.strictObject({ id: z.uuid() }), { id: '7' }, 'id', 'id: must be a valid uuid (was "7")'],
  [
    z.strictObject({ p: z.string().min(9, 'is too short') }),
    { p: '' },
    'p',
    'p: is too short (was "")',
  ],
])('parse() names field, mend and value %#', (schema, input, field, message) => {
  expect(refusalFrom(schema, input)).toEqual({
    code: 'badInput',
    field,
    message,
    fields: [{ field, message }],
  });
});

const odd = z
  .string()
  .refine(() => false, { error: ({ input }) => `"${String(input)}" is not a date` });

test.each([
  [z.strictObject({ s: z.string().trim().min(1) }), '', 's: is empty; fill it in'],
  [z.strictObject({ s: z.string().trim().min(1) }), '  ', 's: is empty; fill it in'],
  [z.strictObject({ s: z.string().min(3) }), 'ab', 's: must have at least 3 characters (was "ab")'],
  [
    z.strictObject({ s: z.string().max(3) }),
    'abcd',
    's: must have at most 3 characters (was "abcd")',
  ],
  [
    z.strictObject({ s: z.array(z.int()).max(1) }),
    [1, 2],
    's: must have at most 1 of them (was [1,2])',
  ],
  [z.strictObject({ s: odd }), '2026-13-01', 's: "2026-13-01" is not a date'],
  [z.strictObject({ s: odd }), 'a(b*', 's: "a(b*" is not a date'],
  [
    z.strictObject({ s: z.string().max(3) }),
    'x'.repeat(65 * 1024),
    `s: must have at most 3 characters (was "${'x'.repeat(39)}...)`,
  ],
  [z.strictObject({ s: z.number().max(30) }), 300, 's: must be at most 30 (was 300)'],
])('parse() says a value once, and counts what has parts %#', (schema, s, message) => {
  expect(refusalFrom(schema, { s }).message).toBe(message);
});

test('parse() never repeats a password or a token', () => {
  const schema = z.strictObject({ password: z.string().min(10), setupToken: z.string().max(3) });
  const { fields } = refusalFrom(schema, { password: 'secret', setupToken: 'hidden' });
  expect(JSON.stringify(fields)).not.toMatch(/secret|hidden/);
});

test('parse() cuts a long value', () => {
  const { message } = refusalFrom(z.strictObject({ a: z.string().max(5) }), {
    a: 'y'.repeat(9999),
  });
  expect(message.length).toBeLessThan(100);
});

test('parse() refuses a NUL and half a surrogate pair, and takes a whole one', () => {
  const schema = z.strictObject({ a: z.strictObject({ b: z.array(z.string()) }) });
  expect(refusalFrom(schema, { a: { b: ['x', '\0'] } }).field).toBe('a.b.1');
  expect(refusalFrom(schema, { a: { b: ['\ud83d'] } }).field).toBe('a.b.0');
  expect(parse(schema, { a: { b: ['\u{1f527}'] } }).a.b).toEqual(['\u{1f527}']);
});
