import { buildHistory } from '../history/index.ts';
import type { Book } from '../log/book.ts';
import type { Entry, ReadingCondition } from '../log/entry.ts';
import {
  judgeStick,
  type OilEvent,
  type OilNamed,
  type OilOperation,
  pastLevels,
  type RateBand,
  type RawLevel,
  ratesAlong,
  type StickLook,
  USUAL_PRIORS,
} from '../oil/index.ts';
import { roundAmount } from '../wear/round-amount.ts';
import { bookCase } from './book-case.ts';
import { type BookLedger, bookLedger } from './book-oil.ts';
import { riseStart } from './rise-start.ts';

/** A level eight times in ten between `low` and `high`, litres from MAX, negative below. */
export type LevelBand = { low: number; likely: number; high: number };

/** A level somebody read, and what became of it. */
export type StoryLevel = {
  level: RawLevel;
  /** around a top-up or a change; `alone` for a check */
  when: 'alone' | 'before' | 'after';
  /** how it compares with the car's own procedure, see `judgeStick()` */
  look: StickLook['is'];
  /** litres added for the temperature of the oil; 0 unless corrected */
  correctionL: number;
  /** false: off procedure and not the first one, so only listed */
  counted: boolean;
};

/** One entry's part in the oil of a car. */
export type StoryEntry = {
  entry: string;
  on: string;
  /** km since the log began */
  totalKm: number;
  what: OilEvent['happening']['is'];
  /** litres poured in; null where not given, or not poured */
  addedL: number | null;
  filledToMax: boolean;
  /** which oil went in, as somebody named it; null where none went in */
  oil: OilNamed | null;
  condition: ReadingCondition | null;
  levels: StoryLevel[];
  /** what the ledger made of its levels: out of line, or that the level itself had moved */
  verdict: 'doubtful' | 'movedUp' | 'movedDown' | null;
  /** the likely level before and after it, in the light of the whole log */
  before: LevelBand;
  after: LevelBand;
  /** the rates as they were known then; null where they were not worked out for this entry */
  rates: { road: RateBand | null; hard: RateBand | null } | null;
  alert: 'opened' | 'closed' | null;
};

export type OilStory = {
  spanL: number;
  /** in the order of the log; uses and what cut no drive are left out */
  entries: StoryEntry[];
  /** km since the log began at which use likely rose; null while no rise is suspected */
  stepKm: number | null;
  /** km since the log began */
  totalKm: number;
};

/** Rates are worked out for so many entries at most: more is not seen on a chart. */
const RATES_MAX = 60;
/** Standard deviations on each side that hold eight of ten of a Gaussian. */
const EIGHT_IN_TEN = 1.2815515655446004;

/**
 * The story of a car's oil, entry by entry: levels and how they were read, what was poured in, the level and the
 * rates along the log. Costs two runs of the ledger and a smoother: ask for it where it is shown.
 *
 * @param book as its schema gives it; entries after its `asOf` do not count
 */
export function oilStory(book: Book): OilStory {
  const ledger = bookLedger(book, buildHistory(bookCase(book)));
  const { stick, events, operations, folded, totalKm } = ledger;
  const levels = pastLevels(stick.spanL, USUAL_PRIORS, operations, folded.state.bank);
  const rates = new Map(
    ratesAlong(stick.spanL, USUAL_PRIORS, operations, RATES_MAX).map(({ entry, ...bands }) => [
      entry,
      bands,
    ]),
  );
  const written = new Map(book.entries.map((one) => [one.id, one]));
  const entries = events.flatMap((event, at): StoryEntry[] => {
    const [operation, level] = [operations[at], levels[at]];
    if (event.happening.is === 'use' || !operation || !level) return [];
    const entry = String(event.entry);
    return [
      {
        entry,
        on: written.get(entry)?.on ?? book.asOf,
        totalKm: roundAmount(event.totalKm),
        ...happened(event),
        oil: oilOf(written.get(entry)),
        levels: levelsOf(event, operation, ledger),
        verdict: verdictOf(event, ledger),
        before: band(level.before),
        after: band(level.after),
        rates: rates.get(event.entry) ?? null,
        alert: alertOf(event, ledger),
      },
    ];
  });
  const stepKm = riseStart(ledger)?.totalKm ?? null;
  return { spanL: stick.spanL, entries, stepKm, totalKm: roundAmount(totalKm) };
}

function oilOf(entry: Entry | undefined): OilNamed | null {
  if (entry?.kind !== 'oilTopUp' && entry?.kind !== 'oilChange') return null;
  const { grade, approval } = entry;
  return { ...(grade !== undefined && { grade }), ...(approval !== undefined && { approval }) };
}

function happened({ happening, condition }: OilEvent) {
  const poured = happening.is === 'topUp';
  return {
    what: happening.is,
    addedL: poured ? happening.volumeL : null,
    filledToMax: poured && happening.filledToMax,
    condition,
  };
}

function rawLevels({ happening }: OilEvent): { level: RawLevel; when: StoryLevel['when'] }[] {
  switch (happening.is) {
    case 'reading':
      return [{ level: happening.level, when: 'alone' }];
    case 'topUp':
      return [
        ...(happening.before === null
          ? []
          : [{ level: happening.before, when: 'before' as const }]),
        ...(happening.after === null ? [] : [{ level: happening.after, when: 'after' as const }]),
      ];
    case 'change':
      return happening.after === null ? [] : [{ level: happening.after, when: 'after' }];
    case 'repair':
    case 'use':
      return [];
  }
}

function levelsOf(event: OilEvent, { steps }: OilOperation, { stick }: BookLedger): StoryLevel[] {
  const { is, correctionL } = judgeStick(stick, event.condition);
  // each level read is one step, observed or only listed, in its order
  const read = steps.filter(
    (step) => step.does === 'list' || (step.does === 'observe' && step.read !== null),
  );
  return rawLevels(event).map(({ level, when }, at) => ({
    level,
    when,
    look: is,
    correctionL,
    counted: read[at]?.does === 'observe',
  }));
}

function verdictOf({ entry }: OilEvent, { folded: { state } }: BookLedger): StoryEntry['verdict'] {
  const moved = state.moved.find((one) => one.entry === entry);
  if (moved) return moved.direction === 'up' ? 'movedUp' : 'movedDown';
  return state.doubtful.includes(entry) ? 'doubtful' : null;
}

function alertOf({ entry }: OilEvent, { folded: { state } }: BookLedger): StoryEntry['alert'] {
  if (state.alerts.some((alert) => alert.openedAtEntry === entry)) return 'opened';
  return state.alerts.some((alert) => alert.closedAtEntry === entry) ? 'closed' : null;
}

function band({ mean, sd }: { mean: number; sd: number }): LevelBand {
  return {
    low: mean - EIGHT_IN_TEN * sd,
    likely: mean,
    high: mean + EIGHT_IN_TEN * sd,
  };
}
