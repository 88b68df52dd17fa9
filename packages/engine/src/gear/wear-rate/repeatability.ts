import type { MeasuredReading } from '../result.ts';

type Sort = MeasuredReading['what'] | 'mass';

/**
 * Standard deviation of one measurement with hand tools, mm (mass: g): a tread gauge between the bars of
 * a worn block, a calliper or gauge past a pad, a micrometer on a disc, kitchen scales.
 *
 * Source: common practice, no source.
 */
const SD: Readonly<Record<Sort, number>> = {
  tread: 0.15,
  padInner: 0.2,
  padOuter: 0.2,
  disc: 0.05,
  mass: 5,
};

/** What was written down as new is a figure of the box, not of the part: half as good as a measurement. */
export const NEW_SD_FACTOR = 2;

/** How well measurements of a position repeat. @returns standard deviation, mm or g */
export function repeatability(what: MeasuredReading['what'], unit: 'mm' | 'g'): number {
  return SD[unit === 'g' ? 'mass' : what];
}
