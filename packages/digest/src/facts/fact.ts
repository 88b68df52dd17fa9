import type { DueLine, UrgentFact } from '@quartermark/engine/display';
import type { OilNoticeKind } from '@quartermark/engine/oil';
import type { Verdict } from '@quartermark/engine/readiness';
import type { DistanceUnit } from '@quartermark/engine/units';

/** What a letter can speak of, one thing of one car each; civil dates throughout. */
export type Fact =
  | (FactBase & { kind: 'urgent'; urgent: UrgentFact })
  | (FactBase & { kind: 'notWorkedOut'; since: string })
  | (FactBase & { kind: 'verdict'; event: EventDays; verdict: Verdict; open: readonly string[] })
  | (FactBase & { kind: 'overdue'; line: DueLine; unit: DistanceUnit; since: string | null })
  | (FactBase & { kind: 'oilNotice'; notice: string; what: OilNoticeKind; since: string })
  | (FactBase & {
      kind: 'missedLook';
      /** the last look, and the day the next one was due; null: none on record */
      looked: { on: string; due: string } | null;
    })
  | (FactBase & { kind: 'dueSoon'; line: DueLine; unit: DistanceUnit });

export type FactKind = Fact['kind'];
export type FactOf<K extends FactKind> = Extract<Fact, { kind: K }>;

export type FactBase = {
  /** `car/kind/subject`: the same as long as the cause is, and another one after it */
  id: string;
  car: string;
  carName: string;
  /** greater is worse, among facts of the same id */
  grade: number;
  /** as what it was known; another one is news for a verdict alone */
  state: string;
  quiet: Quiet | null;
};

/** Why somebody need not hear of it for now. One that ran out is kept, so that it is spoken of then. */
export type Quiet = {
  because: 'ordered' | 'putOff';
  /** the last day without a word of it */
  until: string;
  /** as bad as it was then: what became worse is told all the same */
  grade: number;
};

/** An event of the calendar with its days, both inclusive. */
export type EventDays = { id: string; name: string; start: string; end: string };

/** That somebody put off a fact: "after Saturday". */
export type PutOff = { fact: string; until: string; grade: number };

/** @example factId('c1', 'overdue', 'i1:2026-01-10') // "c1/overdue/i1:2026-01-10" */
export function factId(car: string, kind: FactKind, subject: string): string {
  return `${car}/${kind}/${subject}`;
}
