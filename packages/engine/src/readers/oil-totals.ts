import { parseDay } from '../calendar/day-number.ts';
import type { OilEntry } from './oil-entry.ts';
import { UNTIMED_MINUTE } from './oil-order.ts';

/** A drop larger than this, that does not come back, is another odometer. */
const DROP_KM = 300;
const LOOK_AHEAD = 3;
const MOST_KM_PER_DAY = 2000;

/** An entry on its way to a distance: what it shows and how far it says that it went. */
export type OnTheWay = {
  entry: OilEntry;
  /** the old clock's last value, where an exchange gives it */
  oldOdometerKm: number | null;
  /** km of a use; null where none is known */
  useKm: number | null;
  /** it is none of the log, and what happens up to it is told apart */
  cuts: boolean;
};

export type Totals = {
  /** km since the log began of each entry that stays */
  kept: { at: OnTheWay; totalKm: number }[];
  /** km of the last odometer value that was accepted; null: none was */
  lastKnownKm: number | null;
  notes: string[];
};

const isExchange = ({ entry }: OnTheWay) => entry.kind === 'odometerReplaced';
const dayOf = ({ entry }: OnTheWay) => parseDay(entry.date);
const momentOf = (at: OnTheWay) => dayOf(at) * 1440 + (at.entry.minute ?? UNTIMED_MINUTE);

/**
 * Gives every entry its place on one scale of kilometres.
 *
 * A lower value is another odometer if it is lower by more than 300 km and none of the next three comes back
 * (the distance across is then unknown and counts as 0), else it is set aside; so is one that implies more than
 * 2,000 km a day. Between two values entries lie by time, and a use by its own distance. Entries that neither
 * cut a drive nor carry an accepted value are left out.
 *
 * @param entries in order
 */
export function oilTotals(entries: readonly OnTheWay[]): Totals {
  const notes: string[] = [];
  const known = acceptedTotals(entries, notes);
  const staying = entries
    .map((at, index) => ({ at, knownKm: known[index] ?? null }))
    .filter(({ at, knownKm }) => at.cuts || knownKm !== null);
  const firstKm = staying.find(({ knownKm }) => knownKm !== null)?.knownKm ?? 0;
  let before = firstKm;
  let lastKnown = -1;
  let next = staying.findIndex(({ knownKm }) => knownKm !== null);
  const kept = staying.map(({ at, knownKm }, index) => {
    if (next !== -1 && next <= index)
      next = staying.findIndex((one, later) => later > index && one.knownKm !== null);
    if (knownKm !== null) {
      lastKnown = index;
      before = knownKm;
    } else if (lastKnown === -1 && next !== -1) before = firstKm;
    else {
      const nextKm = next === -1 ? null : (staying[next]?.knownKm ?? null);
      if (at.useKm !== null)
        before = Math.min(before + at.useKm, nextKm ?? Number.POSITIVE_INFINITY);
      else if (nextKm !== null)
        before = Math.max(before, byTime(staying, lastKnown, next, momentOf(at)));
    }
    return { at, totalKm: before };
  });
  const last = known.findLast((total) => total !== null);
  return { kept, lastKnownKm: last ?? null, notes };
}

function byTime(
  staying: readonly { at: OnTheWay; knownKm: number | null }[],
  from: number,
  to: number,
  moment: number,
): number {
  const [a, b] = [staying[from], staying[to]];
  if (a === undefined || b === undefined || a.knownKm === null || b.knownKm === null) return 0;
  const [begins, ends] = [momentOf(a.at), momentOf(b.at)];
  const share = ends > begins ? (moment - begins) / (ends - begins) : 1;
  return a.knownKm + share * (b.knownKm - a.knownKm);
}

/** Totals of the values that are accepted; null where there is none. */
function acceptedTotals(entries: readonly OnTheWay[], notes: string[]): (number | null)[] {
  let offset = 0;
  let last: { km: number; day: number } | null = null;
  return entries.map((at, index) => {
    const { odometerKm, date } = at.entry;
    if (odometerKm === null) return null;
    const day = dayOf(at);
    const accept = (km: number) => {
      last = { km, day };
      return km;
    };
    if (isExchange(at)) {
      const old = at.oldOdometerKm === null ? null : at.oldOdometerKm + offset;
      const km = Math.max(old ?? last?.km ?? odometerKm, last?.km ?? Number.NEGATIVE_INFINITY);
      offset = km - odometerKm;
      return accept(km);
    }
    const km = odometerKm + offset;
    if (last === null) return accept(km);
    if (km < last.km) {
      if (km < last.km - DROP_KM && !comesBack(entries, index, offset, last.km)) {
        notes.push(
          `odometer ${odometerKm} km: another clock, the distance across it is not known (${date})`,
        );
        offset = last.km - odometerKm;
        return accept(last.km);
      }
      notes.push(`odometer ${odometerKm} km is lower than before: not used (${date})`);
      return null;
    }
    if (km - last.km > MOST_KM_PER_DAY * (day - last.day + 1)) {
      notes.push(`odometer ${odometerKm} km is more than 2,000 km a day: not used (${date})`);
      return null;
    }
    return accept(km);
  });
}

function comesBack(
  entries: readonly OnTheWay[],
  index: number,
  offset: number,
  lastKm: number,
): boolean {
  let looked = 0;
  for (let at = index + 1; at < entries.length && looked < LOOK_AHEAD; at += 1) {
    const later = entries[at] as OnTheWay;
    const value = later.entry.odometerKm;
    if (value === null) continue;
    if (isExchange(later)) return false;
    looked += 1;
    if (value + offset >= lastKm - DROP_KM) return true;
  }
  return false;
}
