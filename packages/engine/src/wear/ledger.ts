import { type Forecasts, forecastsOf } from '../forecast/forecasts.ts';
import type { PlannedOccasion } from '../forecast/planned-occasions.ts';
import { seasonOf } from '../forecast/season.ts';
import type { History } from '../history/build-history.ts';
import type { CarCase } from '../history/case.ts';
import type { Contribution } from '../history/contribution.ts';
import type { Placed } from '../history/placed.ts';
import type { AmountMeasure } from '../log/item.ts';
import { isKnown } from './is-known.ts';
import type { LastService } from './last-service.ts';

/** What items are judged by: use in order, and whether it is all there was. A car's, or a part's own. */
export type Ledger = {
  asOfDay: number;
  /** entries in order; positions of contributions and services are places in it */
  timeline: readonly Placed[];
  contributions: readonly Contribution[];
  /** false: the sum since that service is only a lower bound */
  isKnown(service: LastService, measure: AmountMeasure): boolean;
  /** null: nothing forecasts its use, only days of the calendar can be told */
  forecasts: Forecasts | null;
  /** the events up to which items are projected; costly, so only those that are shown */
  projectTo: readonly PlannedOccasion[];
};

/**
 * A car's own history as a ledger.
 *
 * @param toEvents whether items are projected to the end of each planned event that is not over
 */
export function ledgerOf(car: CarCase, history: History, toEvents: boolean): Ledger {
  const { asOfDay, timeline, contributions } = history;
  const season = seasonOf(car, history);
  return {
    asOfDay,
    timeline,
    contributions,
    isKnown: (service, measure) => isKnown(history, service, measure),
    forecasts: forecastsOf(season),
    projectTo: toEvents ? season.planned.filter(({ endAhead }) => endAhead >= 0) : [],
  };
}
