import type { TickView } from '@quartermark/api/client';

type Ticks = readonly Pick<TickView, 'carId' | 'line'>[];

/**
 * The tick that holds of each line of work; the last one decides.
 *
 * @param ticks oldest first
 * @example lastTicks(page.ticks).get(line.id)?.done
 */
export function lastTicks<T extends Ticks[number]>(ticks: readonly T[]): ReadonlyMap<string, T> {
  return new Map(ticks.map((tick) => [tick.line, tick]));
}
