import { addMonths } from '../calendar/add.ts';
import { ageDays, madeFrom } from '../gear/date-code.ts';
import type { ComponentLife, MeasuredReading } from '../gear/result.ts';
import { formatDay } from './format-day.ts';
import { formatNumber } from './format-number.ts';
import { formatCount } from './format-quantity.ts';
import { capital } from './grammar.ts';

/** Legal floors of tread, mm. Sources: Council Directive 89/459/EEC; 49 CFR 570.9 (2/32 in). */
const EU_TREAD_MM = 1.6;
const US_TREAD_MM = (2 * 25.4) / 32;

const WHAT = { tread: 'tread', padInner: 'pad', padOuter: 'pad', disc: 'disc' } as const;
type What = (typeof WHAT)[MeasuredReading['what']];

type Least = { what: What; on: string; value: number; unit: 'mm' | 'g'; where: string };

/** The least reading of each sort in its last measurement: tread, pad, disc. */
function leastOf(life: ComponentLife): Least[] {
  const least = new Map<What, Least>();
  for (const { on, readings } of life.measured) {
    const ofDay = new Map<What, Least>();
    for (const { what, where, mm, g } of readings) {
      const value = mm ?? g;
      if (value === null) continue;
      const sort = WHAT[what];
      const known = ofDay.get(sort);
      const unit = mm === null ? 'g' : 'mm';
      if (known === undefined || (known.unit === unit && value < known.value))
        ofDay.set(sort, { what: sort, on, value, unit, where });
    }
    for (const [sort, it] of ofDay) least.set(sort, it);
  }
  return [...least.values()];
}

/** What a tread or pad has fallen below; the legal floors before the owner's own. */
function below({ what, value, unit }: Least, ownLeastMm: number | null): string {
  if (unit !== 'mm') return '';
  if (what === 'tread' && value < US_TREAD_MM)
    return ' Below the legal floor: 1.6 mm in the EU, 2/32 in in the US.';
  if (what === 'tread' && value < EU_TREAD_MM)
    return ' Below the legal floor of the EU, 1.6 mm; just above 2/32 in, that of the US.';
  if (ownLeastMm !== null && value < ownLeastMm)
    return ` Below your own least, ${formatNumber(ownLeastMm, 1)} mm.`;
  return '';
}

/**
 * What was measured last, the least of it: one sentence for each of tread, pad and disc.
 *
 * @param ownLeastMm the owner's least depth; null where there is none
 * @example measuredLines(life, null) // ["Tread: least 4.1 mm, front left, 9 June 2026."]
 */
export function measuredLines(life: ComponentLife, ownLeastMm: number | null): string[] {
  return leastOf(life).map((it) => {
    const value = `${formatNumber(it.value, it.unit === 'mm' ? 1 : 0)} ${it.unit}`;
    const line = `${capital(it.what)}: least ${value}, ${it.where}, ${formatDay(it.on)}.`;
    return `${line}${below(it, ownLeastMm)}`;
  });
}

const LOOK_YEARLY_YEARS = 5;
const OUT_YEARS = 10;

/**
 * How old a tyre is, by its date code, and what that asks for; null without a code.
 *
 * Source: tyre makers' advice: a yearly look after five years, off after ten whatever the tread.
 * @example "Made in week 1 of 2020, 6 years ago. Have the tyres looked at every year now."
 */
export function tyreAgeSentence(life: ComponentLife, asOf: string): string | null {
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
  if (years >= LOOK_YEARLY_YEARS) return `${start} Have the tyres looked at every year now.`;
  return start;
}

function yearsSince(from: string, asOf: string): number {
  let years = 0;
  while (addMonths(from, (years + 1) * 12) <= asOf) years += 1;
  return years;
}
