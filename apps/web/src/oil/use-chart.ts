import type { OilStory } from '@quartermark/engine';
import { formatNumber, type OilUnits, rateIn } from '@quartermark/engine/display';
import { round, type Tick, ticks } from '../chart/ticks.ts';
import {
  type Along,
  along,
  bandPath,
  FOOT,
  FRAME,
  linePath,
  odometerAhead,
} from './chart-frame.ts';

type Line = { band: string; likely: string; end: number };

/** All in the units of the drawing. */
export type UseChart = {
  along: Along;
  road: Line;
  /** null where no hard use is known */
  hard: Line | null;
  yTicks: Tick[];
  /** where use likely rose; null while no rise is suspected */
  rise: number | null;
};

/** Room above the likeliest rate ever; a band that was wider is cut off there. */
const ROOM = 1.7;

/**
 * How the rates were known along the log, road and hard use apart, each with its band.
 *
 * @param units of the rates
 * @returns null before there are two of them
 */
export function useChart(
  story: OilStory,
  odometer: { readingKm: number; totalKm: number } | null,
  { unit, ...units }: OilUnits & { unit: 'km' | 'mi' },
): UseChart | null {
  const known = story.entries.flatMap(({ totalKm, rates }) =>
    rates?.road ? [{ totalKm, road: rates.road, hard: rates.hard }] : [],
  );
  const first = known[0];
  if (first === undefined || known.length < 2 || story.totalKm - first.totalKm < 1) return null;
  const axis = along({
    firstKm: first.totalKm,
    lastKm: story.totalKm,
    unit,
    odometerAheadKm: odometerAhead(odometer, first.totalKm),
  });
  const last = known.at(-1);
  const top = Math.max(
    ...known.flatMap(({ road, hard }) => [road.likely * ROOM, (hard?.likely ?? 0) * ROOM]),
    last?.road.high ?? 0,
    last?.hard?.high ?? 0,
  );
  const y = (rate: number) => round(FRAME.top + (1 - Math.min(1, rate / top)) * (FOOT - FRAME.top));
  const line = (of: 'road' | 'hard'): Line => {
    const points = known.flatMap(({ totalKm, [of]: rate }) =>
      rate === null
        ? []
        : [{ x: axis.x(totalKm), y: y(rate.likely), low: y(rate.low), high: y(rate.high) }],
    );
    // what was last learnt holds until today
    const end = points.at(-1);
    if (end !== undefined) points.push({ ...end, x: axis.x(story.totalKm) });
    return { band: bandPath(points), likely: linePath(points), end: end?.y ?? FOOT };
  };
  return {
    along: axis,
    road: line('road'),
    hard: last?.hard ? line('hard') : null,
    yTicks: ticks(rateIn(top, units), 4).map((value) => ({
      at: y(value / rateIn(1, units)),
      words: formatNumber(value, 2),
    })),
    rise: story.stepKm === null || story.stepKm < first.totalKm ? null : axis.x(story.stepKm),
  };
}
