import type { Fit, Stream } from './fit-stream.ts';
import type { MeterDays } from './season.ts';

/** Blocks of everyday use: their length, and weight and squared relative spread of the prior. */
const BLOCK_DAYS = 28;
const BLOCK_PRIOR = { weight: 4, spread2: 0.49 };

/**
 * Variance of everyday use per unit of its mean (quasi-Poisson), from blocks of 28 days or more that end at
 * readings, or of 28 days where the log alone tells; shrunk to a squared relative spread of 0.49 a block.
 */
export function dispersionOf(
  { use, from, until, blank }: Stream,
  fit: Fit,
  meter: MeterDays | null,
  firstDay: number,
): number {
  const { longRun } = fit;
  let squares = 0;
  let blocks = 0;
  let start = from;
  const close = (end: number) => {
    if (end - start < BLOCK_DAYS) return;
    const expected = longRun * fit.seasonalDays(start, end);
    let seen = 0;
    for (let at = start + 1; at <= end; at += 1)
      if (blank === null || blank[at] === 0) seen += use[at] as number;
    if (expected > 0) {
      squares += (seen - expected) ** 2 / expected;
      blocks += 1;
    }
    start = end;
  };
  if (meter === null) for (let end = from + BLOCK_DAYS; end <= until; end += BLOCK_DAYS) close(end);
  else for (const day of meter.readings) close(day - firstDay);
  const prior = BLOCK_PRIOR.weight * BLOCK_PRIOR.spread2 * BLOCK_DAYS * longRun;
  return (prior + squares) / (BLOCK_PRIOR.weight + blocks);
}
