import type { OilComparedRow } from '@quartermark/api/client';
import { formatNumber, type OilUnits, rateIn } from '@quartermark/engine/display';
import { type Tick, ticks } from '../chart/ticks.ts';

/** A share of the width, 0 to 1; `cut`: it goes on beyond the scale. */
export type Interval = { from: number; at: number; to: number; cut: boolean };

export type IntervalScale = {
  /** a rate's place, L/1,000 km */
  place: (lPer1000Km: number) => number;
  interval: (rate: { low: number; likely: number; high: number }) => Interval;
  ticks: Tick[];
};

/** A band that is wider than this many times the likeliest rate would squeeze the others. */
const ROOM = 1.6;

/** One scale for all cars, from zero to a little beyond the likeliest rates and the limits. */
export function intervalScale(rows: readonly OilComparedRow[], units: OilUnits): IntervalScale {
  const top = Math.max(
    0.1,
    ...rows.flatMap(({ line, limit }) => [
      ...[line?.road, line?.hard, line?.ago?.road].map((rate) => (rate?.likely ?? 0) * ROOM),
      (limit ?? 0) * 1.1,
    ]),
  );
  const place = (rate: number) => Math.min(1, Math.max(0, rate / top));
  return {
    place,
    interval: ({ low, likely, high }) => ({
      from: place(low),
      at: place(likely),
      to: place(high),
      cut: high > top,
    }),
    ticks: ticks(rateIn(top, units), 4).map((value) => ({
      at: place(value / rateIn(1, units)),
      words: formatNumber(value, 2),
    })),
  };
}
