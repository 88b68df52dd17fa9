import { formatDay } from './format-day.ts';
import { capital, listWords } from './grammar.ts';
import type { OilLine } from './oil-line.ts';
import { type OilUnits, perWords, rateFigure } from './oil-rate-words.ts';

/** What the comparison needs of each car. */
export type ComparedRow = { name: string; line: OilLine | null };

/**
 * `more`, `less`: nine times in ten it is so. `likelyMore`: three times in four, and by a quarter or more.
 * `same`: cannot be told apart.
 */
export type OilChange = 'more' | 'likelyMore' | 'less' | 'same' | 'unknown';

/** Standard deviations above which three of four of a Gaussian lie, and nine of ten. */
const IN_FOUR = 0.6744897501960817;
const IN_TEN = 1.2815515655446004;
const WORTH_TELLING = 1.25;

/** How a car's use on the road stands against a year before. */
export function oilChangeOf(line: OilLine | null): OilChange {
  const change = line?.change ?? null;
  if (change === null) return 'unknown';
  if (change.low > 1) return 'more';
  if (change.high < 1) return 'less';
  const sd = (Math.log(change.high) - Math.log(change.low)) / (2 * IN_TEN);
  const likely = change.likely >= WORTH_TELLING && Math.log(change.likely) > IN_FOUR * sd;
  return likely ? 'likelyMore' : 'same';
}

/**
 * A car's change in words.
 *
 * @example changeWords(line, units) // "uses more than a year ago: 0.2 then, 0.41 L per 1,000 km now"
 */
export function changeWords(line: OilLine | null, units: OilUnits): string {
  if (line === null) return 'being worked out';
  if (line.status === 'none' || line.road === null) return 'too few readings yet';
  const then = line.ago?.road ?? null;
  if (then === null) return 'no rate from a year ago to compare with';
  const rates = `${rateFigure(then.likely, units)} then, ${rateFigure(line.road.likely, units)} ${perWords(units)} now`;
  switch (oilChangeOf(line)) {
    case 'more':
      return `uses more than a year ago: ${rates}`;
    case 'likelyMore':
      return `likely uses more than a year ago: ${rates}`;
    case 'less':
      return `uses less than a year ago: ${rates}`;
    case 'same':
    case 'unknown':
      return `no change to be told from a year ago: ${rates}`;
  }
}

/** The month a year ago, of the first car that has one. */
function sinceMonth(rows: readonly ComparedRow[]): string {
  const on = rows.find(({ line }) => line?.ago)?.line?.ago?.on;
  return on === undefined ? 'a year ago' : formatDay(on).replace(/^\d+ /, '');
}

/**
 * The first line of the comparison: which cars got worse since a year ago.
 *
 * @param rows those that got worse the most surely first
 * @example comparedAnswer(rows, units)
 * // "Got worse since June 2025: Tern, 0.2 L per 1,000 km on the road then, 0.41 now."
 */
export function comparedAnswer(rows: readonly ComparedRow[], units: OilUnits): string {
  if (rows.length === 0) return 'No car to compare.';
  const of = (change: OilChange) => rows.filter(({ line }) => oilChangeOf(line) === change);
  const [worse, likely] = [of('more'), of('likelyMore')];
  const list = (some: readonly ComparedRow[]) =>
    listWords(
      some.map((row) => thenAndNow(row, units)),
      4,
    );
  if (worse.length > 0) {
    const too = likely.length === 0 ? '' : ` Likely too, not yet surely: ${list(likely)}.`;
    return `Got worse since ${sinceMonth(worse)}: ${list(worse)}.${too}`;
  }
  if (likely.length > 0)
    return `Likely worse than in ${sinceMonth(likely)}, not yet surely: ${list(likely)}.`;
  const compared = rows.filter(({ line }) => oilChangeOf(line) !== 'unknown');
  if (compared.length > 0)
    return `No car uses more oil than in ${sinceMonth(compared)}, as far as can be told.`;
  return rows.some(({ line }) => line?.road)
    ? 'No car has a rate from a year ago to compare with yet.'
    : 'Too few readings yet to compare any car.';
}

function thenAndNow({ name, line }: ComparedRow, units: OilUnits): string {
  const [then, now] = [line?.ago?.road?.likely ?? 0, line?.road?.likely ?? 0];
  return `${capital(name)}, ${rateFigure(then, units)} then, ${rateFigure(now, units)} ${perWords(units)} now`;
}

/** Against its owner's limit; null without one, or while it is well within. */
export function oilLimitWords(
  line: OilLine | null,
  limit: number | null,
  units: OilUnits,
): string | null {
  if (limit === null || !line?.road) return null;
  const words = `your limit of ${rateFigure(limit, units)} ${perWords(units)}`;
  if (line.road.low > limit) return `over ${words}`;
  if (line.road.likely > limit) return `likely over ${words}`;
  return line.road.high > limit ? `may be over ${words}` : `within ${words}`;
}
