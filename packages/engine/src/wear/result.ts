import type { IncidentSort } from '../log/common.ts';
import type { Measure, UseClass } from '../log/item.ts';
import type { CarStatus, Matters } from '../matters/result.ts';
import type { CarOil } from '../oil/oil-answer.ts';

/**
 * What the engine says of one car on one day. Distances in kilometres, times in hours, civil dates
 * `YYYY-MM-DD`; `null` is "not known", never a number that stands for it. Members that need a forecast are
 * absent where there is none.
 */
export type Analysis = CaseAnalysis & {
  /** the last level read on the stick, as read; no estimate */
  lastLevel: LastLevel | null;
  /** the oil ledger: level, rates, warnings */
  oil: CarOil;
  status: CarStatus;
  matters: Matters;
};

/** What a case can tell: it carries no oil, findings, wheels or handovers. */
export type CaseAnalysis = {
  schema: 1;
  engineVersion: number;
  car: string;
  asOf: string;
  /** what was set aside or found odd in the log, sorted */
  flags: Flag[];
  items: ItemResult[];
  /** the storage window that covers `asOf`; `until` null = open */
  laidUp: { id: string; since: string; until: string | null } | null;
  /** the last odometer reading that was kept, with the total since the log began */
  odometer: { entry: string | null; on: string; readingKm: number; totalKm: number } | null;
};

export type LastLevel = {
  entry: string;
  on: string;
  /** fraction of the span (0 MIN, 1 MAX); null with `mark` */
  fraction: number | null;
  mark: 'none' | 'over' | null;
  /** read otherwise than by the car's own procedure */
  offProcedure: boolean;
  /** litres added since by top-ups that gave their volume; an oil change since makes this reading old */
  addedSinceL: number;
  changedSince: boolean;
};

export type FlagCode =
  /** dated after `asOf`; not counted */
  | 'future'
  /** a reading that does not fit between its neighbours; the rest of its entry counts */
  | 'readingRejected'
  /** implies more than 2,000 km or 24 h a day */
  | 'readingTooFast'
  /** the odometer dropped and stayed low with no exchange logged: distance across is unknown */
  | 'unloggedExchange'
  /** the odometer rolled over to zero */
  | 'rollOver'
  /** logged use is more than the meter shows; the log wins */
  | 'loggedExceedsMeter'
  /** an exchange without the old instrument's last value: distance across is unknown */
  | 'exchangeWithoutOldValue'
  /** a value that cannot be used in a read file; the entry stays, the value does not count */
  | 'valueIgnored'
  /** two entries that look like the same use */
  | 'looksTheSame'
  /** a use and a service share the day and neither has a time: the use counts as before */
  | 'orderAssumed'
  /** a part is put on while the log has it elsewhere: the window before ends there, both are in doubt */
  | 'fitConflict'
  /** a part is taken off or moved that the log does not have on, or not on that car */
  | 'fitNotOn'
  /** a part is put on or moved without saying to which car: it does not count */
  | 'fitWithoutCar'
  /** a fit and a use of the car share the day and neither has a time: the use counts as before */
  | 'fitOrderAssumed'
  /** a session names a tyre set that the log does not have on that car then */
  | 'setNotOn';

export type Flag = {
  code: FlagCode;
  /** the entry concerned; null where the file gave no id */
  entry: string | null;
  on: string | null;
  /** the value in question, as a short text */
  value: string | null;
  /** a second entry, where two are concerned */
  other?: string | null;
};

export type ReasonCode =
  | 'noBaseline'
  | 'lowerBound'
  /** something happened after which it is due at once */
  | 'trigger'
  /** its owner said: treat as due now */
  | 'asked'
  /** a one-off that has been done */
  | 'doneOnce';

export type Trigger = {
  entry: string;
  on: string;
  code: IncidentSort | 'oilHot' | 'wheelsOff';
};

/** `null`: in limits as far as is known, but no forecast says when it falls due (parts, tools, people). */
export type ItemState = 'unknown' | 'overdue' | 'dueSoon' | 'fine' | null;

export type ItemResult = {
  id: string;
  state: ItemState;
  /** a sentence, or null */
  reason: string | null;
  reasonCode: ReasonCode | null;
  /** with reasonCode `trigger`: what made it due */
  trigger?: Trigger;
  /** civil date of the last service or baseline; absent without one */
  service?: string;
  /** what runs out first: measure, with ":severe" for a limit of the hard-use schedule */
  binding: string | null;
  limits: LimitResult[];
  severe?: SevereResult | null;
  dueSoonHorizonDays?: number;
  /** by all limits together; absent where there is no forecast */
  dueDate?: DueDates;
  /** probability that it is due by asOf + dueSoonHorizonDays, 0..1 */
  pDueWithinLead?: number;
  /** not overdue by what is known, but more likely than not by what is expected since: ask for a reading */
  probablyOverdue?: boolean;
  /** null where what runs out first is a day of the calendar */
  expects?: Expectation | null;
  /** by date; only where it was asked for */
  atEvent?: AtEvent[];
  /** entries the answer rests on: the service first, then the uses and readings that count, by order */
  evidence: string[];
};

/** Whether an item lasts until the end of an event, and when to do the work if not. */
export type AtEvent = {
  id: string;
  date: string;
  endDate: string;
  /** probability that no limit is reached before the event is over, 0..1; null where nothing is on record */
  pReady: number | null;
  /** null: it rests on a lower bound, or nothing is on record */
  ready: boolean | null;
  limits: AtEventLimit[];
  /** the last day for the work, one day of buffer before the event; null unless it is not ready */
  latestWorkDate: string | null;
  /** so many days before as the parts take; null unless it is not ready */
  orderBy: string | null;
  feasible: boolean;
  /** first day on which the work would last until the end; null unless it is not ready, or never */
  earliestWorkDate: string | null;
};

export type AtEventLimit =
  | {
      measure: AmountLimitResult['measure'];
      severe: boolean;
      limit: number;
      /** used by the eve and by the end of the event: expected, and not exceeded nine times in ten */
      before: { mean: number; p90: number };
      after: { mean: number; p90: number };
      pReached: number;
    }
  | {
      measure: CalendarLimitResult['measure'];
      severe: boolean;
      dueDate: string;
      pReached: number;
    };

export type SevereResult = {
  active: boolean;
  severeAmount: number;
  threshold: number;
  since: string | null;
};

export type AmountLimitResult = {
  measure: 'km' | 'hours' | 'sessions' | 'launches';
  severe: boolean;
  limit: number;
  known: boolean;
  accrued: number;
  remaining: number;
  fraction: number;
  /** weighted amounts per class; they add up to `accrued` */
  byClass: Partial<Record<UseClass, number>>;
  /** part of `accrued` that was derived from other amounts rather than given */
  estimated: number;
  /** the day the limit was reached; null while it is not */
  reachedOn: string | null;
  /** with the use expected since the last reading of the meter; absent where there is no forecast */
  accruedNow?: number;
  remainingNow?: number;
  /** absent where there is no forecast */
  due?: DueDates;
};

/**
 * Civil dates by which a limit is reached with a probability of 0.1, 0.5 and 0.9; null where that lies
 * beyond the horizon of three years. On a screen: "could be as early as", "likely by", never the codes.
 */
export type DueDates = { p10: string | null; p50: string | null; p90: string | null };

/** What the forecast of the limit that runs out first rests on: the facts of its sentence. */
export type Expectation = {
  measure: AmountLimitResult['measure'];
  /** weighted amount of an average week of everyday use at this time of year, in the measure's unit */
  perWeek: number;
  /** weighted amount of one usual occasion that is no everyday use (a session, an evening of runs) */
  perOccasion: number;
  /** occasions beyond the planned events expected until the likely day */
  moreLikely: number;
  /** planned events with use that counts, until the likely day */
  planned: number;
  /** last day of the lay-up the car is in; null where it is in none */
  laidUpUntil: string | null;
};

export type CalendarLimitResult = {
  measure: 'months' | 'days' | 'date';
  severe: boolean;
  limit: number | string;
  known: boolean;
  elapsedDays: number;
  remainingDays: number;
  fraction: number;
  dueDate: string;
  /** absent for a hard-use limit that is not switched on and that nothing forecasts */
  due?: DueDates;
};

export type LimitResult = AmountLimitResult | CalendarLimitResult;

export function isAmountLimit(limit: LimitResult): limit is AmountLimitResult {
  const calendar: readonly Measure[] = ['months', 'days', 'date'];
  return !calendar.includes(limit.measure);
}
