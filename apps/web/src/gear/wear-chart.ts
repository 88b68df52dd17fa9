import { floorWords, formatNumber } from '@quartermark/engine/display';
import { type ComponentWear, type PositionWear, valueAfter } from '@quartermark/engine/gear';
import { KM_PER_UNIT } from '@quartermark/engine/units';
import { round, type Tick, ticks } from '../chart/ticks.ts';

/** Size of the drawing; letters are drawn in its units, so that they stay readable on a phone. */
export const CHART = { width: 328, height: 190, left: 34, right: 10, top: 12, bottom: 34 } as const;

/** All in the units of the drawing. */
export type WearChart = {
  points: { id: string; x: number; y: number; isNew: boolean }[];
  /** likely, from the first point to the end; null without a rate */
  likely: string | null;
  /** as low as it could be, from today on */
  low: string | null;
  now: number;
  floors: { y: number; words: string }[];
  xTicks: Tick[];
  yTicks: Tick[];
  /** what the axis along counts */
  along: string;
};

const STEPS = 16;
/** Further than this many times the use so far nobody looks. */
const AHEAD = 2;

/**
 * One place's measurements against use, its line on to the lowest minimum, and the minima.
 *
 * @param unit of distances
 * @returns null where one measurement makes no picture
 */
export function wearChart(
  position: PositionWear,
  { basis }: Pick<ComponentWear, 'basis'>,
  unit: 'km' | 'mi',
): WearChart | null {
  const { points, line, floors, useSince, last } = position;
  if (points.length < 2) return null;
  const nowUse = last.use + useSince;
  const endUse = lastUseShown(position, nowUse);
  const top = Math.max(...points.map(({ value }) => value)) * 1.06;
  const inner = {
    width: CHART.width - CHART.left - CHART.right,
    height: CHART.height - CHART.top - CHART.bottom,
  };
  const x = (use: number) => round(CHART.left + (use / Math.max(endUse, 1e-9)) * inner.width);
  const y = (value: number) => round(CHART.top + (1 - value / Math.max(top, 1e-9)) * inner.height);
  const ahead = (of: 'likely' | 'low') =>
    line === null
      ? []
      : Array.from({ length: STEPS + 1 }, (_, step) => {
          const further = ((endUse - nowUse) * step) / STEPS;
          return `${x(nowUse + further)} ${y(valueAfter(line, further)[of])}`;
        });
  const first = points[0]?.use ?? 0;
  const start = line && line.centreValue + line.rate * (line.centreUse - first);
  return {
    points: points.map((point) => ({
      id: point.entry ?? 'new',
      x: x(point.use),
      y: y(point.value),
      isNew: point.entry === null,
    })),
    likely: start === null ? null : `M${x(first)} ${y(start)}L${ahead('likely').join('L')}`,
    low: line === null ? null : `M${ahead('low').join('L')}`,
    now: x(nowUse),
    floors: apart(floors.map((floor) => ({ y: y(floor.mm), words: floorWords(floor) }))),
    xTicks: ticks(endUse / (basis === 'km' ? KM_PER_UNIT[unit] : 1), 5).map((tick) => ({
      at: x(tick * (basis === 'km' ? KM_PER_UNIT[unit] : 1)),
      words: formatNumber(tick, 2),
    })),
    yTicks: ticks(top, 4).map((tick) => ({ at: y(tick), words: formatNumber(tick, 2) })),
    along: basis === 'km' ? unit : basis,
  };
}

/** Up to where the line meets the lowest minimum, as far as that is near enough to be seen. */
function lastUseShown({ floors, points }: PositionWear, nowUse: number): number {
  const span = nowUse - (points[0]?.use ?? 0);
  const left = Math.max(0, ...floors.map((floor) => floor.left?.likely ?? 0));
  return nowUse + Math.min(left * 1.05, span * AHEAD);
}

/** The two laws lie 0.0125 mm apart: where lines cannot be told apart, one carries both names. */
function apart(floors: WearChart['floors']): WearChart['floors'] {
  const told: WearChart['floors'] = [];
  for (const floor of floors) {
    const same = told.find(({ y }) => Math.abs(y - floor.y) < 2);
    if (same) same.words = `${same.words}, ${floor.words}`;
    else told.push({ ...floor });
  }
  return told;
}
