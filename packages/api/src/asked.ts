import { z } from 'zod';
import { badField, refuse } from './refused.ts';

/** Ids that the client makes itself: UUIDs, version 7 so that they sort by time. */
export const id = z.uuid();

/** Every write carries these: which garage, and an id by which asking twice is answered once. */
export const commandFields = { garageId: id, commandId: id } as const;

export const baseRevision = z.int().positive();

const SHOWN_MAX = 40;

/** Fields whose value no message repeats. */
const SECRET = /password|token/i;

function shown(value: unknown): string {
  const text = typeof value === 'string' ? `"${value}"` : (JSON.stringify(value) ?? 'nothing');
  return text.length > SHOWN_MAX ? `${text.slice(0, SHOWN_MAX)}...` : text;
}

function at(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null
        ? (value as Record<PropertyKey, unknown>)[key]
        : undefined,
    input,
  );
}

const WANTED: Record<string, string> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'a group of fields',
};

/** What is counted where it is not the value itself. */
const PARTS: Record<string, string> = { string: ' characters', array: ' of them' };
const HAVE: Record<string, string> = { string: 'have', array: 'have' };

function tooSmall({ origin, minimum, inclusive }: z.core.$ZodIssueTooSmall, value: unknown) {
  if (typeof value === 'string' && value.trim() === '') return 'is empty; fill it in';
  const beyond = inclusive === false ? ' and not equal to it' : '';
  return `must ${HAVE[origin] ?? 'be'} at least ${minimum}${PARTS[origin] ?? ''}${beyond}`;
}

/** Whether a sentence holds the value already, as a word of its own. */
function quotes(words: string, value: unknown): boolean {
  if (typeof value !== 'string' && typeof value !== 'number') return false;
  const text = String(value).trim();
  if (text === '') return words.startsWith('is empty');
  // a note of 64 KB is no pattern that could be built
  if (text.length > words.length) return false;
  const literal = text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return new RegExp(`(?<![\\w.,-])${literal}(?![\\w])`).test(words);
}

/** zod's own sentence is kept where a schema of ours wrote it; the rest is put into plain words. */
function sentence(issue: z.core.$ZodIssue, value: unknown): string {
  switch (issue.code) {
    case 'invalid_type':
      return value === undefined
        ? `is missing; give ${WANTED[issue.expected] ?? issue.expected}`
        : `must be ${WANTED[issue.expected] ?? issue.expected}`;
    case 'unrecognized_keys':
      return `holds fields that do not belong here: ${issue.keys.join(', ')}; leave them out`;
    case 'invalid_value':
      return issue.message.startsWith('Invalid')
        ? `must be one of ${issue.values.map(String).join(', ')}`
        : issue.message;
    case 'invalid_union':
      return issue.discriminator === undefined
        ? 'has none of the forms that are allowed here'
        : `${issue.discriminator} is none that is known; choose one from the form`;
    case 'invalid_format':
      return issue.message.startsWith('Invalid')
        ? `must be a valid ${issue.format}`
        : issue.message;
    case 'too_small':
      return issue.message.startsWith('Too') ? tooSmall(issue, value) : issue.message;
    case 'too_big':
      return issue.message.startsWith('Too')
        ? `must ${HAVE[issue.origin] ?? 'be'} at most ${issue.maximum}${PARTS[issue.origin] ?? ''}`
        : issue.message;
    case 'custom':
    case 'not_multiple_of':
    case 'invalid_key':
    case 'invalid_element':
      return issue.message;
  }
}

function fieldError(issue: z.core.$ZodIssue, input: unknown): { field: string; message: string } {
  const field = issue.path.map(String).join('.');
  const value = at(input, issue.path);
  const where = field === '' ? 'the request' : field;
  const words = sentence(issue, value);
  const secret = issue.path.some((key) => SECRET.test(String(key)));
  const said =
    value === undefined || secret || quotes(words, value) ? '' : ` (was ${shown(value)})`;
  return { field, message: `${where}: ${words}${said}` };
}

// with the u flag a pair of surrogates is one character, so only a lone half matches
const UNSTORABLE = /[\0\ud800-\udfff]/u;

/** Field of the first text that PostgreSQL cannot keep (a NUL, half a surrogate pair), or null. */
function unstorable(value: unknown, path: readonly string[]): string | null {
  if (typeof value === 'string') return UNSTORABLE.test(value) ? path.join('.') : null;
  if (typeof value !== 'object' || value === null) return null;
  for (const [key, part] of Object.entries(value)) {
    const field = unstorable(key, [...path, key]) ?? unstorable(part, [...path, key]);
    if (field !== null) return field;
  }
  return null;
}

/**
 * Parses what was sent, or refuses with `badInput`: every message names the field, the value and the
 * mend.
 *
 * @example parse(z.strictObject({ sessions: z.number() }), { sessions: 'two' })
 * // throws Refused: "sessions: must be a number (was "two")"
 */
export function parse<S extends z.ZodType>(schema: S, input: unknown): z.output<S> {
  const parsed = schema.safeParse(input);
  if (parsed.success) {
    const field = unstorable(parsed.data, []);
    if (field === null) return parsed.data;
    throw badField(field, `${field}: holds a character that cannot be stored; type it again`);
  }
  const fields = parsed.error.issues.map((issue) => fieldError(issue, input));
  const first = fields[0] ?? { field: '', message: 'the request could not be read; send it again' };
  throw refuse('badInput', first.field === '' ? null : first.field, first.message, { fields });
}

/** A schema in the form tRPC takes, refusing in our words. */
export function asked<S extends z.ZodType>(
  schema: S,
): { _input: z.input<S>; _output: z.output<S>; parse: (input: unknown) => z.output<S> } {
  // tRPC reads the types of the two members and calls only `parse`
  const types = {} as { _input: z.input<S>; _output: z.output<S> };
  return { ...types, parse: (input) => parse(schema, input) };
}
