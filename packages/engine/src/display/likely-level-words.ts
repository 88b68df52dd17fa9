import type { VolumeUnit } from '../log/units.ts';
import type { CarOil } from '../oil/oil-answer.ts';
import { formatRough } from './rough-number.ts';
import { atStop, nearestStop } from './stick-stops.ts';

/** So near to a stop, in spans, that it is that stop. */
const SAME = 0.03;
/** Beyond the marks by more than this, in spans, it is not at the mark any more. */
const OUTSIDE = 0.06;
/** Less than this, in litres, is at the mark. */
const AT_THE_MARK_L = 0.05;

/**
 * A likely level: the nearest stop of the stick, and on which side of it.
 *
 * @param fraction of the way from MIN (0) to MAX (1); any finite number
 * @example likelyStop(0.44) // "a little under half"
 */
export function likelyStop(fraction: number): string {
  if (fraction < -OUTSIDE) return 'below MIN';
  if (fraction > 1 + OUTSIDE) return 'over MAX';
  const stop = nearestStop(fraction);
  const inside = Math.min(1, Math.max(0, fraction));
  if (Math.abs(stop.at - inside) <= SAME) return atStop(stop);
  return `a little ${inside < stop.at ? 'under' : 'over'} ${stop.name}`;
}

/** An end of the band, at the nearest stop. @example bandStop(0.8) // "three quarters" */
function bandStop(fraction: number): string {
  if (fraction < -OUTSIDE * 2) return 'below MIN';
  if (fraction > 1 + OUTSIDE * 2) return 'over MAX';
  return nearestStop(fraction).name;
}

const outside = (stop: string) => stop === 'below MIN' || stop === 'over MAX';

/**
 * The band in which the level lies eight times in ten, between two stops.
 *
 * @example levelBandWords(0.2, 0.71) // "between a quarter and three quarters"
 */
export function levelBandWords(low: number, high: number): string {
  const [from, to] = [bandStop(low), bandStop(high)];
  if (from === to) return outside(from) ? from : `close to ${from}`;
  if (from === 'below MIN' && to === 'MIN') return 'at MIN or below';
  if (from === 'MAX' && to === 'over MAX') return 'at MAX or over';
  return outside(from) || outside(to) ? `from ${from} to ${to}` : `between ${from} and ${to}`;
}

/** Litres from MAX in words. @example fromMaxWords(-0.41, 'l') // "0.4 L below MAX" */
export function fromMaxWords(levelL: number, unit: VolumeUnit): string {
  if (Math.abs(levelL) < AT_THE_MARK_L) return 'at MAX';
  return `${formatRough(Math.abs(levelL), unit)} ${levelL > 0 ? 'above' : 'below'} MAX`;
}

/** The level as fractions of the span, from MIN (0) to MAX (1). */
export function levelFractions({ level, spanL }: Pick<CarOil, 'level' | 'spanL'>): {
  low: number;
  likely: number;
  high: number;
} {
  const of = (litres: number) => 1 + litres / spanL;
  return { low: of(level.p10), likely: of(level.p50), high: of(level.p90) };
}

/**
 * The likely level of an overview, without litres: its span is not at hand.
 *
 * @example laneLevelWords({ low: 0.2, likely: 0.44, high: 0.71 }) // "likely a little under half, between a quarter and three quarters"
 */
export function laneLevelWords(level: { low: number; likely: number; high: number }): string {
  return `likely ${likelyStop(level.likely)}, ${levelBandWords(level.low, level.high)}`;
}

/**
 * The likely level in a sentence without its stop. Not for `status` none: see `tooFewSentence()`.
 *
 * @example likelyLevelWords(oil, 'l')
 * // "likely a little under half, between a quarter and three quarters; 0.4 L below MAX"
 */
export function likelyLevelWords(oil: Pick<CarOil, 'level' | 'spanL'>, unit: VolumeUnit): string {
  const { low, likely, high } = levelFractions(oil);
  const litres = fromMaxWords(oil.level.p50, unit);
  const stop = likelyStop(likely);
  const first = `likely ${stop}, ${levelBandWords(low, high)}`;
  return stop === litres ? first : `${first}; ${litres}`;
}
