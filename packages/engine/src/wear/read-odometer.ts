import type { History } from '../history/build-history.ts';
import { firstAfter } from './accrue.ts';
import type { Analysis } from './result.ts';
import { roundAmount } from './round-amount.ts';

/**
 * The last odometer reading that was kept, with the distance the car has gone since its log began:
 * all known use up to that reading, across exchanges.
 *
 * @returns null for a car without a reading
 */
export function readOdometer({ odometer, contributions, timeline }: History): Analysis['odometer'] {
  const last = odometer.kept.at(-1);
  const entry = timeline[last?.position ?? -1]?.entry;
  if (last === undefined || entry === undefined) return null;
  let totalKm = 0;
  const end = firstAfter(contributions, last.position);
  for (const { distanceKm } of contributions.slice(0, end)) totalKm += distanceKm;
  return {
    entry: entry.id,
    on: entry.date,
    readingKm: last.reading,
    totalKm: roundAmount(totalKm),
  };
}
