import { hashOf } from './hash.ts';
import type { OilPriors } from './hypothesis.ts';
import { apply, copyLedger, type LedgerState, startLedger } from './ledger.ts';
import type { OilOperation } from './operation.ts';

/** Raised whenever the same operations could lead to another state. */
const LEDGER_VERSION = 1;
const EVERY = 64;

/** The ledger after so many operations, under the hash of all that led there. */
export type Checkpoint = { count: number; hash: number; state: LedgerState };

export type Resumed = {
  state: LedgerState;
  checkpoints: Checkpoint[];
  /** operations that had to be run */
  steps: number;
};

/**
 * Runs the ledger over all operations, beginning at the latest checkpoint that still holds. Equal to a full run
 * bit by bit, since a checkpoint counts only under the hash of every operation before it. After an append at most
 * 64 operations are run beside the new ones; after an edit, those from the edit on.
 *
 * @param before checkpoints of an earlier run, of any operations; nothing of them is changed
 */
export function resumeLedger(
  spanL: number,
  priors: OilPriors,
  operations: readonly OilOperation[],
  before: readonly Checkpoint[],
): Resumed {
  const hashes = hashChain(spanL, priors, operations);
  const kept = before.filter(({ count, hash }) => hashes[count] === hash);
  const last = kept.at(-1);
  const state = last === undefined ? startLedger(spanL, priors) : copyLedger(last.state);
  const checkpoints = [...kept];
  const from = last?.count ?? 0;
  for (let at = from; at < operations.length; at += 1) {
    apply(state, operations[at] as OilOperation);
    const count = at + 1;
    if (count % EVERY === 0)
      checkpoints.push({ count, hash: hashes[count] as number, state: copyLedger(state) });
  }
  return { state, checkpoints, steps: operations.length - from };
}

/** h_0 of the car, h_k of h_{k-1} and operation k. */
function hashChain(
  spanL: number,
  priors: OilPriors,
  operations: readonly OilOperation[],
): number[] {
  const hashes = [hashOf(JSON.stringify([LEDGER_VERSION, spanL, priors]))];
  for (const operation of operations)
    hashes.push(hashOf(`${hashes.at(-1)} ${JSON.stringify(operation)}`));
  return hashes;
}
