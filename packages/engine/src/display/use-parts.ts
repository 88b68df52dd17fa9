import { USE_CLASSES, type UseClass } from '../log/item.ts';
import type { DistanceUnit } from '../log/units.ts';
import type { AmountLimitResult } from '../wear/result.ts';
import { type ItemFacts, typedLimit } from './car-facts.ts';
import { formatAmount } from './format-quantity.ts';
import { USE_PLACE } from './use-place.ts';

/** What one class of use has taken of a limit. */
export type UsePart = {
  /** null: expected since the last reading, on the road */
  useClass: UseClass | null;
  where: string;
  /** as it was driven; empty where it is only expected */
  used: string;
  /** as it counts towards the limit */
  counts: string;
  /** share of the limit, or of the use where that is more: 0..1 */
  share: number;
};

type About = { item?: ItemFacts | undefined; unit: DistanceUnit };

/**
 * The use since the last service by class, in the order of the classes, and what is expected since the
 * last reading. The shares add up to the part of the limit that is used, 1 once it is reached.
 *
 * @param limit an amount limit; its `byClass` is weighted
 * @param about unit of the odometer, used where the limit has none
 */
export function useParts(limit: AmountLimitResult, about: About): UsePart[] {
  const { measure, accrued, accruedNow = accrued, byClass } = limit;
  const typed = about.item && typedLimit(about.item, measure, limit.severe);
  const weights = typed && 'weights' in typed ? (typed.weights ?? {}) : {};
  const unit = typed?.measure === 'km' ? typed.unit : about.unit;
  const whole = Math.max(limit.limit, accruedNow, accrued);
  const words = (amount: number) => formatAmount(measure, amount, unit);
  const parts = USE_CLASSES.flatMap((useClass): UsePart[] => {
    const counted = byClass[useClass] ?? 0;
    const weight = weights[useClass] ?? 1;
    if (counted <= 0 || weight <= 0) return [];
    return [
      {
        useClass,
        where: USE_PLACE[useClass],
        used: words(counted / weight),
        counts: words(counted),
        share: counted / whole,
      },
    ];
  });
  const unread = accruedNow - accrued;
  if (!isWorthSaying(limit)) return parts;
  const where = 'expected since the last reading';
  return [
    ...parts,
    { useClass: null, where, used: '', counts: words(unread), share: unread / whole },
  ];
}

/** Less of a limit than that is nothing one would read the odometer for. */
const WORTH_SAYING = 0.005;

/** True where the use expected since the last reading makes a difference to the limit. */
export function isWorthSaying({
  accrued,
  accruedNow = accrued,
  limit,
}: AmountLimitResult): boolean {
  return accruedNow - accrued >= WORTH_SAYING * limit;
}

/** Where the limit stands on a bar of its use: 1 at the end, less once it is passed. */
export function limitShare({ limit, accrued, accruedNow = accrued }: AmountLimitResult): number {
  return limit / Math.max(limit, accrued, accruedNow);
}
