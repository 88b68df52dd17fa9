import type { OpenMatter } from '@quartermark/api/client';
import { formatDay, INCIDENT_WORDS, SEVERITY_WORDS, whereWords } from '@quartermark/engine/display';
import type { MarkKind } from '../components/StateMark.tsx';

/** How bad an open matter is, the worst first; an incident forbids driving until it is looked over. */
export const RANKS = ['doNotDrive', 'incident', 'beforeHardUse', 'watch', 'cosmetic'] as const;
export type Rank = (typeof RANKS)[number];

type Matter = Pick<OpenMatter, 'kind' | 'matter'>;

export function rankOf({ kind, matter }: Matter): Rank {
  return kind === 'incident' || !('severity' in matter) ? 'incident' : matter.severity;
}

export const RANK_WORDS: Readonly<Record<Rank, string>> = {
  ...SEVERITY_WORDS,
  incident: 'Not looked over',
};

export const RANK_MARK: Readonly<Record<Rank, MarkKind>> = {
  doNotDrive: 'overdue',
  incident: 'overdue',
  beforeHardUse: 'dueSoon',
  watch: 'noDate',
  cosmetic: 'noDate',
};

/** What it is, in a few words. */
export function matterName({ matter }: Matter): string {
  return 'severity' in matter ? matter.what : INCIDENT_WORDS[matter.what];
}

/** Where on the car, since when, and by when, as far as that is said. */
export function matterDetail({ matter }: Matter, today: string): string {
  const since = `since ${formatDay(matter.on)}`;
  if (!('severity' in matter)) return since;
  const { where, dueBy } = matter;
  const by = dueBy === null ? '' : dueWords(dueBy, today);
  return [whereWords(where), since, by].filter((words) => words !== '').join(', ');
}

function dueWords(dueBy: string, today: string): string {
  return `${dueBy < today ? 'was to be done by' : 'to be done by'} ${formatDay(dueBy)}`;
}

/** The car, and the set, tool or person, that it is about. */
export function whoseWords({ carName, gearName }: OpenMatter): string {
  return [carName, gearName].filter(Boolean).join(', ') || 'The garage';
}

/** The first line of the findings: what forbids driving, else how many stand open. */
export function findingsAnswer(rows: readonly OpenMatter[]): string {
  if (rows.length === 0) return 'No finding is open.';
  const forbidding = rows.filter((row) => rankOf(row) === 'doNotDrive');
  const incidents = rows.filter((row) => rankOf(row) === 'incident');
  const sentences = [
    forbidding.length === 0
      ? ''
      : `${counted(forbidding.length, 'finding forbids', 'findings forbid')} driving: ${told(forbidding)}.`,
    incidents.length === 0
      ? ''
      : `${counted(incidents.length, 'incident is', 'incidents are')} not looked over: ${told(incidents)}.`,
  ].filter((sentence) => sentence !== '');
  if (sentences.length > 0) return sentences.join(' ');
  return `No open finding forbids driving; ${counted(rows.length, 'stands', 'stand').toLowerCase()} open.`;
}

/** Two are told, the others counted: it is a first line. */
function told(rows: readonly OpenMatter[]): string {
  const named = rows.slice(0, 2).map((row) => `${matterName(row)} (${whoseWords(row)})`);
  const rest = rows.length - named.length;
  return [...named, ...(rest > 0 ? [`and ${rest} more`] : [])].join(', ');
}

function counted(count: number, one: string, many: string): string {
  return count === 1 ? `One ${one}` : `${count} ${many}`;
}
