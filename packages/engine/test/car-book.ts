import { type Book, type BookDraft, book, type EntryDraft } from '../src/log/index.ts';

type Bare<T> = T extends unknown ? Omit<T, 'id' | 'zone'> : never;

/** An entry as a person would tell it. */
export type Line = Bare<EntryDraft> & {
  id?: string;
  recorded?: number;
  removed?: boolean;
  revision?: number;
};

const zone = 'Europe/London';

/** The book of a car on 15 June 2026. Entries are recorded in their order, with ids e0, e1 ... unless given. */
export function carBook(
  lines: readonly Line[],
  more: Partial<Pick<BookDraft, 'items' | 'layUps' | 'planned' | 'orders' | 'asOf'>> & {
    profile?: BookDraft['car']['profile'];
  } = {},
): Book {
  const { profile, ...rest } = more;
  return book.parse({
    format: 'log/1',
    asOf: '2026-06-15',
    garage: { zone },
    car: { id: 'car', unit: 'km', profile },
    items: [],
    layUps: [],
    planned: [],
    ...rest,
    entries: lines.map((line, index) => ({
      id: `e${index}`,
      zone,
      car: 'car',
      recorded: index + 1,
      ...line,
    })),
  });
}

export const km = (value: number) => ({ text: String(value), unit: 'km' as const });
