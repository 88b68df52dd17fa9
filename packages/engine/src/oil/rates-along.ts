import { CIRCUIT_RATE, mixtureOf, quantileOf, ROAD_RATE } from './answers.ts';
import type { Bank } from './bank.ts';
import type { OilPriors } from './hypothesis.ts';
import { apply, startLedger } from './ledger.ts';
import { statusOf } from './oil-answer.ts';
import type { EntryRef, OilOperation } from './operation.ts';

/** A rate as it was known at one entry, L/1,000 km: likely, and eight times in ten between the others. */
export type RateBand = { low: number; likely: number; high: number };
export type RatesAt = {
  entry: EntryRef;
  /** null: too few readings by then */
  road: RateBand | null;
  /** null: too few readings by then, or no hard use was logged by then */
  hard: RateBand | null;
};

/**
 * How the rates were known along the log, entry by entry, with nothing that came later.
 *
 * @param most so many entries at most, spread over the log, the last one among them; > 1
 */
export function ratesAlong(
  spanL: number,
  priors: OilPriors,
  operations: readonly OilOperation[],
  most: number,
): RatesAt[] {
  const state = startLedger(spanL, priors);
  const telling = operations.flatMap(({ steps }, at) => (steps.length > 0 ? [at] : []));
  const every = Math.max(1, Math.ceil(telling.length / most));
  const wanted = new Set(telling.filter((_, at) => (telling.length - 1 - at) % every === 0));
  let hardUse = false;
  return operations.flatMap((operation, at) => {
    apply(state, operation);
    hardUse ||= operation.drive.circuit > 0;
    if (!wanted.has(at)) return [];
    return [{ entry: operation.entry, ...bandsOf(state.bank, state.informed, hardUse) }];
  });
}

function bandsOf(bank: Bank, informed: boolean, hardUse: boolean): Omit<RatesAt, 'entry'> {
  const road = mixtureOf(bank, ROAD_RATE);
  const at = (q: number) => Math.exp(quantileOf(road, q));
  if (statusOf({ p05: at(0.05), p95: at(0.95) }, informed) === 'none')
    return { road: null, hard: null };
  return { road: band(road), hard: hardUse ? band(mixtureOf(bank, CIRCUIT_RATE)) : null };
}

function band(mixture: ReturnType<typeof mixtureOf>): RateBand {
  const at = (q: number) => Math.exp(quantileOf(mixture, q));
  return { low: at(0.1), likely: at(0.5), high: at(0.9) };
}
