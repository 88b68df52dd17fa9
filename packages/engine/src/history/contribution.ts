import type { AmountMeasure, UseClass } from '../log/item.ts';
import type { Amounts } from './derive-amounts.ts';

/** One day's share of a use, or of what a meter shows beyond the logged uses. */
export type Contribution = Amounts & ContributionPlace;

export type ContributionPlace = {
  day: number;
  /**
   * where it counts in the timeline: an entry's position, or half a step before one. It counts after
   * a service whose position is smaller.
   */
  position: number;
  useClass: UseClass;
  /** position of the entry that says so: the use, or the reading that ends the interval */
  source: number;
  /** position of the reading that begins the interval; null for a logged use */
  since: number | null;
};

/** Puts amounts in their place. One way to make them all keeps walks over ten thousands fast. */
export function contributionOf(amounts: Amounts, place: ContributionPlace): Contribution {
  return {
    day: place.day,
    position: place.position,
    useClass: place.useClass,
    source: place.source,
    since: place.since,
    distanceKm: amounts.distanceKm,
    hours: amounts.hours,
    sessions: amounts.sessions,
    launches: amounts.launches,
    distanceEstimated: amounts.distanceEstimated,
    hoursEstimated: amounts.hoursEstimated,
    hoursOpen: amounts.hoursOpen,
  };
}

/** The amount of a measure: km, h or a count. */
export function amountOf(contribution: Amounts, measure: AmountMeasure): number {
  if (measure === 'km') return contribution.distanceKm;
  return contribution[measure];
}

/** True if the amount of that measure was derived from another. */
export function isEstimated(contribution: Amounts, measure: AmountMeasure): boolean {
  if (measure === 'km') return contribution.distanceEstimated;
  return measure === 'hours' && contribution.hoursEstimated;
}
