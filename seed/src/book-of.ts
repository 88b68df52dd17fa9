import { addDays } from '@quartermark/engine/calendar';
import { type Book, book, type EntryDraft } from '@quartermark/engine/log';
import type { SeedCar, SeedGarage } from './seed-garage.ts';

type Kept = { entry: EntryDraft; recorded: number; revision: number; removed: boolean };

/** The entries as they stand once every step has been taken, tombstones included. */
function settle(car: SeedCar): Kept[] {
  const kept = new Map<string, Kept>();
  const known = (id: string): Kept => {
    const found = kept.get(id);
    if (found === undefined)
      throw new RangeError(
        `could not settle ${car.key}: ${id} was never recorded before this step`,
      );
    return found;
  };
  for (const step of car.entries) {
    if ('remove' in step) {
      const found = known(step.remove);
      kept.set(step.remove, { ...found, revision: found.revision + 1, removed: true });
    } else if ('amend' in step) {
      const found = known(step.amend);
      kept.set(step.amend, { ...found, entry: step.entry, revision: found.revision + 1 });
    } else {
      const { entry } = step;
      kept.set(entry.id, { entry, recorded: kept.size + 1, revision: 1, removed: false });
    }
  }
  return [...kept.values()];
}

/** Storage windows as the `layUp` entries open them; the day before the `wakeUp` is the last one. */
function layUpsOf(entries: readonly Kept[]) {
  const windows: { id: string; start: string; end?: string }[] = [];
  for (const { entry } of entries) {
    const open = windows.at(-1);
    if (entry.kind === 'layUp') windows.push({ id: entry.id, start: entry.on });
    if (entry.kind === 'wakeUp' && open !== undefined) open.end = addDays(entry.on, -1);
  }
  return windows;
}

/** One invented car's book as a `log/1` file would hold it, for the engine to read. */
export function bookOf({ garage }: SeedGarage, car: SeedCar, asOf: string): Book {
  const entries = settle(car);
  return book.parse({
    format: 'log/1',
    asOf,
    garage: { zone: garage.zone },
    car: { id: car.id, ...car.car, hemisphere: garage.hemisphere },
    items: car.items.map(({ id, item }) => ({ id, ...item })),
    layUps: layUpsOf(entries),
    planned: [],
    entries: entries.map(({ entry, ...recorded }) => ({ ...entry, ...recorded })),
  });
}
