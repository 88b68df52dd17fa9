import type { OrderBy } from '../orders/order-by.ts';
import type { Remedy } from '../readiness/result.ts';
import { type Spoken, weekdayAhead } from './due-words.ts';
import { orderWords } from './order-words.ts';
import { nearDay } from './verdict-words.ts';

/** What the words for a piece of work need of it; a remedy and a line of the list both have it. */
export type Work = Pick<Remedy, 'what' | 'latest' | 'earliest' | 'parts' | 'leadDays' | 'feasible'>;

/** When parts have to be ordered. */
export type ToOrder = 'today' | 'later' | 'late';

/**
 * When the parts of a piece of work have to be ordered: today, by a later day, or it is too late for
 * the event; null where nothing is to be ordered, or an order is under way or here. What should have
 * been ordered before and can still come before the event is ordered today.
 *
 * @param asOf civil date
 */
export function toOrder(
  { parts, leadDays, feasible }: Pick<Work, 'parts' | 'leadDays' | 'feasible'>,
  asOf: string,
): ToOrder | null {
  if (parts?.kind !== 'orderBy' || leadDays === 0) return null;
  if (!feasible) return 'late';
  return parts.day <= asOf ? 'today' : 'later';
}

/**
 * The days of a piece of work: the last day for it, the first from which it lasts, or that there is no
 * time for it any more.
 *
 * @example workDays({ latest: '2026-06-19', earliest: null, feasible: true, ... }, { asOf: '2026-06-15' })
 * // "by Fri 19 at the latest"
 */
export function workDays({ latest, earliest, feasible }: Work, spoken: Spoken): string {
  if (!feasible) return 'no longer possible in time';
  const words = [
    earliest === null ? '' : `not before ${nearDay(earliest, spoken)}, or it would not last`,
    latest === null ? 'as soon as can be' : byDay(latest, spoken),
  ];
  return words.filter((part) => part !== '').join('; ');
}

function byDay(latest: string, spoken: Spoken): string {
  return latest === spoken.asOf
    ? 'today at the latest'
    : `by ${nearDay(latest, spoken)} at the latest`;
}

/**
 * What there is to say of the parts of a piece of work; null where it needs none.
 *
 * @example workParts(work, { asOf: '2026-06-15' }) // "order today, the parts take 4 days"
 */
export function workParts(work: Work, spoken: Spoken & { asOf: string }): string | null {
  const { parts, leadDays, latest } = work;
  if (parts === null) return null;
  if (parts.kind !== 'orderBy') return hereOrComing(parts, latest, spoken);
  const take = `the parts take ${leadDays === 1 ? '1 day' : `${leadDays} days`}`;
  switch (toOrder(work, spoken.asOf)) {
    case null:
      return null;
    case 'today':
      return `order today, ${take}`;
    case 'later':
      return `order by ${weekdayAhead(parts.day, spoken)}, ${take}`;
    case 'late':
      return `too late to order for it: ${take}`;
  }
}

function hereOrComing(
  parts: Exclude<OrderBy, { kind: 'orderBy' }>,
  latest: string | null,
  spoken: Spoken,
): string {
  if (parts.kind === 'onTheShelf') return 'parts are on the shelf';
  const { expected } = parts.order;
  const late = latest !== null && expected !== undefined && expected > latest;
  return `parts ${orderWords(parts.order, spoken)}${late ? ', too late for it' : ''}`;
}
