import { canonicalJson } from './canonical-json.ts';
import type { EntryInput } from './entry.ts';
import { distanceKm } from './quantity.ts';

type Sortable = EntryInput & { recorded?: number };

const RANK = { use: 10, reading: 20, meterReset: 30, other: 40 } as const;

function rank(entry: Sortable): number {
  const { kind } = entry;
  if (kind === 'drive' || kind === 'session' || kind === 'strip') return RANK.use;
  if (kind === 'meterReplaced') return RANK.meterReset;
  return entry.odometer === undefined ? RANK.other : RANK.reading;
}

/**
 * Minute of the local day that places an entry in its day: its time, else 0 or 1439 where the person
 * said before or after driving, else null (which sorts as noon, 720).
 */
export function minuteOfDay(entry: Pick<EntryInput, 'time' | 'dayOrder'>): number | null {
  if (entry.time !== undefined) {
    const [hours, minutes] = entry.time.split(':');
    return Number(hours) * 60 + Number(minutes);
  }
  if (entry.dayOrder === undefined) return null;
  return entry.dayOrder === 'beforeDriving' ? 0 : 1439;
}

/**
 * The order of the log: (date, minute or 720, rank, odometer, recorded, kind, the entry itself). The
 * same key as the history's, so a list on a screen and the figures never disagree. The input is left
 * as it is; shuffling it changes nothing.
 *
 * @param entries of one car; `recorded` missing (not yet sent) counts as last
 */
export function sortEntries<E extends Sortable>(entries: readonly E[]): E[] {
  const keyed = entries.map((entry) => ({
    entry,
    on: entry.on,
    minute: minuteOfDay(entry) ?? 720,
    rank: rank(entry),
    km: entry.odometer === undefined ? 0 : distanceKm(entry.odometer),
    recorded: entry.recorded ?? Number.MAX_SAFE_INTEGER,
  }));
  keyed.sort(
    (a, b) =>
      order(a.on, b.on) ||
      a.minute - b.minute ||
      a.rank - b.rank ||
      a.km - b.km ||
      a.recorded - b.recorded ||
      order(a.entry.kind, b.entry.kind) ||
      order(canonicalJson(a.entry), canonicalJson(b.entry)),
  );
  return keyed.map(({ entry }) => entry);
}

function order(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
