import { addMonths } from '../calendar/add.ts';
import { ageDays, madeFrom } from '../gear/date-code.ts';
import type { ComponentLife } from '../gear/result.ts';
import { formatDay } from './format-day.ts';
import { formatCount } from './format-quantity.ts';
import { capital } from './grammar.ts';

const LOOK_YEARLY_YEARS = 5;
const OUT_YEARS = 10;

/**
 * How old a tyre is, by its date code, and what that asks for, or why the code cannot be read; null
 * without a code.
 *
 * Source: tyre makers' advice: a yearly look after five years, off after ten whatever the tread. That
 * tyres for circuits go sooner is common practice, no source.
 * @example "Made in week 1 of 2020, 6 years ago. Have the tyres looked at every year now (advice of tyre
 *   makers: yearly after five, out at ten)."
 */
export function tyreAgeSentence(
  life: Pick<ComponentLife, 'ageFrom' | 'ageUnread' | 'sessions'>,
  asOf: string,
): string | null {
  if (life.ageUnread !== null) return `${capital(life.ageUnread)}.`;
  const code = life.ageFrom;
  if (code === null) return null;
  const made = `week ${code.week} of ${code.year}`;
  if (ageDays(code, asOf) < 0)
    return `The date code says ${made}, which lies ahead: read it on the tyre again.`;
  const years = yearsSince(madeFrom(code), asOf);
  const ago = years === 0 ? 'less than a year ago' : `${formatCount(years, 'year')} ago`;
  const start = `Made in ${made}, ${ago}.`;
  if (years >= OUT_YEARS)
    return `${start} Out by age, whatever the tread: tyre makers say ten years.`;
  const onCircuits = (life.sessions.amount ?? 0) > 0;
  const sooner = onCircuits ? ' On circuits they go sooner (common practice).' : '';
  if (years >= LOOK_YEARLY_YEARS)
    return `${start} Have the tyres looked at every year now (advice of tyre makers: yearly after five, out at ten).${sooner}`;
  const look = addMonths(madeFrom(code), LOOK_YEARLY_YEARS * 12);
  return `${start} A yearly look from ${formatDay(look)}, out by ${formatDay(addMonths(madeFrom(code), OUT_YEARS * 12))} (advice of tyre makers).${sooner}`;
}

function yearsSince(from: string, asOf: string): number {
  let years = 0;
  while (addMonths(from, (years + 1) * 12) <= asOf) years += 1;
  return years;
}
