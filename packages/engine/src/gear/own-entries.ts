import { parseDay } from '../calendar/day-number.ts';
import type { History } from '../history/build-history.ts';
import type { CaseEntry, CaseItem } from '../history/case.ts';
import { placeEntries } from '../history/place-entries.ts';
import { type Placed, RANK, UNTIMED_MINUTE } from '../history/placed.ts';
import type { Entry } from '../log/entry.ts';
import { minuteOfDay } from '../log/sort-entries.ts';
import { caseEntries } from '../readers/book-entry.ts';
import type { Flag } from '../wear/result.ts';
import type { GearBook } from './result.ts';

/** Entries about a gear, each once, up to `asOf`; what lies ahead is flagged. */
export type OwnEntries = { entries: Entry[]; flags: Flag[] };

function isAbout(entry: Entry, gear: string, items: ReadonlySet<string>): boolean {
  if (entry.gear === gear) return true;
  if (entry.kind === 'service') return entry.items.some((id) => items.has(id));
  return (entry.kind === 'fit' || entry.kind === 'measure') && entry.component === gear;
}

/** Collects what is about the gear, services of its items too, from its own list and from the cars' books; the later revision wins. */
export function ownEntries({ gear, asOf, items, cars, entries }: GearBook): OwnEntries {
  const itemIds = new Set(items.map(({ id }) => id));
  const found = new Map<string, Entry>();
  for (const entry of [...entries, ...cars.flatMap((book) => book.entries)]) {
    if (!isAbout(entry, gear.id, itemIds)) continue;
    const known = found.get(entry.id);
    if (known === undefined || known.revision < entry.revision) found.set(entry.id, entry);
  }
  const all = [...found.values()].filter(({ removed }) => !removed);
  const flags = all
    .filter(({ on }) => on > asOf)
    .map(({ id, on }): Flag => ({ code: 'future', entry: id, on, value: null }));
  return { entries: all.filter(({ on }) => on <= asOf), flags };
}

/**
 * What the own entries add to the timelines of the cars: services of the gear's items, starting points
 * of these, and a place for each entry that no car's timeline has.
 */
export function placeOwn(
  { entries }: OwnEntries,
  { items, gear, asOf }: Pick<GearBook, 'items' | 'gear' | 'asOf'>,
  caseItems: readonly CaseItem[],
  histories: Iterable<History>,
): Placed[] {
  const onCars = new Set<string>();
  for (const { timeline } of histories)
    for (const { entry } of timeline) if (entry.id !== null) onCars.add(entry.id);
  const services = entries
    .filter(({ id, kind }) => kind !== 'service' || !onCars.has(id))
    .flatMap((entry) => caseEntries(entry, items))
    .filter(({ type }) => type === 'service');
  const car = { id: gear.id, odoDigits: null, hemisphere: null, roadKmh: null };
  // the odometer of a starting point belongs to no car in particular
  const starts = caseItems.map((item) => ({
    ...item,
    baseline: item.baseline && { ...item.baseline, odometerKm: null },
  }));
  const { timeline } = placeEntries(
    { car, asOf, entries: services, storage: [], planned: [], items: starts },
    parseDay(asOf),
  );
  const placed = new Set(timeline.map(({ entry }) => entry.id));
  const markers = entries.filter(({ id }) => !onCars.has(id) && !placed.has(id)).map(marker);
  return [...timeline, ...markers];
}

/** An entry that only needs a place: reads nothing, serves nothing. */
function marker(entry: Entry): Placed {
  const { id, on, recorded, kind, odometer } = entry;
  const minute = minuteOfDay(entry);
  const bare: CaseEntry = {
    type: 'reading',
    id,
    date: on,
    minute,
    recorded,
    kind,
    canonical: id,
    odometerKm: null,
    hourMeterH: null,
  };
  return {
    entry: bare,
    day: parseDay(on),
    minute: minute ?? UNTIMED_MINUTE,
    rank: odometer === undefined ? RANK.serviceWithoutReading : RANK.reading,
    startingPoint: false,
  };
}
