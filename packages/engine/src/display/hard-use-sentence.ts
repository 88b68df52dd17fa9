import type { DistanceUnit } from '../log/units.ts';
import type { SevereResult } from '../wear/result.ts';
import type { ItemFacts } from './car-facts.ts';
import { formatDay } from './format-day.ts';
import { formatNumber } from './format-number.ts';
import { formatAmount, formatCount } from './format-quantity.ts';
import { listWords } from './grammar.ts';
import { limitsWords } from './limit-words.ts';
import { USE_PLACE } from './use-place.ts';

type Schedule = NonNullable<ItemFacts['severe']>;

/** "17 circuit sessions" where one class is counted, "160 km on circuits and on the drag strip" else. */
function hardAmount(value: number, { classes, measure }: Schedule, unit: DistanceUnit): string {
  const [only] = classes;
  if (
    classes.length === 1 &&
    measure === 'sessions' &&
    (only === 'circuit' || only === 'autocross')
  )
    return formatCount(value, `${only} session`);
  const places = classes.map((use) => USE_PLACE[use]);
  return `${formatAmount(measure, value, unit)} ${listWords(places, places.length)}`;
}

/**
 * What the schedule for hard use says of an item: how much hard use there was, from how much on the
 * shorter limits apply, and whether they do.
 *
 * @param unit unit of the odometer, for thresholds of distance
 * @example hardUseSentence(result, item.severe, 'km')
 * // "Hard use: 17 circuit sessions. From 15 sessions on, the schedule for hard use applies (6 months); it is in force since 13 June 2026."
 */
export function hardUseSentence(
  result: SevereResult,
  schedule: Schedule,
  unit: DistanceUnit,
): string {
  const so = hardAmount(result.severeAmount, schedule, unit);
  const threshold = formatAmount(schedule.measure, result.threshold, unit);
  const when =
    schedule.basis === 'limit'
      ? `From ${threshold} on`
      : `Beyond ${threshold}, ${formatNumber(schedule.share * 100, 0)} % of all use since the last service`;
  const since = result.since === null ? '' : ` since ${formatDay(result.since)}`;
  const now = result.active ? `in force${since}` : 'not in force now';
  return `Hard use: ${so}. ${when}, the schedule for hard use applies (${limitsWords(schedule.limits)}); it is ${now}.`;
}
