import { type EntryInput, type EntryKind, entryInput } from '@quartermark/engine/log';
import type { z } from 'zod';
import { READ_OWN } from './read-own.ts';
import type { RecordFields } from './record-fields.ts';
import { type Members, type Problems, quantity, type Reading, some, text } from './typed.ts';

/** What a form writes. */
export type Writes = {
  /** the entry that is amended; null for a new one */
  base: EntryInput | null;
  /** what a new one begins with */
  fresh: { kind: EntryKind; zone: string; car?: string; gear?: string };
};

export type ReadRecord = { entry: EntryInput } | { problems: Problems };

/**
 * A form's fields as the entry they stand for, or what is wrong with them, by the path at which the
 * server would name it. What was left empty is left out; what an amended entry holds beyond its form
 * stays as it is.
 */
export function readRecord(fields: RecordFields, writes: Writes): ReadRecord {
  const problems: Problems = {};
  const { base, fresh } = writes;
  const reading: Reading = { base, problems, places: {} };
  const members: Members = {
    ...(base ?? { ...fresh, id: fields.entryId }),
    ...READ_OWN[fresh.kind](fields, reading),
    on: fields.on,
    time: text(fields.time),
    dayOrder: fields.time === '' ? text(fields.dayOrder) : undefined,
    odometer: quantity(fields.odometer),
    driver: text(fields.driver),
    note: fields.note.trim() === '' ? undefined : fields.note,
    photos: some(fields.photos),
  };
  if (fields.on === '') problems.on = 'Give the day on which it happened.';
  const read = entryInput.safeParse(withoutGaps(members));
  if (read.success && Object.keys(problems).length === 0) return { entry: read.data };
  for (const issue of read.error?.issues ?? []) {
    const path = inForm(issue.path, reading.places);
    // the first that was found of a field is the one to mend
    if (!Object.keys(problems).some((found) => found === path || found.startsWith(`${path}.`)))
      problems[path] ??= sentence(issue);
  }
  const named = Object.entries(problems).map(([path, message]) => [`entry.${path}`, message]);
  return { problems: Object.fromEntries(named) };
}

/** A path of the entry as one of the form, whose lists have empty rows besides. */
function inForm([list, row, ...rest]: readonly PropertyKey[], places: Reading['places']): string {
  const at = typeof row === 'number' ? (places[String(list)]?.[row] ?? row) : row;
  return [list, at, ...rest]
    .filter((part) => part !== undefined)
    .map(String)
    .join('.');
}

/** Without the members that are undefined, at every depth. */
function withoutGaps(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutGaps);
  if (typeof value !== 'object' || value === null) return value;
  const kept = Object.entries(value).filter(([, member]) => member !== undefined);
  return Object.fromEntries(kept.map(([name, member]) => [name, withoutGaps(member)]));
}

/** The schema's own sentences are kept; what it leaves to the library is put into words. */
function sentence(issue: z.core.$ZodIssue): string {
  const { message } = issue;
  if (issue.code === 'too_big' && message.startsWith('Too'))
    return issue.origin === 'string'
      ? `Longer than ${issue.maximum} characters; shorten it, or put it into the note.`
      : `At most ${issue.maximum}; check the figure.`;
  if (issue.code === 'too_small' && message.startsWith('Too'))
    return `At least ${issue.minimum}; check the figure.`;
  if (message.startsWith('Invalid')) return 'Cannot be read; write it again.';
  return message.charAt(0).toUpperCase() + message.slice(1);
}
