import type { Entry } from '../../log/entry.ts';
import type { EventInput } from '../../log/event.ts';
import type { UseClass } from '../../log/item.ts';
import { USE_OF_SORT } from '../../log/planned-event.ts';
import { sortEntries } from '../../log/sort-entries.ts';

/** An event of the garage's calendar with its id. */
export type DatedEvent = { id: string; event: EventInput };

/** An entry that tells of a use. */
export type RecordedUse = Extract<Entry, { kind: 'drive' | 'session' | 'strip' }>;

/** How well a use goes with an event: not at all, by its day alone where the event names no car, or by its car too. */
type Fit = 0 | 1 | 2;

/**
 * The recorded uses that belong to an event, in the order of the log.
 *
 * What an entry says of its event is taken as said. Else car, day and class have to fit, and no other event
 * may fit as well: of two on one day nobody can tell. The day is that of the use, any day of a road trip, or
 * the day the use was planned on. An event that names no car fits any, but less well than one that does.
 *
 * @param event whose uses are looked for
 * @param entries of any cars, tombstones included, in any order
 * @param others events of the garage; the event itself may be among them
 */
export function usesOfEvent(
  event: DatedEvent,
  entries: readonly Entry[],
  others: readonly DatedEvent[],
): RecordedUse[] {
  const rest = others.filter(({ id }) => id !== event.id);
  const own = entries.flatMap((entry) => {
    const use = useOf(entry);
    return use !== null && belongs(use, event, rest) ? [use] : [];
  });
  return sortEntries(own);
}

function useOf(entry: Entry): RecordedUse | null {
  if (entry.removed) return null;
  return entry.kind === 'drive' || entry.kind === 'session' || entry.kind === 'strip'
    ? entry
    : null;
}

function belongs(use: RecordedUse, event: DatedEvent, rest: readonly DatedEvent[]): boolean {
  if (use.kind === 'session' && use.event !== undefined) return use.event === event.id;
  const fit = fitOf(use, event.event);
  return fit > 0 && rest.every((other) => fitOf(use, other.event) < fit);
}

function fitOf(use: RecordedUse, { sort, cars, start, end = start }: EventInput): Fit {
  if (useClassOf(use) !== USE_OF_SORT[sort] || use.car === undefined) return 0;
  const last = use.kind === 'drive' ? (use.until ?? use.on) : use.on;
  const planned = use.kind === 'drive' ? undefined : use.plannedOn;
  const onItsDays = use.on <= end && last >= start;
  const plannedThen = planned !== undefined && planned >= start && planned <= end;
  if (!onItsDays && !plannedThen) return 0;
  if (cars.includes(use.car)) return 2;
  return cars.length === 0 ? 1 : 0;
}

/** @example useClassOf({ kind: 'strip', ... }) // "strip" */
export function useClassOf(use: RecordedUse): UseClass {
  return use.kind === 'strip' ? 'strip' : use.use;
}
