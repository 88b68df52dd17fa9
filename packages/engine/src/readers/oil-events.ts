import { KM_PER_CIRCUIT_HOUR, KM_PER_PASS, KM_PER_SESSION } from '../history/derive-amounts.ts';
import { isPourable } from '../log/quantity.ts';
import type { OilEvent, OilHappening } from '../oil/to-operations.ts';
import { type Loose, shortly } from './odd-values.ts';
import { isOilLevel, type OilEntry } from './oil-entry.ts';
import { type OnTheWay, oilTotals } from './oil-totals.ts';

/** In which classes a session stands for a distance; a touring day has one of its own. */
const BY_SESSION = ['circuit', 'autocross', 'strip'] as const;

/** Beyond these a figure is a slip of the pen: as far as any odometer goes, and so often. */
const MOST = { distanceKm: 10_000_000, hours: 100_000, sessions: 100_000, runs: 100_000 };

type Use = { useClass: string; km: number | null; runs: number };

export type OilEvents = {
  events: OilEvent[];
  /** km of the last event, and of the last odometer value that was accepted */
  lastKm: number;
  lastKnownKm: number | null;
  /** the drive from the last event to the end, where one was given */
  rest: OilEvent['drive'] | null;
  logged: { circuit: boolean; strip: boolean };
  notes: string[];
};

const amount = (value: unknown, most: number): number | null =>
  typeof value === 'number' && value >= 0 && value <= most ? value : null;

const AMOUNTS = ['distanceKm', 'hours', 'sessions', 'runs'] as const;

/** What a use says of itself that cannot be used. */
function amountNotes({ raw, date }: OilEntry): string[] {
  return AMOUNTS.filter((name) => (raw[name] ?? null) !== null)
    .filter((name) => amount(raw[name], MOST[name]) === null)
    .map((name) => `${name} ${shortly(raw[name])} is no amount: not used (${date})`);
}

/** What a use amounts to, from what was given. Common practice for club days, no published source. */
function readUse(raw: Loose): Use {
  const useClass = typeof raw.useClass === 'string' ? raw.useClass : 'road';
  const [km, hours, sessions, runs] = AMOUNTS.map((name) => amount(raw[name], MOST[name]));
  const bySession = BY_SESSION.find((one) => one === useClass);
  const derived =
    km ??
    (useClass === 'circuit' && hours !== null && hours !== undefined
      ? hours * KM_PER_CIRCUIT_HOUR
      : null) ??
    (sessions !== null && sessions !== undefined && bySession !== undefined
      ? sessions * KM_PER_SESSION[bySession]
      : null) ??
    (useClass === 'strip' && runs !== null && runs !== undefined ? runs * KM_PER_PASS : null);
  return { useClass, km: derived, runs: useClass === 'strip' ? (runs ?? 0) : 0 };
}

/** Null: an entry without an oil operation, which supplies odometer values only. */
function happeningOf({ kind, raw }: OilEntry): OilHappening | null {
  const level = (name: string) => (isOilLevel(raw[name]) ? raw[name] : null);
  switch (kind) {
    case 'use':
    case 'repair':
      return { is: kind };
    case 'reading': {
      const read = level('level');
      const step = raw.step;
      if (read === null) return null;
      return {
        is: 'reading',
        level: read,
        resolution: typeof step === 'number' && step > 0 && step <= 1 ? step : null,
        poor: raw.quality === 'poor',
      };
    }
    case 'topUp': {
      const volume = raw.volumeL ?? null;
      const usable = typeof volume === 'number' && isPourable(volume);
      if (volume !== null && !usable) return null;
      return {
        is: 'topUp',
        volumeL: usable ? volume : null,
        filledToMax: raw.filledToMax === true,
        before: level('levelBefore'),
        after: level('levelAfter'),
      };
    }
    case 'oilChange':
      return { is: 'change', after: level('levelAfter') };
    default:
      return null;
  }
}

/**
 * The entries of an `oil/1` log that cut a drive, each with what was driven since the last one.
 *
 * road = distance - circuit - drag strip - what was carried over, never negative; a shortfall is carried to the
 * next one. Autocross counts as circuit; touring is road; a drag-strip use without runs counts as road.
 *
 * @param entries in order
 * @param end the day of the answer with its odometer; null: none
 */
export function oilEvents(entries: readonly OilEntry[], end: OilEntry | null): OilEvents {
  const all = end === null ? entries : [...entries, end];
  const uses = new Map<OilEntry, Use>();
  const way = all.map((entry): OnTheWay => {
    const use = entry.kind === 'use' ? readUse(entry.raw) : null;
    if (use !== null) uses.set(entry, use);
    return {
      entry,
      oldOdometerKm: amount(entry.raw.oldOdometerKm, MOST.distanceKm),
      useKm: use?.km ?? null,
      cuts: entry === end || happeningOf(entry) !== null,
    };
  });
  const { kept, lastKnownKm, notes } = oilTotals(way);
  let before: number | null = null;
  let debt = 0;
  let rest: OilEvent['drive'] | null = null;
  const events: OilEvent[] = [];
  for (const { at, totalKm } of kept) {
    if (!at.cuts) continue;
    const use = uses.get(at.entry);
    const isCircuit = use?.useClass === 'circuit' || use?.useClass === 'autocross';
    const circuitKm = isCircuit ? (use?.km ?? 0) : 0;
    const stripKm = (use?.runs ?? 0) > 0 ? (use?.km ?? 0) : 0;
    const road = (before === null ? 0 : totalKm - before) - circuitKm - stripKm - debt;
    debt = Math.max(0, -road);
    before = totalKm;
    const drive = {
      road: Math.max(0, road) / 1000,
      circuit: circuitKm / 1000,
      runs: use?.runs ?? 0,
    };
    const happening = happeningOf(at.entry);
    if (happening === null) rest = drive;
    else {
      const { ref, condition } = at.entry;
      events.push({ entry: ref, totalKm, drive, condition, happening });
    }
  }
  return {
    events,
    lastKm: before ?? 0,
    lastKnownKm,
    rest,
    logged: {
      circuit: events.some(({ drive }) => drive.circuit > 0),
      strip: events.some(({ drive }) => drive.runs > 0),
    },
    notes: [...entries.flatMap((one) => (one.kind === 'use' ? amountNotes(one) : [])), ...notes],
  };
}
