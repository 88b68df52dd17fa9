import type { DistanceUnit } from '../log/units.ts';
import type { Analysis } from '../wear/result.ts';
import { countWord, listWords } from './grammar.ts';
import { findingWords, incidentWords, wheelsWords } from './matter-words.ts';

/** What forbids driving a car, the worst first, one sentence each; nothing where nothing on record does. */
export function stopSentences(analysis: Analysis, unit: DistanceUnit): string[] {
  const { status, matters } = analysis;
  const { findings, incidents, wheels } = matters;
  const forbidding = findings.filter(({ severity }) => severity === 'doNotDrive');
  const off = wheels.state === 'off' ? wheelsWords(wheels, unit) : null;
  return [
    ...forbidding.map((finding) => `Do not drive: ${findingWords(finding)}.`),
    ...incidents.map((incident) => `${incidentWords(incident)}.`),
    ...(off === null ? [] : [`${off}.`]),
    ...wakeSentences(analysis),
    ...(status === 'inPieces' ? ['In pieces.'] : []),
  ];
}

/** Laid up, its steps are expected; see `stopOf()`. */
function wakeSentences({ status, matters: { wakeSteps } }: Analysis): string[] {
  if (status === 'laidUp' || wakeSteps.length === 0) return [];
  const names = listWords(
    wakeSteps.map(({ what }) => what),
    4,
  );
  const [are, them] = wakeSteps.length === 1 ? ['is', 'it'] : ['are', 'them'];
  return [`Not woken up: ${names} ${are} as the lay-up left ${them}.`];
}

/** What is open but forbids nothing: findings for before hard use, wheels to be checked again. */
export function openSentences({ matters }: Analysis, unit: DistanceUnit): string[] {
  const { findings, wheels } = matters;
  const hard = findings.filter(({ severity }) => severity === 'beforeHardUse');
  const lesser = findings.filter(({ severity }) => severity === 'watch').length;
  const again = wheels.state === 'recheckDue' ? wheelsWords(wheels, unit) : null;
  return [
    ...hard.map((finding) => `Before hard use: ${findingWords(finding)}.`),
    ...(again === null ? [] : [`${again}.`]),
    ...(lesser > 0
      ? [`${countWord(lesser)} ${lesser === 1 ? 'finding is' : 'findings are'} being watched.`]
      : []),
  ];
}

/** Where a car is, if it is not here in use or laid up; null otherwise. */
export function goneSentence({ status }: Pick<Analysis, 'status'>): string | null {
  if (status === 'sold') return 'Sold: its book is kept.';
  return status === 'away' ? 'Away: lent, or in somebody else’s hands.' : null;
}
