import { formatDay } from '../calendar/day-number.ts';
import { amountOf, type Contribution, isEstimated } from '../history/contribution.ts';
import type { AmountMeasure, UseClass } from '../log/item.ts';
import { roundAmount } from './round-amount.ts';

export type Accrual = {
  /** weighted amount since the service */
  accrued: number;
  byClass: Partial<Record<UseClass, number>>;
  /** part that was derived from other amounts */
  estimated: number;
  /** civil date on which `value` was reached; null if it was not */
  reachedOn: string | null;
  /** positions of the entries it rests on */
  sources: Set<number>;
};

export type AccrualRule = {
  measure: AmountMeasure;
  /** 1 where a class is not named */
  weights: Partial<Record<UseClass, number>>;
  /** the limit, in the unit of the measure */
  value: number;
};

/**
 * Adds up what counts towards a limit since a service.
 *
 * accrued = sum over the contributions ordered after the service of weight[class] x amount[measure]
 *
 * @param contributions in order; km, h or counts, >= 0
 * @param afterPosition position of the service; what lies at or before it does not count
 * @param rule measure, weights >= 0 and the limit > 0
 * Source: common practice for weighted service intervals, no published source.
 * @example accrue(contributions, 12, { measure: 'km', weights: { circuit: 4 }, value: 10000 })
 */
export function accrue(
  contributions: readonly Contribution[],
  afterPosition: number,
  { measure, weights, value }: AccrualRule,
): Accrual {
  let total = 0;
  let estimated = 0;
  let reachedOn: string | null = null;
  const byClass: Partial<Record<UseClass, number>> = {};
  const sources = new Set<number>();
  const limit = roundAmount(value);
  const close = limit - 1;
  // the days of one interval follow each other and name the same entries
  let lastSource = -1;
  for (let at = firstAfter(contributions, afterPosition); at < contributions.length; at += 1) {
    const it = contributions[at] as Contribution;
    const amount = (weights[it.useClass] ?? 1) * amountOf(it, measure);
    if (amount <= 0) continue;
    total += amount;
    byClass[it.useClass] = (byClass[it.useClass] ?? 0) + amount;
    if (isEstimated(it, measure)) estimated += amount;
    if (it.source !== lastSource) {
      lastSource = it.source;
      sources.add(it.source);
      if (it.since !== null) sources.add(it.since);
    }
    if (reachedOn === null && total >= close && roundAmount(total) >= limit)
      reachedOn = formatDay(it.day);
  }
  for (const [useClass, amount] of Object.entries(byClass) as [UseClass, number][])
    byClass[useClass] = roundAmount(amount);
  return {
    accrued: roundAmount(total),
    byClass,
    estimated: Math.min(roundAmount(estimated), roundAmount(total)),
    reachedOn,
    sources,
  };
}

/** Index of the first contribution that counts after a position. O(log n). */
export function firstAfter(contributions: readonly Contribution[], position: number): number {
  let low = 0;
  let high = contributions.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((contributions[middle] as Contribution).position <= position) low = middle + 1;
    else high = middle;
  }
  return low;
}
