import type { Refusal } from '@quartermark/api/client';

/** What went wrong, ready to be shown. `place` says where: see `components/index.ts`. */
export type Trouble = {
  place: 'field' | 'form' | 'page';
  /** field errors by dotted path, the first of each path */
  fields: Record<string, string>;
  message: string;
  /** set when the server refused; unset when it could not be reached or failed */
  refusal: Refusal | null;
};

const NO_ANSWER =
  'The server did not answer, so nothing is known to be saved. What you typed is still here: check that ' +
  'Quartermark is running and press again; it is saved once only.';

function hasData(error: unknown): error is { data: { refusal?: Refusal | null } } {
  return typeof error === 'object' && error !== null && 'data' in error && Boolean(error.data);
}

/** Server fields arrive as "car.name: …" or "on: …"; beside the field its own name need not be said again. */
function withoutField(message: string, field: string): string {
  const heads = [`${field}: `, `${field.split('.').at(-1)}: `];
  const head = heads.find((one) => message.startsWith(one)) ?? '';
  const rest = message.slice(head.length);
  return rest.charAt(0).toUpperCase() + rest.slice(1);
}

function fieldsOf(refusal: Refusal): Record<string, string> {
  const list =
    refusal.fields ?? (refusal.field ? [{ field: refusal.field, message: refusal.message }] : []);
  const fields: Record<string, string> = {};
  for (const { field, message } of list) if (field) fields[field] ??= withoutField(message, field);
  return fields;
}

/** A request that was refused before it was read is answered by the door, not by the api. */
function atTheDoor(error: unknown): Refusal | null {
  const { meta } = (error ?? {}) as { meta?: { responseJSON?: { refusal?: Refusal } } };
  return meta?.responseJSON?.refusal ?? null;
}

/** Turns whatever a query or a mutation threw into words. The one place where that is done. */
export function refusalWords(error: unknown): Trouble {
  const refusal = (hasData(error) ? error.data.refusal : null) ?? atTheDoor(error);
  if (refusal) {
    const fields = fieldsOf(refusal);
    const gone = refusal.code === 'notFound' || refusal.code === 'signedOut';
    const place = Object.keys(fields).length > 0 && !gone ? 'field' : gone ? 'page' : 'form';
    return { place, fields, message: refusal.message, refusal };
  }
  const message = hasData(error) && error instanceof Error ? error.message : NO_ANSWER;
  return { place: 'form', fields: {}, message, refusal: null };
}
