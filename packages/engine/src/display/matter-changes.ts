import type { DistanceUnit } from '../log/units.ts';
import type { Analysis } from '../wear/result.ts';
import { INCIDENT_WORDS } from './cause-words.ts';
import { listWords } from './grammar.ts';
import {
  findingWords,
  incidentWords,
  SEVERITY_WORDS,
  STATUS_WORDS,
  wheelsWords,
} from './matter-words.ts';

type One = { entry: string };

/** What is in one list and not in the other, by the entry it rests on. */
function without<T extends One>(list: readonly T[], other: readonly One[]): T[] {
  const known = new Set(other.map(({ entry }) => entry));
  return list.filter(({ entry }) => !known.has(entry));
}

/**
 * What became different of what stands open on a car, one sentence each, what forbids driving first:
 * findings, incidents, wheels, lines of the lay-up, where the car stands.
 *
 * @param unit unit of the odometer
 */
export function matterChanges(before: Analysis, after: Analysis, unit: DistanceUnit): string[] {
  const [was, now] = [before.matters, after.matters];
  return [
    ...without(now.findings, was.findings).map(
      (it) => `${SEVERITY_WORDS[it.severity]}: ${findingWords(it)}.`,
    ),
    ...without(now.incidents, was.incidents).map((it) => `${incidentWords(it)}.`),
    ...without(was.findings, now.findings).map((it) => `No longer open: ${it.what}.`),
    ...without(was.incidents, now.incidents).map(
      (it) => `Looked over: ${INCIDENT_WORDS[it.what].toLowerCase()}.`,
    ),
    ...wheelsChange(before, after, unit),
    ...stepsChange(before, after),
    ...(before.status === after.status
      ? []
      : [
          `The car: ${STATUS_WORDS[before.status].toLowerCase()} → ${STATUS_WORDS[after.status].toLowerCase()}.`,
        ]),
  ];
}

function wheelsChange(before: Analysis, after: Analysis, unit: DistanceUnit): string[] {
  const [was, now] = [before.matters.wheels, after.matters.wheels];
  const words = wheelsWords(now, unit);
  const same = was.state === now.state && was.corners.join() === now.corners.join();
  return same || words === null ? [] : [`${words}.`];
}

function stepsChange(before: Analysis, after: Analysis): string[] {
  const key = ({ layUp, what }: { layUp: string; what: string }) => `${layUp} ${what}`;
  const open = new Set(after.matters.wakeSteps.map(key));
  const undone = before.matters.wakeSteps.filter((step) => !open.has(key(step)));
  if (undone.length === 0) return [];
  const names = undone.map(({ what }) => what);
  return [`Undone after the lay-up: ${listWords(names, names.length)}.`];
}
