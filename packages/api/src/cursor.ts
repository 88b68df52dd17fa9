import type { z } from 'zod';
import { badField } from './refused.ts';

/** A place in a list as text that a client passes back and does not read. */
export function writeCursor(place: unknown): string {
  return Buffer.from(JSON.stringify(place), 'utf8').toString('base64url');
}

/** @throws Refused `badInput` for a text that `writeCursor` never made */
export function readCursor<S extends z.ZodType>(schema: S, text: string): z.output<S> {
  const parsed = schema.safeParse(decoded(text));
  if (parsed.success) return parsed.data;
  throw badField(
    'cursor',
    'cursor: this is no place in the list; load the list from its beginning',
  );
}

function decoded(text: string): unknown {
  try {
    return JSON.parse(Buffer.from(text, 'base64url').toString('utf8'));
  } catch {
    return null;
  }
}
