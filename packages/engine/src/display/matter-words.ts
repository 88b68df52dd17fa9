import type { DistanceUnit } from '../log/units.ts';
import type {
  CarStatus,
  OpenFinding,
  OpenIncident,
  Severity,
  Stop,
  StorageLine,
  WakeStep,
  WheelsState,
} from '../matters/result.ts';
import { RECHECK_KM } from '../matters/wheels-state.ts';
import { INCIDENT_WORDS } from './cause-words.ts';
import { CORNER_WORDS } from './corner-words.ts';
import { formatDay } from './format-day.ts';
import { formatAmount, formatCount } from './format-quantity.ts';
import { capital, listWords } from './grammar.ts';

export const SEVERITY_WORDS: Readonly<Record<Severity, string>> = {
  doNotDrive: 'Do not drive',
  beforeHardUse: 'Before hard use',
  watch: 'Watch',
  cosmetic: 'Cosmetic',
};

export const STATUS_WORDS: Readonly<Record<CarStatus, string>> = {
  inUse: 'In use',
  laidUp: 'Laid up',
  inPieces: 'In pieces',
  away: 'Away',
  sold: 'Sold',
};

export const STOP_WORDS: Readonly<Record<Stop, string>> = {
  doNotDrive: 'Do not drive',
  incident: 'Not looked over',
  wheelsOff: 'Wheels not torqued',
  wakeSteps: 'Not woken up',
  inPieces: 'In pieces',
};

const HOW_UNDONE: Readonly<Record<StorageLine['how'], string>> = {
  disconnected: 'was disconnected',
  plugged: 'is plugged',
  drained: 'was drained',
  blownUp: 'was blown up',
  covered: 'is covered',
  other: 'was seen to',
};

/** A corner's name, or what was written; nothing where neither was said. */
export function whereWords(where: string | null): string {
  return where === null ? '' : (CORNER_WORDS[where] ?? where);
}

/** @example findingWords(finding) // "Brake hose cracked, rear left, since 12 June 2026" */
export function findingWords({ what, where, on, dueBy }: OpenFinding): string {
  const by = dueBy === null ? '' : `to be done by ${formatDay(dueBy)}`;
  return [what, whereWords(where), `since ${formatDay(on)}`, by]
    .filter((it) => it !== '')
    .join(', ');
}

/** @example incidentWords(incident) // "Soft brake pedal on 6 June 2026, not looked over yet" */
export function incidentWords({ what, on, detail }: OpenIncident): string {
  const more = detail === null ? '' : ` (${detail})`;
  return `${INCIDENT_WORDS[what]} on ${formatDay(on)}${more}, not looked over yet`;
}

function cornerList({ corners }: WheelsState): string {
  if (corners.length === 4) return 'all four';
  return listWords(corners.map((corner) => CORNER_WORDS[corner] ?? corner));
}

/** How the wheels stand, as a sentence without its stop; null where the log never says. */
export function wheelsWords(wheels: WheelsState, unit: DistanceUnit): string | null {
  const { state, on, sinceKm, sinceSessions } = wheels;
  if (state === 'notOnRecord' || on === null) return null;
  const day = formatDay(on);
  const which = cornerList(wheels);
  switch (state) {
    case 'off':
      return `Wheels were off on ${day} (${which}), their torque is not on record since`;
    case 'torqued':
      return `Wheels torqued on ${day} (${which}); check again after the first session or ${formatAmount('km', RECHECK_KM, unit)}`;
    case 'recheckDue':
      return `Wheels torqued on ${day} (${which}), ${driven(sinceKm, sinceSessions, unit)} since: check the torque again, cold`;
    case 'rechecked':
      return `Wheel torque checked again on ${day} (${which})`;
  }
}

function driven(km: number | null, sessions: number | null, unit: DistanceUnit): string {
  const far = km === null ? null : formatAmount('km', km, unit);
  const count = sessions ? formatCount(sessions, 'session') : null;
  return [count, far].filter((it) => it !== null).join(' and ') || 'driven';
}

/** @example wakeStepWords(step) // "Exhaust is plugged" */
export function wakeStepWords({ what, how }: WakeStep): string {
  return `${capital(what)} ${HOW_UNDONE[how]}`;
}
