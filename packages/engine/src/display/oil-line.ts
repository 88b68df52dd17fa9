import type { CarOil, OilAnswer } from '../oil/oil-answer.ts';
import type { OilYearAgo } from '../readers/oil-year-ago.ts';
import { levelFractions } from './likely-level-words.ts';
import { hardRateOf, type OilRate, roadRateOf } from './oil-rate-words.ts';
import { riseState } from './oil-sentences.ts';
import { type OilStop, oilStopOf } from './oil-stop-sentence.ts';

/** A car's oil as it is compared with others; litres per 1,000 km, fractions of the span. */
export type OilLine = {
  status: CarOil['status'];
  stop: OilStop | null;
  /** where the level likely is; null where too little is on record */
  level: { low: number; likely: number; high: number } | null;
  road: OilRate | null;
  hard: OilRate | null;
  /** the same civil date a year before, and the rates then; null where nothing is on record from then */
  ago: { on: string; road: OilRate | null; hard: OilRate | null } | null;
  /**
   * the road rate as a multiple of that a year before, likely and eight times in ten between the others; null
   * without both
   */
  change: OilRate | null;
  rise: 'risen' | 'watch' | null;
};

const EIGHT_IN_TEN = 1.2815515655446004;

/** What is stored of a car's oil beside its whole analysis, so that cars can be compared without it. */
export function oilLineOf(oil: CarOil, ago: OilYearAgo | null): OilLine {
  return {
    status: oil.status,
    stop: oilStopOf(oil),
    level: oil.status === 'none' ? null : levelFractions(oil),
    road: roadRateOf(oil),
    hard: hardRateOf(oil),
    ago: ago && { on: ago.on, road: roadRateOf(ago.answer), hard: hardRateOf(ago.answer) },
    change: ago && changeOf(oil, ago.answer),
    rise: riseState(oil),
  };
}

/**
 * ln change = ln now - ln then, variance the sum of both: as if the two were learnt apart, which makes the band
 * a little too wide, since the same car's log is behind both.
 */
function changeOf(now: OilAnswer, then: OilAnswer): OilRate | null {
  if (now.status === 'none' || then.status === 'none') return null;
  const middle = Math.log(now.roadRate.median / then.roadRate.median);
  const sd = Math.hypot(now.roadRate.sdLog, then.roadRate.sdLog);
  return {
    low: Math.exp(middle - EIGHT_IN_TEN * sd),
    likely: Math.exp(middle),
    high: Math.exp(middle + EIGHT_IN_TEN * sd),
  };
}
