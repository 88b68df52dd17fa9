import { atStop, nearestStop } from './stick-stops.ts';

/** What was read on the stick: a fraction of the span (0 MIN, 1 MAX), or a mark without a number. */
export type LevelRead = { fraction: number | null; mark: 'none' | 'over' | null };

/** So near to a stop, in spans, that it is that stop: less than an eye can tell on a stick. */
const SAME = 0.02;

/**
 * An oil level in the words of a stick: the nearest named stop, with "about" where it lies between.
 * Below MIN and over MAX are said as such: they ask for something before the next start.
 *
 * @example levelWords({ fraction: 0.55, mark: null }) // "about half"
 */
export function levelWords({ fraction, mark }: LevelRead): string {
  if (mark === 'none') return 'none on the stick';
  if (mark === 'over' || (fraction !== null && fraction > 1 + SAME)) return 'over MAX';
  if (fraction === null) return 'not on record';
  if (fraction < -SAME) return 'below MIN';
  const nearest = nearestStop(fraction);
  if (Math.abs(nearest.at - fraction) <= SAME) return atStop(nearest);
  return `about ${nearest.name}`;
}

/**
 * Whether the last look at the stick asks for another before the next start: too little or too much oil,
 * and nothing poured in or changed since that would have mended it. Common practice, no source.
 *
 * @param level as last read; `addedSinceL` in litres
 */
export function outsideTheMarks(
  level: LevelRead & { addedSinceL: number; changedSince: boolean },
): boolean {
  if (level.changedSince) return false;
  const read = levelWords(level);
  const low = read === 'none on the stick' || read === 'below MIN';
  return read === 'over MAX' || (low && level.addedSinceL === 0);
}
