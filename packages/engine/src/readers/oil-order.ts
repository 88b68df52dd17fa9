import { canonicalJson } from '../log/canonical-json.ts';
import type { OilEntry } from './oil-entry.ts';

/** An entry without a time counts as noon. */
export const UNTIMED_MINUTE = 720;

function isUse({ kind }: OilEntry): boolean {
  return kind === 'use';
}

function isExchange({ kind }: OilEntry): boolean {
  return kind === 'odometerReplaced';
}

function rank(entry: OilEntry): number {
  if (isUse(entry)) return 10;
  if (isExchange(entry)) return 30;
  return entry.odometerKm === null ? 40 : 20;
}

function compare(a: string | number, b: string | number): number {
  return a === b ? 0 : a < b ? -1 : 1;
}

/** Numbers before texts, both before the place in the list of entries that have none. */
function compareRecorded(a: OilEntry, b: OilEntry): number {
  const group = ({ recorded }: OilEntry) =>
    typeof recorded === 'number' ? 0 : typeof recorded === 'string' ? 1 : 2;
  return (
    group(a) - group(b) ||
    (a.recorded !== null && b.recorded !== null
      ? compare(a.recorded, b.recorded)
      : a.index - b.index)
  );
}

function minute(entry: OilEntry): number {
  return entry.minute ?? UNTIMED_MINUTE;
}

function sameTime(a: OilEntry | undefined, b: OilEntry): boolean {
  return a !== undefined && a.date === b.date && minute(a) === minute(b);
}

function blocks(sorted: readonly OilEntry[]): OilEntry[][] {
  const found: OilEntry[][] = [];
  for (const entry of sorted) {
    const block = found.at(-1);
    if (block !== undefined && sameTime(block[0], entry)) block.push(entry);
    else found.push([entry]);
  }
  return found;
}

/** Entries of one moment: by odometer where all have one, else uses and exchanges first. */
function reorder(block: OilEntry[]): OilEntry[] {
  const byOdometer = block.every((entry) => entry.odometerKm !== null && !isExchange(entry));
  const first = (entry: OilEntry) => (isUse(entry) || (!byOdometer && isExchange(entry)) ? 0 : 1);
  return block.toSorted(
    (a, b) =>
      (byOdometer ? (a.odometerKm ?? 0) - (b.odometerKm ?? 0) : 0) ||
      first(a) - first(b) ||
      compareRecorded(a, b),
  );
}

/**
 * The order of an `oil/1` log: (date, minute or 720, rank, odometer, recorded, the entry itself), then
 * each block of one moment by itself. Shuffling entries that carry `recorded` changes nothing.
 */
export function oilOrder(entries: readonly OilEntry[]): OilEntry[] {
  const canonical = (entry: OilEntry) => canonicalJson(JSON.parse(JSON.stringify(entry.raw)));
  const sorted = entries.toSorted(
    (a, b) =>
      compare(a.date, b.date) ||
      minute(a) - minute(b) ||
      rank(a) - rank(b) ||
      (a.odometerKm ?? 0) - (b.odometerKm ?? 0) ||
      compareRecorded(a, b) ||
      compare(canonical(a), canonical(b)),
  );
  return blocks(sorted).flatMap(reorder);
}
