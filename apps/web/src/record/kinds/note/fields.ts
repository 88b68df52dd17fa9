import type { RecordFields } from '../../record-fields.ts';
import type { Members, Reading } from '../../typed.ts';

/** A note is the common field of that name, and has to be there. */
export function readNote({ note }: RecordFields, { problems }: Reading): Members {
  if (note.trim() === '') problems.note = 'Write what is to be remembered.';
  return {};
}
