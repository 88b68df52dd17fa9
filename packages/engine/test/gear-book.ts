import type { GearBook } from '../src/gear/result.ts';
import { type Book, book } from '../src/log/book.ts';
import { type Entry, type EntryDraft, entry } from '../src/log/entry.ts';
import { type GearDraft, gear } from '../src/log/gear.ts';
import { type ItemDraft, item } from '../src/log/item.ts';

const zone = 'Europe/Lisbon';

type Told = EntryDraft extends infer E
  ? E extends EntryDraft
    ? Omit<E, 'id' | 'zone'>
    : never
  : never;
export type Drafted = Told & { id?: string; recorded?: number; removed?: boolean };

/** Entries in the order they were recorded; ids are e0, e1 ... unless given. */
export function entriesOf(drafts: readonly Drafted[], prefix = 'e'): Entry[] {
  return drafts.map((draft, index) =>
    entry.parse({ id: `${prefix}${index}`, zone, recorded: index, ...draft }),
  );
}

/** The books of the cars named by the entries, and the gear's own, as the api would hand them in. */
export function gearBook(told: {
  gear: GearDraft;
  asOf: string;
  entries: readonly Entry[];
  items?: readonly (ItemDraft & { id: string })[];
  car?: Partial<Book['car']>;
}): GearBook {
  const { asOf, entries, items = [] } = told;
  const ids = [...new Set(entries.flatMap(({ car }) => (car === undefined ? [] : [car])))].sort();
  const cars = ids.map((id) => ({
    ...book.parse({
      format: 'log/1',
      asOf,
      garage: { zone },
      car: { id, unit: 'km', ...told.car },
      items: [],
      layUps: [],
      planned: [],
      entries: [],
    }),
    entries: entries.filter(({ car }) => car === id),
  }));
  return {
    gear: gear.parse({ id: 'set', gear: told.gear }),
    asOf,
    zone,
    items: items.map((it) => item.parse(it)),
    cars,
    entries: entries.filter(
      (it) => it.gear === 'set' || ('component' in it && it.component === 'set'),
    ),
  };
}

export const km = (value: number) => ({ text: String(value), unit: 'km' as const });
