import type { Refusal, RefusalCode } from './refusal.ts';

/**
 * A refusal on its way out of a verb. It is no failure: nothing was written, and the message tells the
 * person what to change.
 */
export class Refused extends Error {
  override readonly name = 'Refused';
  readonly refusal: Refusal;

  constructor(refusal: Refusal) {
    super(refusal.message);
    this.refusal = refusal;
  }
}

/** Makes a refusal. @example throw refuse('removed', null, 'This entry was removed ...') */
export function refuse(
  code: RefusalCode,
  field: string | null,
  message: string,
  more: Pick<Refusal, 'conflict' | 'fields'> = {},
): Refused {
  return new Refused({ code, field, message, ...more });
}

/** One sentence for "does not exist" and "not yours", so that a stranger cannot tell which. */
export const notFoundHere = (what: string, field: string): Refused =>
  refuse(
    'notFound',
    field,
    `There is no such ${what} here; go back to the garage and choose again.`,
  );

/** One field is wrong in a way that only the garage's own data can tell. */
export const badField = (field: string, message: string): Refused =>
  refuse('badInput', field, message, { fields: [{ field, message }] });

export const signedOut = (): Refused =>
  refuse('signedOut', null, 'You are signed out; sign in, then send it again.');
