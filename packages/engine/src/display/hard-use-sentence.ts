import type { DistanceUnit } from '../log/units.ts';
import type { SevereResult } from '../wear/result.ts';
import type { ItemFacts } from './car-facts.ts';
import { formatDay } from './format-day.ts';
import { formatAmount } from './format-quantity.ts';
import { listWords } from './grammar.ts';
import { limitsWords } from './limit-words.ts';
import { USE_PLACE } from './use-place.ts';

/**
 * What the schedule for hard use says of an item: how much hard use there was, from how much on the
 * shorter limits apply, and whether they do.
 *
 * @param unit unit of the odometer, for thresholds of distance
 * @example hardUseSentence(result, item.severe, 'km') // "Hard use: 17 sessions on circuits. From 15 ..."
 */
export function hardUseSentence(
  result: SevereResult,
  schedule: NonNullable<ItemFacts['severe']>,
  unit: DistanceUnit,
): string {
  const amount = (value: number) => formatAmount(schedule.measure, value, unit);
  const places = listWords(
    schedule.classes.map((use) => USE_PLACE[use]),
    schedule.classes.length,
  );
  const shorter = limitsWords(schedule.limits);
  const since = result.since === null ? '' : ` since ${formatDay(result.since)}`;
  const now = result.active ? `in force${since}` : 'not in force now';
  return `Hard use: ${amount(result.severeAmount)} ${places}. From ${amount(result.threshold)} on, the schedule for hard use applies (${shorter}); it is ${now}.`;
}
