import type { OilStory, StoryEntry } from '@quartermark/engine';
import { round } from '../chart/ticks.ts';
import {
  type Along,
  along,
  bandPath,
  FOOT,
  FRAME,
  linePath,
  odometerAhead,
} from './chart-frame.ts';

export type LevelDot = {
  entry: string;
  x: number;
  y: number;
  /** how it was read: filled, hollow where doubtful or for little, crossed where off procedure */
  look: 'sound' | 'doubtful' | 'off';
};
export type LevelMark = {
  entry: string;
  x: number;
  what: 'added' | 'changed' | 'repair' | 'rise';
};

/** All in the units of the drawing. */
export type LevelChart = {
  along: Along;
  band: string;
  likely: string;
  dots: LevelDot[];
  marks: LevelMark[];
  /** heights of MAX and MIN */
  max: number;
  min: number;
};

type Odometer = { readingKm: number; totalKm: number } | null;

/** What lies further outside the marks is drawn at the edge, so that the marks keep their size. */
const OUTSIDE = 0.28;

/**
 * The likely level along the log with its band, what was read, and what happened to it.
 *
 * @returns null before the second entry, or without a distance between
 */
export function levelChart(
  { entries, spanL, stepKm, totalKm }: OilStory,
  odometer: Odometer,
  unit: 'km' | 'mi',
): LevelChart | null {
  const firstKm = entries[0]?.totalKm ?? 0;
  if (entries.length < 2 || totalKm - firstKm < 1) return null;
  const axis = along({
    firstKm,
    lastKm: totalKm,
    unit,
    odometerAheadKm: odometerAhead(odometer, firstKm),
  });
  const y = (levelL: number) => heightOf(1 + levelL / spanL);
  const points = entries.flatMap(({ totalKm: km, before, after }) =>
    [before, after].map(({ low, likely, high }) => ({
      x: axis.x(km),
      y: y(likely),
      low: y(low),
      high: y(high),
    })),
  );
  // before the first entry nothing is known
  const known = points.slice(1);
  return {
    along: axis,
    band: bandPath(known),
    likely: linePath(known),
    dots: entries.flatMap((entry) => dotsOf(entry, axis.x(entry.totalKm), spanL)),
    marks: [
      ...entries.flatMap((entry) => markOf(entry, axis.x(entry.totalKm))),
      ...(stepKm === null ? [] : [{ entry: 'rise', x: axis.x(stepKm), what: 'rise' as const }]),
    ],
    max: heightOf(1),
    min: heightOf(0),
  };
}

function heightOf(fraction: number): number {
  const inside = Math.min(1 + OUTSIDE, Math.max(-OUTSIDE, fraction));
  return round(FRAME.top + ((1 + OUTSIDE - inside) / (1 + 2 * OUTSIDE)) * (FOOT - FRAME.top));
}

function dotsOf({ entry, levels, verdict }: StoryEntry, x: number, spanL: number): LevelDot[] {
  return levels.map(({ level, look, correctionL, when }) => ({
    entry: `${entry} ${when}`,
    x,
    y: heightOf((level === 'none' ? -0.1 : level) + correctionL / spanL),
    look: look === 'off' ? 'off' : verdict === 'doubtful' || look !== 'on' ? 'doubtful' : 'sound',
  }));
}

const MARK = { topUp: 'added', change: 'changed', repair: 'repair' } as const;

function markOf({ entry, what }: StoryEntry, x: number): LevelMark[] {
  return what === 'reading' || what === 'use' ? [] : [{ entry, x, what: MARK[what] }];
}
