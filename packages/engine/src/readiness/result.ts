import type { EntryKind } from '../log/entry.ts';
import type { NeedKind, ReadyFor } from '../log/requirements.ts';
import type { OrderBy } from '../orders/index.ts';

/** By their place: `met`, `metAfterWork` (there is time for the work), `unknown`, `notMet`. */
export const NEED_STATUSES = ['met', 'metAfterWork', 'unknown', 'notMet'] as const;
export type NeedStatus = (typeof NEED_STATUSES)[number];

/**
 * What the log says of a car for a use. `ready` never certifies anything: it is by the log.
 * `by`, with `canBeReady` alone: the civil date on which all blocking work can be done, parts included.
 */
export type Verdict =
  | { word: 'ready'; by: null }
  | { word: 'canBeReady'; by: string }
  | { word: 'notInTime'; by: null }
  | { word: 'notOnRecord'; by: null };

export const MARGIN_UNITS = [
  'km',
  'h',
  'sessions',
  'launches',
  'days',
  'mm',
  'g',
  'L',
  'dB',
] as const;

/** What is left at the end of the event and of the way home; negative: so much is missing. */
export type Margin = { value: number; unit: (typeof MARGIN_UNITS)[number] };

/** Sorts of work in the order in which somebody works: wheels are torqued after pads and tyres, pads bedded after that. */
export const WORK_KINDS = [
  /** undo what the lay-up left */
  'wakeUp',
  /** walk round after an incident, put a finding right */
  'lookInto',
  /** measure pads, tread, noise: what it shows decides what else is to be done */
  'measure',
  /** close a job that stands open */
  'finish',
  /** drain, fill, flush, bleed */
  'fluids',
  /** other items */
  'service',
  /** pads and discs */
  'brakes',
  'tyres',
  /** torque, check again */
  'torque',
  'bedIn',
  /** read the stick, top up to MAX */
  'oil',
  /** the car shown to somebody */
  'inspection',
  /** gear and papers of those who drive */
  'papers',
  /** write down what is not on record: odometer, what it did, what it will do */
  'writeDown',
] as const;
export type WorkKind = (typeof WORK_KINDS)[number];

/** Where what was done is written down. */
export type RecordAt =
  | { at: 'entry'; kind: EntryKind; item?: string; component?: string; notice?: string }
  /** the event's own form: what it does there, who drives */
  | { at: 'event' }
  /** a car's new item of a role */
  | { at: 'item' }
  | { at: 'gear'; gear: string };

export type Remedy = {
  work: WorkKind;
  /** the work, verb first, without a full stop: "Flush the brake fluid" */
  what: string;
  /** civil dates. The last day for it; null: as soon as can be (no event, or it is late already) */
  latest: string | null;
  /** done before this day it would not last until the end; null: today will do */
  earliest: string | null;
  /** its parts; null: none are needed or known of */
  parts: OrderBy | null;
  /** days to get the parts, 0 where they are on the shelf */
  leadDays: number;
  /** false: no longer possible before the event, or the interval is too short */
  feasible: boolean;
  record: RecordAt | null;
};

export type Accepted = { acceptanceId: string; by: string; on: string; because: string };

/** One thing that is asked of a car or those who drive it. */
export type Need = {
  /** `kind`, or `kind:subject`; stays the same while its cause does */
  id: string;
  kind: NeedKind;
  /** id of the item, part, person, finding or incident, or a role; null where the car alone is meant */
  subject: string | null;
  weight: 'blocking' | 'advice';
  status: NeedStatus;
  /** what it is about: "Brake fluid, flush", "Front pads, circuit compound" */
  title: string;
  margin: Margin | null;
  /** a sentence that says why */
  reason: string;
  /** ids of the entries it rests on */
  evidence: readonly string[];
  /** null where it is met, or where nothing can be done about it */
  remedy: Remedy | null;
  /** somebody took it upon himself for this event: it no longer counts for the verdict, and stays visible */
  accepted: Accepted | null;
  mayAccept: boolean;
};

/** What the log says of one car for one use. */
export type CarReadiness = {
  car: string;
  use: ReadyFor;
  /** null: the road, today */
  event: string | null;
  verdict: Verdict;
  /** blocking before advice, then notMet > unknown > metAfterWork > met, then by the order of work */
  needs: readonly Need[];
};

/** A line of an event's list of work; what is one job in the garage is one line (oil and its filter). */
export type WorkLine = {
  /** `car/work/subject`, the same as long as the need is */
  id: string;
  car: string;
  work: WorkKind;
  what: string;
  /** ids of the needs it meets */
  needs: readonly string[];
  blocking: boolean;
  latest: string | null;
  earliest: string | null;
  parts: OrderBy | null;
  leadDays: number;
  feasible: boolean;
  record: RecordAt | null;
};
