import { addDays, weekday } from '../calendar/add.ts';
import { formatDay } from './format-day.ts';

/** What the words for a day to come need beside the day. */
export type Spoken = {
  /** civil date on which it is said; null = not known, so that every day keeps its year */
  asOf: string | null;
};

/** The days of a forecast: "likely by" and "could be as early as"; null beyond three years. */
export type Likely = { likely: string | null; early: string | null };

/** So many days ahead a forecast looks: three years. */
export const HORIZON_DAYS = 1096;

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];

/**
 * A day to come, without its year where that is the year it is said in.
 *
 * @param day civil date
 * @example dayAhead('2026-06-20', { asOf: '2026-05-02' }) // "20 June"
 */
export function dayAhead(day: string, { asOf }: Spoken): string {
  const words = formatDay(day);
  return asOf?.slice(0, 4) === day.slice(0, 4) ? words.replace(/ \d+$/, '') : words;
}

/** The same with its day of the week, for days one plans by. @example "Sat 20 June" */
export function weekdayAhead(day: string, spoken: Spoken): string {
  return `${WEEKDAYS[weekday(day) - 1]} ${dayAhead(day, spoken)}`;
}

/** The month in which the forecast ends. @example "June 2029" */
export function horizonMonth(asOf: string): string {
  return formatDay(addDays(asOf, HORIZON_DAYS)).replace(/^\d+ /, '');
}

function beyond({ asOf }: Spoken): string {
  return asOf === null ? 'for three years' : `before ${horizonMonth(asOf)}`;
}

/**
 * When something falls due, as one reads it from afar: the likely day alone.
 *
 * @example likelyWords({ likely: '2026-10-03', early: '2026-08-30' }, { asOf: '2026-06-15' })
 * // "likely by 3 October"
 */
export function likelyWords({ likely, early }: Likely, spoken: Spoken): string {
  if (likely !== null) return `likely by ${dayAhead(likely, spoken)}`;
  return `nothing ${early === null ? '' : 'likely '}${beyond(spoken)}`;
}

/**
 * When something falls due that is near: the likely day with its day of the week, and the day it could
 * be as early as, where that is another.
 *
 * @example nearWords({ likely: '2026-06-20', early: '2026-05-21' }, { asOf: '2026-05-10' })
 * // "likely by Sat 20 June, could be as early as 21 May"
 */
export function nearWords(days: Likely, spoken: Spoken): string {
  const { likely, early } = days;
  const first =
    likely === null ? likelyWords(days, spoken) : `likely by ${weekdayAhead(likely, spoken)}`;
  if (early === null || early === likely) return first;
  return `${first}, ${earlyWords(early, spoken)}`;
}

/** @example earlyWords('2026-05-21', { asOf: '2026-05-10' }) // "could be as early as 21 May" */
export function earlyWords(early: string, spoken: Spoken): string {
  // on the very day, or in a state that was worked out some days ago
  if (spoken.asOf !== null && early <= spoken.asOf) return 'could be due by now';
  return `could be as early as ${dayAhead(early, spoken)}`;
}
