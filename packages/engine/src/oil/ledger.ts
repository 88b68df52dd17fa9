import { riseProbability } from './answers.ts';
import {
  addToAll,
  type Bank,
  copyBank,
  drive,
  heaviestOf,
  makeBank,
  observeAll,
  repairAll,
  resetAll,
  tidy,
} from './bank.ts';
import { LEVEL, type OilPriors } from './hypothesis.ts';
import type { EntryRef, OilOperation, OilStep, ReadLevel } from './operation.ts';

export type Alert = { openedAtEntry: EntryRef; closedAtEntry?: EntryRef };
export type Moved = { entry: EntryRef; direction: 'up' | 'down' };
export type UnexplainedRise = { entry: EntryRef; firstEntry: EntryRef; litres: number };

/** Everything the ledger has learnt up to an entry. */
export type LedgerState = {
  bank: Bank;
  /** something was learnt of the level */
  informed: boolean;
  alerts: Alert[];
  doubtful: EntryRef[];
  moved: Moved[];
  offProcedure: EntryRef[];
  lastReading: { entry: EntryRef; read: ReadLevel } | null;
  /** the last level by procedure says: at MIN or below with nothing added since; far above MAX */
  lowRead: boolean;
  overRead: boolean;
  /** the last level by procedure with what was expected just before it; null after an addition or change */
  lastLevel: { entry: EntryRef; levelL: number; expectedL: number; thresholdL: number } | null;
  unexplainedRise: UnexplainedRise | null;
};

/** Probability at which rising use is told, and below which it may be told anew. */
export const RISE_TOLD = 0.7;
const RISE_OVER = 0.42;
/** Spans over MAX from which a reading says that there is too much. */
export const FAR_OVER = 0.25;
/** A level this far above what is expected was not there before, in spans and standard deviations. */
const RISE = { spans: 0.4, sd: 2, agreeSd: 3 };

export function startLedger(spanL: number, priors: OilPriors): LedgerState {
  return {
    bank: makeBank(spanL, priors),
    informed: false,
    alerts: [],
    doubtful: [],
    moved: [],
    offProcedure: [],
    lastReading: null,
    lowRead: false,
    overRead: false,
    lastLevel: null,
    unexplainedRise: null,
  };
}

/** A copy that shares nothing that changes. */
export function copyLedger(state: LedgerState): LedgerState {
  return {
    ...state,
    bank: copyBank(state.bank),
    alerts: state.alerts.map((alert) => ({ ...alert })),
    doubtful: [...state.doubtful],
    moved: [...state.moved],
    offProcedure: [...state.offProcedure],
  };
}

/** Takes one entry into the ledger; returns the probability that the rate has risen, as of then. */
export function apply(state: LedgerState, { entry, drive: by, steps }: OilOperation): number {
  const { bank } = state;
  drive(bank, by, steps.length > 0);
  for (const step of steps) applyStep(state, entry, step);
  tidy(bank);
  return watchRise(state, entry);
}

/** Opens an alert at 0.70 and closes it below 0.42. */
export function watchRise(state: LedgerState, entry: EntryRef): number {
  const probability = riseProbability(state.bank);
  const open = state.alerts.at(-1);
  const isOpen = open !== undefined && open.closedAtEntry === undefined;
  if (!isOpen && probability >= RISE_TOLD) state.alerts.push({ openedAtEntry: entry });
  else if (isOpen && probability < RISE_OVER) open.closedAtEntry = entry;
  return probability;
}

function applyStep(state: LedgerState, entry: EntryRef, step: OilStep): void {
  const { bank } = state;
  switch (step.does) {
    case 'list':
      state.offProcedure.push(entry);
      state.lastReading = { entry, read: step.read };
      return;
    case 'observe':
      applyLevel(state, entry, step);
      return;
    case 'add':
      addToAll(bank, step.volumeL, step.sdL);
      state.informed = true;
      state.lowRead = false;
      state.lastLevel = null;
      return;
    case 'reset':
      resetAll(bank, step.levelL, step.sdL);
      state.informed = true;
      state.lowRead = false;
      state.overRead = false;
      state.lastLevel = null;
      if (step.change) state.unexplainedRise = null;
      return;
    case 'repair':
      repairAll(bank);
  }
}

function applyLevel(
  state: LedgerState,
  entry: EntryRef,
  { levelL, sdL, tag, read }: Extract<OilStep, { does: 'observe' }>,
): void {
  const { bank } = state;
  const { x, p } = heaviestOf(bank);
  const expectedL = x[LEVEL] as number;
  const spread = Math.sqrt(p[0] as number);
  const verdict = observeAll(bank, levelL, sdL, tag);
  if (tag !== 'off') state.informed = true;
  if (tag === 'full') state.lowRead = false;
  if (read === null) return;
  state.lastReading = { entry, read };
  if (read.offProcedure) state.offProcedure.push(entry);
  if (verdict === 'doubtful') state.doubtful.push(entry);
  let direction: Moved['direction'] | null =
    verdict === 'movedUp' ? 'up' : verdict === 'movedDown' ? 'down' : null;
  if (!read.offProcedure) {
    state.lowRead = read.level === 'none' || levelL <= -bank.spanL;
    state.overRead = levelL >= FAR_OVER * bank.spanL;
    if (findRise(state, entry, levelL, sdL)) direction = 'up';
    const thresholdL = expectedL + Math.max(RISE.spans * bank.spanL, RISE.sd * spread);
    state.lastLevel = { entry, levelL, expectedL, thresholdL };
  }
  if (direction !== null) state.moved.push({ entry, direction });
}

/** Two successive levels that agree on more oil than there can be: poured in unlogged, or fuel or coolant. */
function findRise(state: LedgerState, entry: EntryRef, levelL: number, sdL: number): boolean {
  const first = state.lastLevel;
  // one that was told stays until the next oil change
  if (first === null || state.unexplainedRise !== null) return false;
  const { thresholdL, expectedL } = first;
  if (Math.min(first.levelL, levelL) < thresholdL) return false;
  if (Math.abs(first.levelL - levelL) >= RISE.agreeSd * sdL) return false;
  state.unexplainedRise = {
    entry,
    firstEntry: first.entry,
    litres: (first.levelL + levelL) / 2 - expectedL,
  };
  return true;
}
