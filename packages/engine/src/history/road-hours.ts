import type { Contribution } from './contribution.ts';

/**
 * Hours of road and touring use from its distance, for cars without an hour meter: km / speed, in
 * place. Marked as estimated.
 *
 * @param roadKmh average speed, km/h; null switches it off
 * Source: common practice (45 km/h over mixed roads), no published source.
 */
export function addRoadHours(contributions: readonly Contribution[], roadKmh: number | null): void {
  if (roadKmh === null || roadKmh <= 0) return;
  for (const it of contributions) {
    if (!it.hoursOpen) continue;
    it.hours = it.distanceKm / roadKmh;
    it.hoursEstimated = true;
  }
}
