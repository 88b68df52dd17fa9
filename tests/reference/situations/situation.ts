import { type Book, type BookDraft, book, type EntryDraft } from '@quartermark/engine/log';

type Bare<T> = T extends unknown ? Omit<T, 'id' | 'zone' | 'car'> : never;
export type Line = Bare<EntryDraft>;

/**
 * A car, what was written of it, and what is to be said of one of its items. The sentences were written
 * from the meaning, before the program was asked. `{20 June ±4}` is a day that may be off by so many days,
 * `{220 ±10}` a figure: as exact as the hand that reckoned it.
 */
export type Situation = {
  heading: string;
  /** what the figures rest on, as they were reckoned by hand */
  restsOn: string;
  asOf: string;
  item: BookDraft['items'][number];
  lines: Line[];
  layUps?: BookDraft['layUps'];
  planned?: BookDraft['planned'];
  /** the state in words, with what stands behind it */
  says: string;
  /** why that day; null = there is no forecast to explain */
  because: string | null;
  /** sentences that stand beside it */
  also?: string[];
};

export const ZONE = 'Europe/London';
/** The day on which the browser's garage lives, too. */
export const TODAY = '2026-06-15';

export const km = (value: number) => ({ text: String(value), unit: 'km' as const });
export const read = (on: string, value: number): Line => ({
  kind: 'odometer',
  on,
  odometer: km(value),
});
export const circuit = (on: string, sessions: number): Line => ({
  kind: 'session',
  use: 'circuit',
  on,
  sessions,
});
export const runs = (on: string, launches: number): Line => ({
  kind: 'strip',
  on,
  passes: Array.from({ length: launches }, () => ({})),
});

/** The book of a situation, its lines recorded in their order. */
export function bookOf({ asOf, item, lines, layUps = [], planned = [] }: Situation): Book {
  return book.parse({
    format: 'log/1',
    asOf,
    garage: { zone: ZONE },
    car: { id: 'car', unit: 'km', hemisphere: 'N' },
    items: [item],
    layUps,
    planned,
    entries: lines.map((line, index) => ({
      id: `e${index}`,
      zone: ZONE,
      car: 'car',
      recorded: index + 1,
      ...line,
    })),
  });
}
