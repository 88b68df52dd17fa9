import { longestRun } from './longest-run.ts';
import type { MeterPoint } from './meter-sections.ts';

/** How often the last value of a segment may be set aside for being too fast. */
const TIMES = 3;

export type Kept = { kept: MeterPoint[]; rejected: MeterPoint[]; tooFast: MeterPoint[] };

/**
 * Judges the readings of one segment. First the longest non-decreasing run is kept. Then the last
 * value, with every reading that carries it (so equal typos go together), is set aside while it
 * implies more than `perDay` against the last smaller one, over days + 1; at most three times.
 *
 * @param perDay the most that is believed: 2,000 km or 24 h
 * Source: common practice, no published source.
 */
export function keepReadings(segment: readonly MeterPoint[], perDay: number): Kept {
  const run = longestRun(segment.map(({ value }) => value));
  const inRun = new Set(run);
  const kept = run.map((index) => segment[index] as MeterPoint);
  const rejected = segment.filter((_, index) => !inRun.has(index));
  const tooFast: MeterPoint[] = [];
  for (let time = 0; time < TIMES; time += 1) {
    const from = firstOfLastValue(kept);
    const last = kept[from];
    const smaller = kept[from - 1];
    if (last === undefined || smaller === undefined) break;
    if (last.value - smaller.value <= perDay * (last.day - smaller.day + 1)) break;
    tooFast.push(...kept.splice(from));
  }
  return { kept, rejected, tooFast };
}

function firstOfLastValue(kept: readonly MeterPoint[]): number {
  const last = kept.at(-1);
  let from = kept.length - 1;
  while (from > 0 && kept[from - 1]?.value === last?.value) from -= 1;
  return from;
}
