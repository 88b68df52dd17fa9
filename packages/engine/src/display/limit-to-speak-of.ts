import {
  type AmountLimitResult,
  type ItemResult,
  isAmountLimit,
  type LimitResult,
} from '../wear/result.ts';

/** The amount has been used up, or the day has passed. On the day itself it is not yet over. */
export function isOver(limit: LimitResult): boolean {
  return isAmountLimit(limit) ? limit.accrued >= limit.limit : limit.remainingDays < 0;
}

function largestFraction(limits: readonly LimitResult[]): LimitResult | null {
  return limits.reduce<LimitResult | null>(
    (best, limit) => (best === null || limit.fraction > best.fraction ? limit : best),
    null,
  );
}

function earliestDay(limits: readonly LimitResult[]): LimitResult | null {
  return limits
    .filter((limit) => !isAmountLimit(limit))
    .reduce<LimitResult | null>(
      (best, limit) => (best === null || daysLeft(limit) < daysLeft(best) ? limit : best),
      null,
    );
}

/** Days left of a calendar limit; an amount limit has no day of its own. */
function daysLeft(limit: LimitResult): number {
  return isAmountLimit(limit) ? Number.POSITIVE_INFINITY : limit.remainingDays;
}

function atLeast(limits: readonly LimitResult[]): AmountLimitResult | null {
  const unsure = limits.filter((limit) => isAmountLimit(limit) && !limit.known);
  return largestFraction(unsure) as AmountLimitResult | null;
}

/** Severe limits count only while the hard-use schedule is on. */
export function limitsInForce(item: ItemResult): LimitResult[] {
  return item.limits.filter((limit) => !limit.severe || item.severe?.active === true);
}

/** The one that a forecast says runs out first; it may belong to a schedule that is not in force yet. */
function runsOutFirst({ binding, dueDate, limits }: ItemResult): LimitResult | null {
  if (dueDate === undefined || binding === null) return null;
  const [measure, schedule] = binding.split(':');
  const severe = schedule === 'severe';
  return limits.find((limit) => limit.measure === measure && limit.severe === severe) ?? null;
}

/**
 * The limit an item's state rests on, so that word and detail never speak of two different limits:
 * over the most when overdue, the longest unsure amount when only a lower bound is known, else what a
 * forecast says runs out first. Without a forecast the earliest day when due soon by the calendar, else
 * what is used up the furthest.
 */
export function limitToSpeakOf(item: ItemResult): LimitResult | null {
  const limits = limitsInForce(item);
  if (item.state === 'overdue')
    return largestFraction(limits.filter(isOver)) ?? largestFraction(limits);
  if (item.reasonCode === 'lowerBound') return atLeast(limits) ?? largestFraction(limits);
  const first = runsOutFirst(item);
  if (first !== null) return first;
  if (item.state === 'dueSoon') return earliestDay(limits) ?? largestFraction(limits);
  return largestFraction(limits);
}
