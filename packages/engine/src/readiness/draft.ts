import { addDays } from '../calendar/add.ts';
import type { NeedKind } from '../log/requirements.ts';
import type { OrderBy } from '../orders/index.ts';
import type { Known } from './known.ts';
import type { Margin, Need, NeedStatus, RecordAt, Remedy, WorkKind } from './result.ts';

/** A need before it is weighed and accepted. */
export type Draft = Omit<Need, 'weight' | 'accepted' | 'mayAccept'> & {
  /** advice whatever the requirements say: nobody could mend it before the event */
  adviceOnly?: true;
};

type Told = {
  subject?: string | null;
  title: string;
  reason: string;
  evidence?: readonly (string | null)[];
  margin?: Margin | null;
  adviceOnly?: boolean;
};

type Judged = { status: NeedStatus; remedy: Remedy | null };

/** @example draft('bedding', { subject: id, title, reason }, MET) */
export function draft(kind: NeedKind, told: Told, judged: Judged): Draft {
  const { subject = null, title, reason, evidence = [], margin = null, adviceOnly } = told;
  return {
    id: subject === null ? kind : `${kind}:${subject}`,
    kind,
    subject,
    title,
    reason,
    margin,
    evidence: evidence.filter((id) => id !== null),
    ...judged,
    ...(adviceOnly && { adviceOnly: true }),
  };
}

export const MET: Judged = { status: 'met', remedy: null };

export type Work = {
  work: WorkKind;
  what: string;
  record: RecordAt | null;
  /** the last day for it, where it is earlier than the eve */
  latest?: string | null;
  earliest?: string | null;
  parts?: OrderBy | null;
  leadDays?: number;
  /** false: it cannot be done, however early one begins */
  possible?: boolean;
};

/** Something is missing that work puts right: `metAfterWork` where there is time, else `notMet`. */
export function afterWork(known: Known, work: Work): Judged {
  const remedy = remedyOf(known, work);
  return { status: remedy.feasible ? 'metAfterWork' : 'notMet', remedy };
}

/** It must not be done whatever time there is: only an answer in the log ends it. */
export function notMet(known: Known, work: Work): Judged {
  return { status: 'notMet', remedy: remedyOf(known, work) };
}

/** Nobody knows; writing it down would tell. */
export function unknown(known: Known, work: Work): Judged {
  return { status: 'unknown', remedy: remedyOf(known, work) };
}

function remedyOf(known: Known, given: Work): Remedy {
  const {
    work,
    what,
    record,
    earliest = null,
    parts = null,
    leadDays = 0,
    possible = true,
  } = given;
  const { event, today } = known;
  const doneBy = partsDay(parts, leadDays, today);
  return {
    work,
    what,
    latest: event === null ? null : (given.latest ?? event.latest),
    earliest: earliest !== null && earliest > today ? earliest : null,
    parts,
    leadDays,
    feasible: possible && (event === null || doneBy <= event.latest),
    record,
  };
}

/** The day on which the parts are there: today where none are needed. */
export function partsDay(parts: OrderBy | null, leadDays: number, today: string): string {
  const ahead = addLead(today, leadDays);
  if (parts === null || parts.kind === 'orderBy') return ahead;
  const { expected } = parts.order;
  if (parts.kind === 'onTheShelf') return today;
  if (expected === undefined) return ahead;
  return expected < today ? today : expected;
}

function addLead(today: string, leadDays: number): string {
  return leadDays === 0 ? today : addDays(today, leadDays);
}
