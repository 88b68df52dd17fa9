import { parseDay } from '../calendar/day-number.ts';
import type { CarCase, PlannedUse } from '../history/case.ts';
import type { Contribution } from '../history/contribution.ts';
import { type Amounts, deriveAmounts } from '../history/derive-amounts.ts';
import type { UseClass } from '../log/item.ts';

/** An event that finished so many days ago and has no use recorded is counted as if it took place. */
const PENDING_DAYS = 14;
/** A use on these days around an event is taken to be its own. */
const DAYS_BEFORE = 1;
const DAYS_AFTER = 3;

/** A planned event, as far as it is still to come or to be recorded. */
export type PlannedOccasion = {
  id: string;
  useClass: UseClass;
  amounts: Amounts;
  /** probability that it takes place, 0..1 */
  attend: number;
  /** days ahead on which a share of it falls, ascending; 0 = today or before */
  daysAhead: number[];
  /** days the whole event has */
  days: number;
  /** days ahead of its first and last day; negative for what began before today */
  startAhead: number;
  endAhead: number;
};

/**
 * Planned events that still count. One that ended and has use of its class from the day before to three
 * days after is done; without use it counts as of today for 14 days, then not at all. Of a running one with
 * use on record only the days ahead count.
 *
 * @param contributions of the car, in order
 */
export function plannedOccasions(
  { planned, car }: Pick<CarCase, 'planned' | 'car'>,
  contributions: readonly Contribution[],
  asOfDay: number,
  hasHourMeter: boolean,
): PlannedOccasion[] {
  return planned
    .map((event) => {
      const start = parseDay(event.start);
      const end = Math.max(start, event.end === null ? start : parseDay(event.end));
      const recorded = start <= asOfDay && hasUse(contributions, event.useClass, start, end);
      return {
        id: event.id,
        useClass: event.useClass,
        amounts: amountsOf(event, hasHourMeter ? null : car.roadKmh),
        attend: event.attend,
        daysAhead: daysAhead(start, end, asOfDay, recorded),
        days: end - start + 1,
        startAhead: start - asOfDay,
        endAhead: end - asOfDay,
      };
    })
    .filter(({ daysAhead: ahead }) => ahead.length > 0)
    .sort(
      (a, b) => a.startAhead - b.startAhead || a.endAhead - b.endAhead || (a.id < b.id ? -1 : 1),
    );
}

function daysAhead(start: number, end: number, asOfDay: number, recorded: boolean): number[] {
  const over = end < asOfDay;
  if (over && (recorded || asOfDay - end > PENDING_DAYS)) return [];
  const ahead: number[] = [];
  for (let day = start; day <= end; day += 1)
    if (day > asOfDay) ahead.push(day - asOfDay);
    else if (!recorded) ahead.push(0);
  return ahead;
}

function hasUse(
  contributions: readonly Contribution[],
  useClass: UseClass,
  start: number,
  end: number,
): boolean {
  return contributions.some(
    (it) =>
      it.since === null &&
      it.useClass === useClass &&
      it.day >= start - DAYS_BEFORE &&
      it.day <= end + DAYS_AFTER,
  );
}

function amountsOf(event: PlannedUse, roadKmh: number | null): Amounts {
  const amounts = deriveAmounts(event);
  if (amounts.hoursOpen && roadKmh !== null && roadKmh > 0)
    return { ...amounts, hours: amounts.distanceKm / roadKmh };
  return amounts;
}
