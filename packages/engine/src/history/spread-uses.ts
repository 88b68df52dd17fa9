import { parseDay } from '../calendar/day-number.ts';
import { type Contribution, contributionOf } from './contribution.ts';
import { type Amounts, deriveAmounts } from './derive-amounts.ts';
import { type Placed, positionOf, RANK, UNTIMED_MINUTE } from './placed.ts';

/**
 * Logged uses as daily shares, in order. A use of several days is spread evenly over them; its time
 * belongs to the first day, the later ones count as untimed uses; days after asOf do not count yet.
 *
 * @param timeline entries in order
 * @param asOfDay day number
 */
export function spreadUses(timeline: readonly Placed[], asOfDay: number): Contribution[] {
  const shares: Contribution[] = [];
  timeline.forEach(({ entry, day }, source) => {
    if (entry.type !== 'use') return;
    const lastDay = Math.max(day, entry.endDate === null ? day : parseDay(entry.endDate));
    const days = lastDay - day + 1;
    const whole = deriveAmounts(entry);
    const amounts = days === 1 ? whole : share(whole, days);
    const place = { useClass: entry.useClass, source, since: null };
    shares.push(contributionOf(amounts, { ...place, day, position: source }));
    for (let on = day + 1; on <= Math.min(lastDay, asOfDay); on += 1) {
      const position = positionOf(timeline, on, UNTIMED_MINUTE, RANK.use) - 0.5;
      shares.push(contributionOf(amounts, { ...place, day: on, position }));
    }
  });
  return shares.sort(inOrder);
}

/** By day, then by position: the order in which contributions count. */
export function inOrder(a: Contribution, b: Contribution): number {
  return a.day - b.day || a.position - b.position || a.source - b.source;
}

function share(amounts: Amounts, days: number): Amounts {
  return {
    ...amounts,
    distanceKm: amounts.distanceKm / days,
    hours: amounts.hours / days,
    sessions: amounts.sessions / days,
    launches: amounts.launches / days,
  };
}
