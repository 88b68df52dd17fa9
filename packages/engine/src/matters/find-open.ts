import type { Entry, EntryOf } from '../log/entry.ts';
import { sortEntries } from '../log/sort-entries.ts';
import { inspectionLines } from './inspection-lines.ts';
import type { OpenFinding, OpenIncident, Severity } from './result.ts';

const WORST_FIRST: readonly Severity[] = ['doNotDrive', 'beforeHardUse', 'watch', 'cosmetic'];
/** after any day there is */
const NO_DAY = '9999';

/**
 * Findings and incidents that stand open: not removed, not resolved, and no answer names them. What is
 * dated after the day does not count, an answer from tomorrow neither.
 *
 * @param entries of a car, a piece or a whole garage, tombstones included, in any order
 * @param asOf civil date
 */
export function findOpen(
  entries: readonly Entry[],
  asOf: string,
): { findings: OpenFinding[]; incidents: OpenIncident[] } {
  const standing = sortEntries(entries.filter(({ removed, on }) => !removed && on <= asOf));
  const answered = new Set(
    standing.flatMap((entry) => (entry.kind === 'answer' ? [entry.notice] : [])),
  );
  const open = standing.filter(({ id }) => !answered.has(id));
  return {
    findings: open
      .flatMap((entry) => (entry.kind === 'finding' ? findingOf(entry) : []))
      .sort(byWorst),
    incidents: open.flatMap((entry) => (entry.kind === 'incident' ? [incidentOf(entry)] : [])),
  };
}

function findingOf(entry: EntryOf<'finding'>): OpenFinding[] {
  if (entry.resolvedBy !== undefined) return [];
  const { id, on, what, where, severity, dueBy, photos } = entry;
  return [
    {
      entry: id,
      on,
      what,
      where: where ?? null,
      severity,
      dueBy: dueBy ?? null,
      photos: photos ?? [],
    },
  ];
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
