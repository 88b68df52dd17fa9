import { stopOf } from '../matters/car-status.ts';
import type { CarStatus, Matters, Stop } from '../matters/result.ts';
import type { Analysis } from '../wear/result.ts';
import { formatDay } from './format-day.ts';
import { countWord } from './grammar.ts';
import { findingWords, incidentWords, STOP_WORDS } from './matter-words.ts';
import { isUrgent, OIL_STOP_WORDS, type OilStop, oilStopOf } from './oil-stop-sentence.ts';

/** What everybody who may use a car has to know at once. */
export type UrgentFact = {
  stop: UrgentStop | null;
  oil: Exclude<OilStop, 'look'> | null;
  /** civil date of what stops it, else of the last look at its oil; null: not known */
  since: string | null;
  /** in words, without the car's name and without a full stop */
  what: string;
};

export type UrgentStop = Extract<Stop, 'doNotDrive' | 'incident' | 'wheelsOff'>;

/** As much of an analysis as it takes. */
export type UrgentKnown = {
  status: CarStatus;
  stop: Stop | null;
  /** null: of a form that cannot be read now; the stop is told all the same */
  matters: Pick<Matters, 'findings' | 'incidents' | 'wheels'> | null;
  oil: OilStop | null;
  /** civil date of the last look at the oil */
  lookedOn: string | null;
};

/**
 * What forbids driving a car that somebody may take, or may cost its engine: the worst of its findings and
 * incidents, wheels that were off, oil that cannot wait. Null where nothing of the kind is on record.
 */
export function urgentFact(known: UrgentKnown): UrgentFact | null {
  const { status, matters, lookedOn } = known;
  const stop = urgentStop(known);
  const oil = status === 'inUse' && isUrgent(known.oil) ? (known.oil as UrgentFact['oil']) : null;
  const oilWords = oil === null ? null : `oil ${OIL_STOP_WORDS[oil]}`;
  const stopped = stop === null ? null : stopWords(stop, matters);
  const what = [stopped?.what, oilWords].filter((words) => words != null).join('; ');
  return what === '' ? null : { stop, oil, since: stopped ? stopped.since : lookedOn, what };
}

const RANK: Readonly<Record<UrgentStop, number>> = { doNotDrive: 0, incident: 1, wheelsOff: 2 };

/** Its place among what cannot wait, smaller first, in the order of `urgencyOf()`: oil comes last. */
export const urgentRank = ({ stop }: UrgentFact): number => (stop === null ? 3 : RANK[stop]);

/** The same of a car's whole analysis. */
export function urgentOf({ status, matters, oil }: Analysis): UrgentFact | null {
  const lookedOn = oil.lastLook?.on ?? null;
  return urgentFact({
    status,
    stop: stopOf(status, matters),
    matters,
    oil: oilStopOf(oil),
    lookedOn,
  });
}

/** Laid up and in pieces a car waits; lent, its wheels are in somebody else's hands. */
function urgentStop({ status, stop }: UrgentKnown): UrgentStop | null {
  if (stop === 'doNotDrive' || stop === 'incident')
    return status === 'inUse' || status === 'away' ? stop : null;
  return stop === 'wheelsOff' && status === 'inUse' ? stop : null;
}

type Stopped = { what: string; since: string | null };

function stopWords(stop: UrgentStop, matters: UrgentKnown['matters']): Stopped {
  const told = matters === null ? null : MATTER[stop](matters);
  return told ?? { what: STOP_WORDS[stop].toLowerCase(), since: null };
}

const MATTER: Readonly<
  Record<UrgentStop, (matters: NonNullable<UrgentKnown['matters']>) => Stopped | null>
> = {
  doNotDrive: ({ findings, incidents }) => {
    const forbidding = findings.filter(({ severity }) => severity === 'doNotDrive');
    const [first] = forbidding;
    if (!first) return null;
    const more = andMore(forbidding.length + incidents.length);
    return { what: `do not drive, ${findingWords(first)}${more}`, since: first.on };
  },
  incident: ({ incidents }) => {
    const [first] = incidents;
    if (!first) return null;
    // its detail is read where it is answered
    const words = `${incidentWords({ ...first, detail: null })}${andMore(incidents.length)}`;
    return { what: words.charAt(0).toLowerCase() + words.slice(1), since: first.on };
  },
  wheelsOff: ({ wheels: { on } }) => {
    if (on === null) return null;
    return { what: `wheels off on ${formatDay(on)}, torque not on record since`, since: on };
  },
};

const andMore = (count: number) =>
  count > 1 ? `, and ${countWord(count - 1).toLowerCase()} more` : '';

/** What forbids driving is never laid aside. */
export function mayLayAside({ stop }: Pick<UrgentFact, 'stop'>): boolean {
  return stop === null || stop === 'wheelsOff';
}

/** The same as long as the fact is, so that what was laid aside comes back when it changes. */
export function urgentKey({ stop, oil, since }: Omit<UrgentFact, 'what'>): string {
  return [stop, oil, since].map((part) => part ?? '').join('_');
}
