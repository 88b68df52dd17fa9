import {
  aboveMax,
  BASELINE_RATE,
  belowMin,
  CIRCUIT_RATE,
  type LevelAnswer,
  levelAnswer,
  type RateAnswer,
  ROAD_RATE,
  rateAnswer,
  rateOf,
  riseProbability,
  STRIP_RATE,
} from './answers.ts';
import { drive, hypothesesOf, tidy } from './bank.ts';
import { distanceToMin } from './distance-to-min.ts';
import type { Drive } from './drive.ts';
import { ROAD, STEP } from './hypothesis.ts';
import {
  type Alert,
  copyLedger,
  FAR_OVER,
  type LedgerState,
  type Moved,
  type UnexplainedRise,
  watchRise,
} from './ledger.ts';
import type { EntryRef, RawLevel, StickCondition } from './operation.ts';

/** How much the ledger can say: enough, roughly, or that there are too few readings yet. */
export type OilStatus = 'ok' | 'weak' | 'none';

/** What the ledger says of an engine's oil. Litres from MAX; L/1,000 km; L a run; km. */
export type OilAnswer = {
  status: OilStatus;
  level: LevelAnswer;
  roadRate: RateAnswer;
  /** `fromPrior`: never logged, so it is no measurement */
  hardRate: RateAnswer & { fromPrior: boolean };
  stripPerRun?: RateAnswer & { fromPrior: boolean };
  /** the road rate without the step that is suspected */
  baselineRate: RateAnswer;
  riseProbability: number;
  distanceToMin: {
    p05: number;
    p50: number;
    road: { p05: number; p50: number };
    circuit: { p05: number; p50: number };
  };
  checkBy: { km: number; days: number | null };
  pBelowMin: number;
  lowNow: boolean;
  overNow: boolean;
  lastReading: {
    entry: EntryRef;
    level: RawLevel;
    condition: StickCondition | null;
    offProcedure: boolean;
  } | null;
  unexplainedRise: UnexplainedRise | null;
  alerts: Alert[];
  doubtful: EntryRef[];
  moved: Moved[];
  offProcedure: EntryRef[];
};

/** The same of a car of the book, with the span it is measured by and what the log tells beside it. */
export type CarOil = OilAnswer &
  OilLooks & {
    /** litres between MIN and MAX */
    spanL: number;
    /** nobody said what it is */
    spanAssumed: boolean;
  };

/** Looks at the stick: what was seen, when the next one is due, and what there is to be told. */
export type OilLooks = {
  /** levels read by the car's own procedure, or corrected to it */
  levelsRead: number;
  /** the last look, top-up or change; null: none on record */
  lastLook: { entry: string; on: string } | null;
  /** the last level by procedure was at or below MIN, or none, and nothing was added since */
  readLow: 'atMin' | 'none' | null;
  /** the last level by procedure was far over MAX, and the oil was not changed since */
  readOver: boolean;
  /** `atOdometerKm` = what the odometer then shows; null where not known, or no distance can be said */
  nextLook: {
    km: number | null;
    atOdometerKm: number | null;
    /** civil date; null: laid up, in pieces or away, where nobody looks every week */
    by: string | null;
  };
  /** with an open alert: the day of the last entry before use rose; null where it is not known */
  risenSince: string | null;
  notices: OilNotice[];
};

/** Something the ledger wants looked into, under a name that stays as long as its cause does. */
export type OilNotice = {
  /** see `oilNotice()` */
  id: string;
  kind: OilNoticeKind;
  /** the entry at which it arose, and its day */
  entry: string;
  on: string;
  /** what somebody said of it; null: nobody yet */
  answer: { entry: string; on: string; words: string } | null;
};

export type OilNoticeKind =
  /** the oil is low, or may be */
  | 'low'
  /** it may be below MIN before the next weekly look */
  | 'lowSoon'
  | 'useRisen'
  | 'unexplainedRise';

/** What happened after the last entry, as far as it is known. */
export type Today = {
  drive: Drive;
  /** variance of the distance, km^2; 0 where it was read */
  distanceVarianceKm2: number;
  inUse: boolean;
};

const OK_RATIO = 4;
const WEAK_RATIO = 10;
const LOOK_DAYS = 7;
const LOW_CHANCE = 0.05;
const OVER_CHANCE = 0.5;

/**
 * Answers from a copy of the ledger, driven to today: nothing of that is history.
 *
 * @param today null: answers after the last entry
 * @param logged which classes were ever logged, so that a prior is never shown as a measurement
 */
export function answerOil(
  ledger: LedgerState,
  today: Today | null,
  logged: { circuit: boolean; strip: boolean },
): OilAnswer {
  const state = copyLedger(ledger);
  const { bank } = state;
  if (today !== null) {
    drive(bank, today.drive, false);
    if (today.distanceVarianceKm2 > 0)
      for (const { x, p } of hypothesesOf(bank)) {
        const rate = rateOf((x[ROAD] as number) + (x[STEP] as number));
        p[0] = (p[0] as number) + (rate * rate * today.distanceVarianceKm2) / 1e6;
      }
    tidy(bank);
    watchRise(state, 'asOf');
  }
  const roadRate = rateAnswer(bank, ROAD_RATE);
  const road = distanceToMin(bank, ROAD_RATE);
  const circuit = distanceToMin(bank, CIRCUIT_RATE);
  const pBelowMin = belowMin(bank);
  const { lastReading } = state;
  return {
    status: statusOf(roadRate, state.informed),
    level: levelAnswer(bank),
    roadRate,
    hardRate: { ...rateAnswer(bank, CIRCUIT_RATE), fromPrior: !logged.circuit },
    ...(logged.strip && { stripPerRun: { ...rateAnswer(bank, STRIP_RATE), fromPrior: false } }),
    baselineRate: rateAnswer(bank, BASELINE_RATE),
    riseProbability: riseProbability(bank),
    distanceToMin: { ...road, road, circuit },
    checkBy: { km: road.p05, days: today !== null && !today.inUse ? null : LOOK_DAYS },
    pBelowMin,
    lowNow: pBelowMin >= LOW_CHANCE || state.lowRead,
    overNow: aboveMax(bank, FAR_OVER) >= OVER_CHANCE || state.overRead,
    lastReading: lastReading && {
      entry: lastReading.entry,
      level: lastReading.read.level,
      condition: lastReading.read.condition,
      offProcedure: lastReading.read.offProcedure,
    },
    unexplainedRise: state.unexplainedRise,
    alerts: state.alerts,
    doubtful: state.doubtful,
    moved: state.moved,
    offProcedure: state.offProcedure,
  };
}

/** How much can be said, by how far the ends of the road rate lie apart. */
export function statusOf(
  { p05, p95 }: Pick<RateAnswer, 'p05' | 'p95'>,
  informed: boolean,
): OilStatus {
  if (!informed) return 'none';
  const ratio = p95 / p05;
  return ratio <= OK_RATIO ? 'ok' : ratio <= WEAK_RATIO ? 'weak' : 'none';
}
