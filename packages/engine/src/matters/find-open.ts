import { addDays } from '../calendar/add.ts';
import type { Entry, EntryOf } from '../log/entry.ts';
import { inspectionLines } from './inspection-lines.ts';
import { keptEntries } from './kept-entries.ts';
import type { OpenFinding, OpenIncident, Severity } from './result.ts';

const WORST_FIRST: readonly Severity[] = ['doNotDrive', 'beforeHardUse', 'watch', 'cosmetic'];
/** after any day there is */
const NO_DAY = '9999';

/**
 * Findings and incidents that stand open: not removed, not resolved, and no answer names them. What an
 * entry resolved that was removed since is open again. A finding or incident dated tomorrow counts (it
 * is tomorrow already where somebody wrote it), an answer from tomorrow does not.
 *
 * @param entries of a car, a piece or a whole garage, tombstones included, in any order
 * @param asOf civil date
 */
export function findOpen(
  entries: readonly Entry[],
  asOf: string,
): { findings: OpenFinding[]; incidents: OpenIncident[] } {
  const gone = new Set(entries.filter(({ removed }) => removed).map(({ id }) => id));
  const answered = new Set(
    keptEntries(entries, asOf).flatMap((entry) => (entry.kind === 'answer' ? [entry.notice] : [])),
  );
  const isOpen = (entry: Entry) =>
    !answered.has(entry.id) &&
    (entry.kind !== 'finding' || entry.resolvedBy === undefined || gone.has(entry.resolvedBy));
  const open = keptEntries(entries, addDays(asOf, 1)).filter(isOpen);
  return {
    findings: open
      .flatMap((entry) => (entry.kind === 'finding' ? [findingOf(entry)] : []))
      .sort(byWorst),
    incidents: open.flatMap((entry) => (entry.kind === 'incident' ? [incidentOf(entry)] : [])),
  };
}

function findingOf(entry: EntryOf<'finding'>): OpenFinding {
  const { id, on, what, where, severity, dueBy, photos } = entry;
  return {
    entry: id,
    on,
    what,
    where: where ?? null,
    severity,
    dueBy: dueBy ?? null,
    photos: photos ?? [],
  };
}

function incidentOf({ id, on, what, detail }: EntryOf<'incident'>): OpenIncident {
  return { entry: id, on, what, detail: detail ?? null, lines: inspectionLines(what) };
}

/** The sort is stable, so what is equal here stays in the order of the log. */
function byWorst(a: OpenFinding, b: OpenFinding): number {
  const worse = WORST_FIRST.indexOf(a.severity) - WORST_FIRST.indexOf(b.severity);
  return worse || compare(a.dueBy ?? NO_DAY, b.dueBy ?? NO_DAY) || compare(a.on, b.on);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
