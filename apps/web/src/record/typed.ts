import { type EntryInput, type EntryOf, readNumber } from '@quartermark/engine/log';

/** As typed; the schema judges both when the entry is read. */
export type TypedText = { text: string; unit: string };

/** What is wrong, by the path of the field in the entry. */
export type Problems = Record<string, string>;

/** Members of an entry as they are to be written; undefined takes one away. */
export type Members = Record<string, unknown>;

/** What a form's part is read with. */
export type Reading = {
  /** the entry that is amended; null for a new one */
  base: EntryInput | null;
  problems: Problems;
  /** of a list whose empty rows are left out: where in the form each row that was written stands */
  places: Record<string, readonly number[]>;
};

/** Empty is left out. */
export const text = (typed: string) => (typed.trim() === '' ? undefined : typed.trim());
export const quantity = (typed: TypedText) => (typed.text.trim() === '' ? undefined : typed);
export const yes = (ticked: boolean) => (ticked ? true : undefined);
/** A stored number as its field shows it. */
export const typed = (value: number | undefined) => (value === undefined ? '' : String(value));

export function number(said: string, path: string, problems: Problems): number | undefined {
  if (said.trim() === '') return undefined;
  const read = readNumber(said, false);
  if ('value' in read) return read.value;
  problems[path] = read.problem;
  return undefined;
}

export type Was<K extends EntryInput['kind']> = EntryOf<K> | undefined;

/** The entry before it is amended, if it is one of that kind. */
export function was<K extends EntryInput['kind']>(kind: K, base: EntryInput | null): Was<K> {
  // the discriminant was just compared
  return base?.kind === kind ? (base as EntryOf<K>) : undefined;
}

/** Rows in which something stands; where they stand in the form is noted under the list's name. */
export function writtenRows<R>(
  rows: readonly R[],
  list: string,
  { places }: Reading,
  isWritten: (row: R) => boolean,
): R[] {
  const kept = rows.flatMap((row, at) => (isWritten(row) ? [{ row, at }] : []));
  places[list] = kept.map(({ at }) => at);
  return kept.map(({ row }) => row);
}

/** A list in which nothing stands is left out. */
export const some = <R>(list: readonly R[]) => (list.length === 0 ? undefined : list);
