import { daysBetween } from '../calendar/add.ts';
import type { EntryInput } from './entry.ts';
import { distanceKm, type OdometerReading } from './quantity.ts';
import { sortEntries } from './sort-entries.ts';

/** Implied by two readings, more than this is a typing error (common practice, no source). */
const KM_PER_DAY_MAX = 2000;

export type KnownReading = OdometerReading & { on: string };
/** The readings on either side of a day; null where there is none. */
export type ReadingsAround = { before: KnownReading | null; after: KnownReading | null };
export type FieldProblem = { field: string; message: string };

const MONTHS = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

function said({ text, unit, on }: KnownReading): string {
  const [year, month, day] = on.split('-').map(Number);
  return `${text} ${unit} on ${day} ${MONTHS[(month ?? 1) - 1]} ${year}`;
}

function tooFast(from: KnownReading, to: KnownReading): boolean {
  return (distanceKm(to) - distanceKm(from)) / (daysBetween(from.on, to.on) + 1) > KM_PER_DAY_MAX;
}

const MEND =
  'Check the digits and the day. If it is right all the same, save it: it is kept and marked. If the instrument was changed, record that first.';

/**
 * What is odd about an odometer value before it is saved: lower than the reading before it, higher
 * than the one after it, or more than 2,000 km a day away. A question to ask once, never a refusal:
 * the person may be right.
 *
 * @param around the kept readings next to the candidate's day, see `readingsAround()`
 * @returns null where nothing is odd
 */
export function odometerProblem(
  around: ReadingsAround,
  candidate: KnownReading,
): FieldProblem | null {
  const { before, after } = around;
  const value = `odometer: ${candidate.text} ${candidate.unit}`;
  const problem = (message: string) => ({ field: 'odometer', message: `${message}. ${MEND}` });
  if (before && distanceKm(candidate) < distanceKm(before))
    return problem(`${value} is lower than ${said(before)}`);
  if (after && distanceKm(candidate) > distanceKm(after))
    return problem(`${value} is higher than ${said(after)}`);
  if (before && tooFast(before, candidate))
    return problem(`${value} is more than 2,000 km a day beyond ${said(before)}`);
  if (after && tooFast(candidate, after))
    return problem(`${value} leaves more than 2,000 km a day to ${said(after)}`);
  return null;
}

type Stored = EntryInput & { recorded?: number; removed?: boolean };

type Shown = {
  /** what sorts it: an exchange as such, all else as a plain reading */
  place: Stored;
  /** the scale an entry leaves to those after it, and the one it shows to those before; an exchange has two */
  leaves: KnownReading | null;
  meets: KnownReading | null;
};

function exchange(entry: Stored & { kind: 'meterReplaced' }): Shown {
  const { on, newFirst, oldLast } = entry;
  return {
    place: entry,
    leaves: newFirst.unit === 'h' ? null : { text: newFirst.text, unit: newFirst.unit, on },
    meets: !oldLast || oldLast.unit === 'h' ? null : { text: oldLast.text, unit: oldLast.unit, on },
  };
}

function reading(entry: Stored): Shown | null {
  if (entry.odometer === undefined) return null;
  const { id, zone, odometer, recorded } = entry;
  // the odometer of a use stands at its end
  const on = entry.kind === 'drive' ? (entry.until ?? entry.on) : entry.on;
  const when = on === entry.on ? { time: entry.time, dayOrder: entry.dayOrder } : {};
  const known = { ...odometer, on };
  return {
    place: {
      kind: 'odometer',
      id,
      on,
      zone,
      odometer,
      ...when,
      ...(recorded === undefined ? {} : { recorded }),
    },
    leaves: known,
    meets: known,
  };
}

function shown(entry: Stored): Shown | null {
  if (entry.kind !== 'meterReplaced') return reading(entry);
  return entry.meter === 'odometer' ? exchange(entry) : null;
}

/**
 * The odometer readings next to where an entry's own would take its place in the log. Readings of the
 * same minute, or of the same day where none has a time, are ordered by value and so never disagree.
 *
 * @param entries the car's entries; removed ones and the candidate itself are passed over
 * @param candidate the entry about to be saved
 * @param setAside ids of entries whose reading the history has already rejected
 * @returns nothing on either side for a candidate without an odometer value
 */
export function readingsAround(
  entries: readonly Stored[],
  candidate: Stored,
  setAside: ReadonlySet<string> = new Set(),
): ReadingsAround {
  const own = reading(candidate);
  if (own === null || candidate.kind === 'meterReplaced') return { before: null, after: null };
  const others = entries
    .filter(
      (entry) => entry.id !== candidate.id && entry.removed !== true && !setAside.has(entry.id),
    )
    .map(shown)
    .filter((one) => one !== null);
  const byPlace = new Map(others.map((one) => [one.place, one]));
  const sorted = sortEntries([...byPlace.keys(), own.place]);
  const at = sorted.indexOf(own.place);
  const neighbour = (index: number) => {
    const place = sorted[index];
    return place === undefined ? undefined : byPlace.get(place);
  };
  return { before: neighbour(at - 1)?.leaves ?? null, after: neighbour(at + 1)?.meets ?? null };
}
