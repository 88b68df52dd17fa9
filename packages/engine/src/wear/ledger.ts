import { parseDay } from '../calendar/day-number.ts';
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

export type Asked = {
  /**
   * items are projected to the end of each planned event that is not over, or of those with these ids
   * alone; to none where absent
   */
  toEvents?: boolean | readonly string[];
  /** and to the end of these days, of which no use is known that would count for anything */
  toDays?: readonly { id: string; start: string; end: string }[];
};

/** A car's own always has a forecast. */
type CarLedger = Ledger & { forecasts: Forecasts };

/** A car's own history as a ledger. */
export function ledgerOf(car: CarCase, history: History, asked: Asked): CarLedger {
  const { asOfDay, timeline, contributions } = history;
  const season = seasonOf(car, history);
  return {
    asOfDay,
    timeline,
    contributions,
    isKnown: (service, measure) => isKnown(history, service, measure),
    forecasts: forecastsOf(season),
    projectTo: eventsToCome([...season.planned, ...daysWithoutUse(asked, asOfDay)], asked),
  };
}

function eventsToCome(
  events: readonly PlannedOccasion[],
  { toEvents = false, toDays = [] }: Asked,
): PlannedOccasion[] {
  const wanted = typeof toEvents === 'boolean' ? null : new Set(toEvents);
  const days = new Set(toDays.map(({ id }) => id));
  return events
    .filter(({ endAhead }) => endAhead >= 0)
    .filter(({ id }) => days.has(id) || (wanted?.has(id) ?? toEvents === true));
}

function daysWithoutUse({ toDays = [] }: Asked, asOfDay: number): PlannedOccasion[] {
  return toDays.map(({ id, start, end }) => {
    const [startAhead, endAhead] = [parseDay(start) - asOfDay, parseDay(end) - asOfDay];
    return {
      id,
      useClass: 'road',
      amounts: NO_USE,
      attend: 1,
      daysAhead: [],
      days: endAhead - startAhead + 1,
      startAhead,
      endAhead,
    };
  });
}

const NO_USE: PlannedOccasion['amounts'] = {
  distanceKm: 0,
  hours: 0,
  sessions: 0,
  launches: 0,
  distanceEstimated: false,
  hoursEstimated: false,
  hoursOpen: false,
};
