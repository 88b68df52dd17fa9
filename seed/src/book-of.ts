import { addDays } from '@quartermark/engine/calendar';
import type { GearBook } from '@quartermark/engine/gear';
import {
  type Book,
  book,
  type EntryDraft,
  entry as entrySchema,
  eventInput,
  gear,
  item,
  plannedEventOf,
  plannedStorage,
} from '@quartermark/engine/log';
import type { SeedCar, SeedGarage, SeedGear, SeedStep } from './seed-garage.ts';

export type Kept = { entry: EntryDraft; recorded: number; revision: number; removed: boolean };

/** The entries as they stand once every step has been taken, tombstones included. */
export function settle(key: string, steps: readonly SeedStep[], before = 0): Kept[] {
  const kept = new Map<string, Kept>();
  const known = (id: string): Kept => {
    const found = kept.get(id);
    if (found === undefined)
      throw new RangeError(`could not settle ${key}: ${id} was never recorded before this step`);
    return found;
  };
  for (const step of steps) {
    if ('remove' in step) {
      const found = known(step.remove);
      kept.set(step.remove, { ...found, revision: found.revision + 1, removed: true });
    } else if ('amend' in step) {
      const found = known(step.amend);
      kept.set(step.amend, { ...found, entry: step.entry, revision: found.revision + 1 });
    } else {
      const { entry } = step;
      kept.set(entry.id, { entry, recorded: before + kept.size + 1, revision: 1, removed: false });
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
export function bookOf(seed: SeedGarage, car: SeedCar, asOf: string): Book {
  const { garage, gearEntries, events, plannedLayUps, orders } = seed;
  const own = settle(car.key, car.entries);
  const ofGear = settle('gear', gearEntries, own.length);
  const entries = [...own, ...ofGear.filter(({ entry }) => entry.car === car.id)];
  const recorded = layUpsOf(entries);
  const ordered = orders
    .filter(({ itemId }) => car.items.some(({ id }) => id === itemId))
    .map(({ id, itemId, order }) => ({ id, item: itemId, ...order }));
  return book.parse({
    format: 'log/1',
    asOf,
    garage: { zone: garage.zone },
    car: { id: car.id, ...car.car, hemisphere: garage.hemisphere },
    items: car.items.map(({ id, item }) => ({ id, ...item })),
    layUps: [
      ...recorded,
      ...plannedStorage(
        plannedLayUps
          .filter(({ carId }) => carId === car.id)
          .map(({ id, layUp }) => ({ id, ...layUp })),
        recorded,
        asOf,
      ),
    ],
    planned: events.flatMap(
      ({ id, event }) => plannedEventOf(id, eventInput.parse(event), car.id) ?? [],
    ),
    ...(ordered.length > 0 && { orders: ordered }),
    entries: entries.map(({ entry, ...recorded }) => ({ ...entry, ...recorded })),
  });
}

/** One piece's book, for the engine to read: its own entries and the books of the cars it was on. */
export function gearBookOf(garage: SeedGarage, piece: SeedGear, asOf: string): GearBook {
  const own = garage.gearEntries.flatMap((step) => ('entry' in step ? [step.entry] : []));
  const about = own.filter((each) =>
    'component' in each ? each.component === piece.id : each.gear === piece.id,
  );
  const cars = new Set(about.flatMap((each) => each.car ?? []));
  const books = garage.cars
    .filter(({ id }) => cars.has(id))
    .map((car) => bookOf(garage, car, asOf));
  const kept = settle('gear', garage.gearEntries, 100_000);
  const ids = new Set(about.map(({ id }) => id));
  return {
    gear: gear.parse({ id: piece.id, gear: piece.gear }),
    asOf,
    zone: garage.garage.zone,
    items: piece.items.map(({ id, item: each }) => item.parse({ id, ...each })),
    cars: books,
    entries: kept
      .filter(({ entry }) => ids.has(entry.id))
      .map(({ entry, ...recorded }) => entrySchema.parse({ ...entry, ...recorded })),
  };
}
