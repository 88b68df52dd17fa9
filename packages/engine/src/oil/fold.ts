import type { OilPriors } from './hypothesis.ts';
import { apply, type LedgerState, startLedger } from './ledger.ts';
import type { EntryRef, OilOperation } from './operation.ts';

export type Folded = {
  state: LedgerState;
  /** probability that the rate has risen, as of each entry */
  rises: { entry: EntryRef; riseProbability: number }[];
};

/** Runs the ledger over every operation, from the beginning. */
export function foldLedger(
  spanL: number,
  priors: OilPriors,
  operations: readonly OilOperation[],
): Folded {
  const state = startLedger(spanL, priors);
  const rises = operations.map((operation) => ({
    entry: operation.entry,
    riseProbability: apply(state, operation),
  }));
  return { state, rises };
}
