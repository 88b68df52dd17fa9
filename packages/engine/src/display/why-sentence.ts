import type { AmountMeasure, UseClass } from '../log/item.ts';
import { USE_CLASSES } from '../log/item.ts';
import type { DistanceUnit } from '../log/units.ts';
import {
  type AmountLimitResult,
  type CalendarLimitResult,
  isAmountLimit,
  type LimitResult,
} from '../wear/result.ts';
import { type ItemFacts, typedLimit } from './car-facts.ts';
import { formatDay } from './format-day.ts';
import { formatNumber } from './format-number.ts';
import { formatAmount, formatCount } from './format-quantity.ts';
import { listWords } from './grammar.ts';
import { USE_PLACE } from './use-place.ts';

function times(weight: number): string {
  if (weight === 1) return '';
  if (weight < 1) return ` counted at ${formatNumber(weight * 100, 1)} %`;
  return ` counted ${formatNumber(weight, 2)} times`;
}

function share(
  limit: AmountLimitResult,
  useClass: UseClass,
  weights: Partial<Record<UseClass, number>>,
  unit: DistanceUnit,
): string | null {
  const weighted = limit.byClass[useClass] ?? 0;
  const weight = weights[useClass] ?? 1;
  if (weighted <= 0 || weight <= 0) return null;
  return `${formatAmount(limit.measure, weighted / weight, unit)} ${USE_PLACE[useClass]}${times(weight)}`;
}

function notCounted(weights: Partial<Record<UseClass, number>>): string[] {
  const zero = USE_CLASSES.filter((useClass) => weights[useClass] === 0);
  if (zero.length === 0) return [];
  return [
    `Use ${listWords(
      zero.map((useClass) => USE_PLACE[useClass]),
      5,
    )} does not count.`,
  ];
}

function derived(measure: AmountMeasure, estimated: number, unit: DistanceUnit): string[] {
  if (estimated <= 0) return [];
  return [
    `${formatAmount(measure, estimated, unit)} of it is worked out from other figures, not read or typed.`,
  ];
}

function amountSentences(limit: AmountLimitResult, about: About): string[] {
  const typed = about.item && typedLimit(about.item, limit.measure, limit.severe);
  const weights = typed && 'weights' in typed ? (typed.weights ?? {}) : {};
  const unit = typed?.measure === 'km' ? typed.unit : about.unit;
  const shares = USE_CLASSES.map((c) => share(limit, c, weights, unit)).filter((s) => s !== null);
  const counted = formatAmount(limit.measure, limit.accrued, unit);
  const since = about.service === undefined ? '' : ` since ${formatDay(about.service)}`;
  const parts = shares.length === 0 ? '' : `: ${listWords(shares, 5)}`;
  const known = limit.known
    ? []
    : ['It may be more: part of the way since then is not in the log.'];
  return [
    `${limit.known ? '' : 'At least '}${counted} counted${since}${parts}.`,
    `The limit is ${formatAmount(limit.measure, limit.limit, unit)}.`,
    ...(limit.reachedOn === null ? [] : [`It was reached on ${formatDay(limit.reachedOn)}.`]),
    ...notCounted(weights),
    ...derived(limit.measure, limit.estimated, unit),
    ...known,
  ];
}

function calendarSentences(limit: CalendarLimitResult, about: About): string[] {
  const last = formatDay(limit.dueDate);
  const when =
    limit.remainingDays < 0
      ? `${formatCount(-limit.remainingDays, 'day')} ago`
      : `${formatCount(limit.remainingDays, 'day')} left`;
  if (limit.measure === 'date') return [`The label is good through ${last}: ${when}.`];
  const length = formatCount(Number(limit.limit), limit.measure === 'days' ? 'day' : 'month');
  const since = about.service === undefined ? '' : ` from ${formatDay(about.service)}`;
  return [`${length}${since}, good through ${last}: ${when}.`];
}

type About = {
  /** civil date of the last service or baseline */
  service?: string | undefined;
  item?: ItemFacts | undefined;
  /** unit of the odometer, used where the limit has none */
  unit: DistanceUnit;
};

/**
 * How the figure of one limit came about, in plain words: what was counted since when, where, how
 * heavily, and what of it is worked out rather than read.
 *
 * @example whySentence(kmLimit, { service: '2025-05-02', item: oil, unit: 'km' })
 * // "7,470 km counted since 2 May 2025: 6,070 km on the road and 350 km on circuits counted 4 times. The limit is 10,000 km."
 */
export function whySentence(limit: LimitResult, about: About): string {
  const sentences = isAmountLimit(limit)
    ? amountSentences(limit, about)
    : calendarSentences(limit, about);
  const schedule = limit.severe ? ['This limit comes from the schedule for hard use.'] : [];
  return [...sentences, ...schedule].join(' ');
}
