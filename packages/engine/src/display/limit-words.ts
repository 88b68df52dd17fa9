import type { Limit } from '../log/item.ts';
import { formatDay } from './format-day.ts';
import { formatNumber } from './format-number.ts';
import { formatAmount, formatCount } from './format-quantity.ts';

/**
 * A limit as it was typed, in its own unit.
 *
 * @example limitWords({ measure: 'km', value: 7500, unit: 'mi' }) // "7,500 mi"
 */
export function limitWords(limit: Limit): string {
  switch (limit.measure) {
    case 'km':
      return `${formatNumber(limit.value, 1)} ${limit.unit}`;
    case 'hours':
    case 'sessions':
    case 'launches':
      return formatAmount(limit.measure, limit.value, 'km');
    case 'months':
      return formatCount(limit.value, 'month');
    case 'days':
      return formatCount(limit.value, 'day');
    case 'date':
      return `${formatDay(limit.value)} on the label`;
  }
}

/** Several limits, of which the first to run out decides. @example "10,000 km or 12 months, whichever comes first" */
export function limitsWords(limits: readonly Limit[]): string {
  const words = limits.map(limitWords);
  const last = words.pop() ?? '';
  return words.length === 0 ? last : `${words.join(', ')} or ${last}, whichever comes first`;
}
