/**
 * What a forecast said of an item on a day, kept so that it can be held against what happened. Civil
 * dates `YYYY-MM-DD`.
 */
export type SaidLine = {
  car: string;
  item: string;
  saidOn: string;
  /** the service or starting point it counts from; null for a label that was never renewed here */
  since: string | null;
  /** due with a chance of 1 in 10, of 1 in 2 and of 9 in 10 by these days; `late` null: beyond three years */
  early: string;
  likely: string;
  late: string | null;
  /** what was expected to run out first, with ":severe" for a limit of the hard-use schedule */
  binding: string | null;
  /** the limits it was said of, as canonical JSON: by others it cannot be judged */
  limits: string;
  engineVersion: number;
  /** true: not said then, but worked out later from the log as it stood up to that day */
  afterwards: boolean;
};

export type SaidOutcome =
  /** a limit was reached between the early and the late day */
  | 'inside'
  /** a limit was reached before the early day */
  | 'earlier'
  /** no limit was reached by the late day */
  | 'later'
  /** not reached, and its late day has not passed */
  | 'open'
  /** done before a limit was reached: it says nothing of the forecast */
  | 'doneFirst'
  /** the log does not tell: use is missing in it, or nothing was read since */
  | 'notKnown'
  /** the limits, or the service it counts from, are others now */
  | 'changed';

/** What was said, and what came of it. */
export type JudgedLine = {
  said: Omit<SaidLine, 'limits'>;
  outcome: SaidOutcome;
  /** the day a limit was reached; null while none is known to be */
  reachedOn: string | null;
  /** the service that ended the interval; null where it goes on */
  doneOn: string | null;
  /** the last day of the interval whose use is known */
  knownUntil: string;
  /** days from the likely day to the one it was reached, negative before it; null without a verdict */
  daysOff: number | null;
  /** days outside of what was said, 0 inside; null without a verdict */
  daysOutside: number | null;
  /** true: not reached yet, so the days are at least so many */
  atLeast: boolean;
};

/** How far ahead a likely day lay when it was said: under 30 days, 30 to 90, over 90. */
export type Horizon = 'under30' | 'from30' | 'over90';

export type Share = {
  /** of those with a verdict */
  inside: number;
  verdicts: number;
};

export type SaidTally = Share & {
  /** verdicts that were none of these are `inside` */
  earlier: number;
  later: number;
  /** days of the calendar that came as they must: true, but no proof of a forecast, so in no share */
  byCalendar: number;
  /** of the lines that count: without a verdict */
  open: number;
  doneFirst: number;
  notKnown: number;
  changed: number;
  horizons: Record<Horizon, Share>;
  /**
   * where fewer than 3 in 4 of at least 10 were inside: by so many days more at either end 8 in 10 would
   * have been; `atLeast` where some are not reached yet
   */
  tooNarrow: { days: number; atLeast: boolean } | null;
};
