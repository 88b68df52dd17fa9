import { parseDay } from '../calendar/day-number.ts';
import type { History } from '../history/build-history.ts';
import { positionOf, RANK, UNTIMED_MINUTE } from '../history/placed.ts';
import type { Entry, EntryOf } from '../log/entry.ts';
import { minuteOfDay, sortEntries } from '../log/sort-entries.ts';
import type { Corner, WheelsState } from './result.ts';
import { useSince } from './use-since.ts';

export const CORNERS: readonly Corner[] = ['frontLeft', 'frontRight', 'rearLeft', 'rearRight'];

/** Torque is checked again after so many kilometres. Source: common practice (80-160 km), no source. */
export const RECHECK_KM = 80;

/** The worst first: what is true of any corner is said before what is true of all. */
const WORST_FIRST = ['off', 'recheckDue', 'torqued', 'rechecked', 'notOnRecord'] as const;

type WheelsEntry = EntryOf<'wheels'> & Entry;

const NOT_ON_RECORD: WheelsState = {
  state: 'notOnRecord',
  corners: [],
  entry: null,
  on: null,
  sinceKm: null,
  sinceSessions: null,
};

/**
 * How the wheels stand: off (and their torque not recorded since), torqued, to be checked again after
 * the first session or 80 km, checked again. Corners are followed apart; the worst of them is said.
 *
 * @param entries of one car, tombstones included
 * @param history of the same car
 */
export function wheelsState(
  entries: readonly Entry[],
  history: History,
  asOf: string,
): WheelsState {
  const standing = entries.filter(
    (entry): entry is WheelsEntry => entry.kind === 'wheels' && !entry.removed && entry.on <= asOf,
  );
  const last = new Map<Corner, WheelsEntry>();
  for (const entry of sortEntries(standing))
    for (const corner of cornersOf(entry)) last.set(corner, entry);
  const states = [...new Set(last.values())].map((entry) => stateAfter(entry, history));
  const worst = WORST_FIRST.map((state) => states.find((it) => it.state === state)).find(
    (it) => it !== undefined,
  );
  if (worst === undefined) return NOT_ON_RECORD;
  const alike = states.filter(({ state }) => state === worst.state).map(({ entry }) => entry);
  const corners = CORNERS.filter((corner) => alike.includes(last.get(corner)?.id ?? null));
  return { ...worst, corners };
}

/** None named: all four. */
function cornersOf({ which }: WheelsEntry): readonly Corner[] {
  return which === undefined || which.length === 0 ? CORNERS : which;
}

function stateAfter(entry: WheelsEntry, history: History): WheelsState {
  const { id, on, change } = entry;
  const minute = minuteOfDay(entry) ?? UNTIMED_MINUTE;
  const rank = entry.odometer === undefined ? RANK.serviceWithoutReading : RANK.reading;
  // what lies before this place does not count; the entry itself adds nothing
  const position = positionOf(history.timeline, parseDay(on), minute, rank) - 0.5;
  const { distanceKm, sessions } = useSince(history, position);
  const due = (sessions ?? 0) > 0 || (distanceKm ?? Number.POSITIVE_INFINITY) >= RECHECK_KM;
  const state = change === 'torqued' && due ? 'recheckDue' : change;
  return { state, corners: [], entry: id, on, sinceKm: distanceKm, sinceSessions: sessions };
}
