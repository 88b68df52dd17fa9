import { formatNumber } from '@quartermark/engine/display';
import { KM_PER_UNIT } from '@quartermark/engine/units';
import { round, type Tick, ticks } from '../chart/ticks.ts';

/** Size of a drawing over distance; letters are drawn in its units, so that they stay readable on a phone. */
export const FRAME = { width: 328, height: 190, left: 36, right: 8, top: 14, bottom: 34 } as const;
export const FOOT = FRAME.height - FRAME.bottom;
export const END = FRAME.width - FRAME.right;

/** The axis of distance, as the odometer counts where it was never changed, else since the log began. */
export type Along = { x: (totalKm: number) => number; ticks: Tick[]; words: string };

type AlongOf = {
  firstKm: number;
  lastKm: number;
  unit: 'km' | 'mi';
  /** what the odometer shows beyond the kilometres of the log; null where they cannot be matched */
  odometerAheadKm: number | null;
};

/** Places totals of the log along the foot of a chart, with round numbers of the odometer beneath. */
export function along({ firstKm, lastKm, unit, odometerAheadKm }: AlongOf): Along {
  const wide = Math.max(lastKm - firstKm, 1e-9);
  const x = (totalKm: number) =>
    round(FRAME.left + ((totalKm - firstKm) / wide) * (END - FRAME.left));
  const per = KM_PER_UNIT[unit];
  const shift = odometerAheadKm ?? 0;
  const [from, to] = [(firstKm + shift) / per, (lastKm + shift) / per];
  return {
    x,
    ticks: between(from, to, 4).map((value) => ({
      at: x(value * per - shift),
      words: formatNumber(value, 0),
    })),
    words: odometerAheadKm === null ? `${unit} since the log began` : `odometer, ${unit}`,
  };
}

/** Round numbers from one value up to another. @example between(41_200, 44_000, 4) // [42000, 43000, 44000] */
export function between(from: number, to: number, most: number): number[] {
  const [, step = 1] = ticks(Math.max(to - from, 1e-9), most);
  const first = Math.ceil(from / step - 1e-9);
  const count = Math.max(0, Math.floor(to / step + 1e-9) - first + 1);
  return Array.from({ length: count }, (_, at) => Number(((first + at) * step).toPrecision(12)));
}

/**
 * What the odometer shows beyond the kilometres of the log, or null: after an exchange of the instrument
 * earlier totals would lie below zero.
 */
export function odometerAhead(
  odometer: { readingKm: number; totalKm: number } | null,
  firstKm: number,
): number | null {
  if (odometer === null) return null;
  const ahead = odometer.readingKm - odometer.totalKm;
  return ahead + firstKm < 0 ? null : ahead;
}

/** An outline along one edge and back along the other. */
export function bandPath(points: readonly { x: number; low: number; high: number }[]): string {
  if (points.length === 0) return '';
  const up = points.map(({ x, high }) => `${x} ${high}`);
  const back = points.toReversed().map(({ x, low }) => `${x} ${low}`);
  return `M${[...up, ...back].join('L')}Z`;
}

export function linePath(points: readonly { x: number; y: number }[]): string {
  return points.length === 0 ? '' : `M${points.map(({ x, y }) => `${x} ${y}`).join('L')}`;
}
