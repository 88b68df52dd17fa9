import type { AmountMeasure } from '../log/item.ts';
import { type DistanceUnit, KM_PER_UNIT } from '../log/units.ts';
import {
  type CalendarLimitResult,
  type DueDates,
  type Expectation,
  type ItemResult,
  isAmountLimit,
  type LimitResult,
} from '../wear/result.ts';
import { type ItemFacts, typedLimit } from './car-facts.ts';
import { dayAhead, horizonMonth } from './due-words.ts';
import { formatDay } from './format-day.ts';
import { formatNumber } from './format-number.ts';
import { formatAmount, formatCount } from './format-quantity.ts';
import { capital } from './grammar.ts';
import { limitToSpeakOf } from './limit-to-speak-of.ts';
import { isWorthSaying } from './use-parts.ts';

type About = {
  item?: ItemFacts | undefined;
  /** unit of the odometer, used where the limit has none */
  unit: DistanceUnit;
  /** civil date of the analysis */
  asOf: string;
  /** the car is in a lay-up of which nobody said when it ends; the forecast takes five months */
  openLayUp?: boolean;
};

/** Below that a count or an amount is nothing a person would plan with. */
const NOTHING = 0.05;

/**
 * Two figures are all that an average can honestly claim, in the unit it is read in.
 *
 * @example twoFigures('km', 118.7, 'km') // 120
 */
function twoFigures(measure: AmountMeasure, amount: number, unit: DistanceUnit): number {
  const per = measure === 'km' ? KM_PER_UNIT[unit] : 1;
  return Number((amount / per).toPrecision(2)) * per;
}

function week({ measure, perWeek }: Expectation, unit: DistanceUnit): string | null {
  const amount = formatAmount(measure, twoFigures(measure, perWeek, unit), unit);
  if (perWeek <= 0 || /^0(\.0)? /.test(amount)) return null;
  return `about ${amount} in an average week at this time of year (recent weeks weigh most)`;
}

/** Planned events, and outings beyond them; what one of them counts where it is counted in pieces. */
function outings(expects: Expectation, unit: DistanceUnit): string | null {
  const { planned, moreLikely, measure, perOccasion } = expects;
  const more = moreLikely >= NOTHING ? `about ${formatNumber(moreLikely, 1)}` : null;
  if (planned === 0 && more === null) return null;
  const events = planned > 0 ? `${formatCount(planned, 'event')} planned` : null;
  const both = [events, more && (events ? `${more} more likely` : `${more} outings likely`)]
    .filter((part) => part !== null)
    .join(' and ');
  if (more === null || measure === 'km' || perOccasion < NOTHING) return both;
  const each = formatAmount(measure, twoFigures(measure, perOccasion, unit), unit);
  return `${both}, of some ${each} each`;
}

function layUp(until: string, about: About): string {
  const day = dayAhead(until, about);
  return about.openLayUp ? `laid up, taken to last until ${day}` : `laid up until ${day}`;
}

function ending({ p10, p50 }: DueDates, what: string, { asOf }: About): string {
  const day = (date: string) => dayAhead(date, { asOf });
  const end = horizonMonth(asOf);
  if (p50 === null)
    return p10 === null
      ? `hardly any chance that you reach ${what} before ${end}`
      : `one time in ten you reach ${what} by ${day(p10)}, mostly not before ${end}`;
  if (p50 <= asOf) return `more likely than not you have reached ${what} by now`;
  const half = `half the time you reach ${what} by ${day(p50)}`;
  if (p10 === null || p10 === p50) return half;
  const early = p10 <= asOf ? 'now' : day(p10);
  return `${half}, one time in ten by ${early}`;
}

function amountSentence(expects: Expectation, due: DueDates, about: About, hard: boolean): string {
  const { item } = about;
  const typed = item && typedLimit(item, expects.measure, hard);
  const unit = typed?.measure === 'km' ? typed.unit : about.unit;
  const parts = [
    week(expects, unit),
    expects.laidUpUntil && layUp(expects.laidUpUntil, about),
    outings(expects, unit),
  ].filter((part) => typeof part === 'string');
  const end = ending(due, hard ? 'the limit for hard use' : 'the limit', about);
  if (parts.length === 0) return `No use is expected by what is recorded; ${end}.`;
  return `${capital(parts.join(', '))}; ${end}.`;
}

function upOn({ measure, limit }: CalendarLimitResult, day: string): string {
  if (measure === 'date') return `The label says ${day}`;
  const length = formatCount(Number(limit), measure === 'days' ? 'day' : 'month');
  return `${length} ${length.startsWith('1 ') ? 'is' : 'are'} up on ${day}`;
}

function calendarSentence(limit: CalendarLimitResult, due: DueDates, about: About): string {
  const { dueDate } = limit;
  if (limit.severe && due.p50 !== dueDate)
    return `The schedule for hard use ends before anything else, once it applies; ${ending(due, 'its limit', about)}.`;
  const day = formatDay(dueDate);
  const sure = `${upOn(limit, day)}, whatever is driven.`;
  const sooner = due.p10 !== null && due.p10 < dueDate;
  if (!sooner) return sure;
  const early = due.p10 === null ? '' : dayAhead(due.p10, about);
  return `${sure} One time in ten another limit comes before it, by ${early}.`;
}

/**
 * Why an item is expected to fall due when it is: what is driven on average at this time of year, what
 * lay-up and events do to it, and when that reaches the limit that runs out first. What is nothing is
 * left out. Null where there is no forecast, where nothing is left to be forecast (overdue, done once), and
 * where too little is on record: use that is missing would come on top.
 *
 * @example forecastSentence(result, { item: oil, unit: 'km', asOf: '2026-01-10' })
 * // "About 120 km in an average week at this time of year (recent weeks weigh most), laid up until 25
 * // March, 2 events planned and about 1.4 more likely; half the time you reach the limit by 20 June, one
 * // time in ten by 21 May."
 */
export function forecastSentence(result: ItemResult, about: About): string | null {
  const { dueDate, expects, state, reasonCode } = result;
  if (dueDate === undefined || state === 'overdue' || state === 'unknown') return null;
  if (reasonCode === 'doneOnce') return null;
  const limit = limitToSpeakOf(result);
  if (limit === null) return null;
  if (!isAmountLimit(limit)) return calendarSentence(limit, dueDate, about);
  return expects ? amountSentence(expects, dueDate, about, limit.severe) : null;
}

/**
 * The days of a forecast, each with its words; empty where they say no more than the state does (a day of
 * the calendar, nothing within three years).
 *
 * @example bandDays({ p10: '2026-05-21', p50: '2026-06-20', p90: '2026-08-03' }, { asOf: '2026-05-10' })
 * // [{ words: 'Likely by', day: '20 June' }, { words: 'Could be as early as', day: '21 May' },
 * //  { words: 'Nine times in ten by', day: '3 August' }]
 */
export function bandDays(
  { p10, p50, p90 }: DueDates,
  about: { asOf: string },
): { words: string; day: string }[] {
  if (p10 === p90 || p10 === null) return [];
  const late = `not before ${horizonMonth(about.asOf)}`;
  const say = (day: string | null) => (day === null ? late : dayAhead(day, about));
  return [
    { words: 'Likely by', day: say(p50) },
    { words: 'Could be as early as', day: p10 <= about.asOf ? 'today' : say(p10) },
    { words: 'Nine times in ten by', day: say(p90) },
  ];
}

/**
 * What a limit stands at with the use expected since the last reading, where that makes a difference.
 *
 * @example nowSentence(limit, { item: oil, unit: 'km' }) // "8,120 km by the last reading, about 8,400 km by now."
 */
export function nowSentence(limit: LimitResult, about: Omit<About, 'asOf'>): string | null {
  if (!isAmountLimit(limit) || limit.accruedNow === undefined || !isWorthSaying(limit)) return null;
  const typed = about.item && typedLimit(about.item, limit.measure, limit.severe);
  const unit = typed?.measure === 'km' ? typed.unit : about.unit;
  const read = formatAmount(limit.measure, limit.accrued, unit);
  // so exact as what is expected, not more
  const expected = twoFigures(limit.measure, limit.accruedNow - limit.accrued, unit);
  const now = formatAmount(limit.measure, limit.accrued + expected, unit);
  return `${read} by the last reading, about ${now} by now.`;
}
