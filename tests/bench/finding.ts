import { p50, p95, type Times } from './statistics.ts';
import { ms, times } from './table.ts';

/** Something measured beside the least that could have been done instead. */
export type Finding = {
  what: string;
  took: Times;
  beside: { what: string; took: Times };
  /** the most that its p95 may be: so many times the other's, or so many milliseconds */
  goal: { ratio: number } | { ms: number };
};

export const HEAD = ['', 'p50', 'p95', 'beside it p50', 'p95', 'ratio p50', 'p95', 'goal', ''];

/** One row of the closing table. */
export function rowOf({ what, took, beside, goal }: Finding): string[] {
  const ratio = p95(took) / p95(beside.took);
  const met = 'ratio' in goal ? ratio <= goal.ratio : p95(took) <= goal.ms;
  return [
    what,
    ms(p50(took)),
    ms(p95(took)),
    ms(p50(beside.took)),
    ms(p95(beside.took)),
    times(p50(took) / p50(beside.took)),
    times(ratio),
    'ratio' in goal ? `p95 <= ${goal.ratio}x` : `p95 <= ${goal.ms} ms`,
    met ? 'met' : 'not met',
  ];
}
