import { parseDay } from '../calendar/day-number.ts';
import type { History } from '../history/build-history.ts';
import type { CaseItem, CaseLimit } from '../history/case.ts';
import type { Contribution } from '../history/contribution.ts';
import type { MeterHistory } from '../history/read-meter.ts';
import type { AmountMeasure } from '../log/item.ts';
import { accrue, firstAfter } from '../wear/accrue.ts';
import { isKnown } from '../wear/is-known.ts';
import { dueDayOf } from '../wear/judge-calendar.ts';
import { judgeSevere } from '../wear/judge-severe.ts';
import type { LastService } from '../wear/last-service.ts';

/** From one service of an item to the next, or to the end of the log. Day numbers. */
export type Interval = {
  /** null: nothing on record begins it, only a label's day can be told */
  from: LastService | null;
  next: LastService | null;
  /** the last day that counts: of the next service, or of the log */
  endDay: number;
};

export type IntervalEnd = {
  /** the day the first limit was reached inside the interval; null if none is known to be */
  reachedDay: number | null;
  /** false: the log does not hold all use, so `reachedDay` is at the latest */
  whole: boolean;
  /** the last day through which the use that counts is known; at most `endDay` */
  knownDay: number;
};

type AmountLimit = Extract<CaseLimit, { weights: unknown }>;

/**
 * What came of an item between two services: when the first of its limits was reached, and how far the
 * log can tell.
 *
 * An amount is reached on the day its sum comes up to the limit, by the same sum as everywhere else. A day
 * of the calendar is reached only if the interval lasts longer: on that day itself it is still good. A
 * limit of the hard-use schedule counts from the day that was switched on. Everyday use is known through
 * the last reading of its meter, logged use through the last day.
 *
 * @param item limits > 0
 * @param history of the whole log, also of what came after the interval
 */
export function intervalEnd(item: CaseItem, history: History, interval: Interval): IntervalEnd {
  const { from, next, endDay } = interval;
  const until = next === null ? null : firstAfter(history.contributions, next.position);
  const used = history.contributions
    .slice(0, until ?? undefined)
    .filter(({ day }) => day <= endDay);
  const { severe } = item;
  const switched =
    severe === null || from === null
      ? null
      : judgeSevere({ ...item, severe }, used, from.position, from.day).sinceDay;
  const usual = item.limits.map((limit) => reachedDay(limit, interval, used));
  const hard =
    switched === null
      ? []
      : (severe?.limits ?? []).map((limit) => {
          const day = reachedDay(limit, interval, used);
          return day === null ? null : Math.max(day, switched);
        });
  const days = [...usual, ...hard].filter((day) => day !== null);
  const amounts = [...item.limits, ...(severe?.limits ?? [])].filter(isAmount);
  return {
    reachedDay: days.length === 0 ? null : Math.min(...days),
    whole:
      from === null || amounts.every(({ measure }) => isKnown(upTo(history, next), from, measure)),
    knownDay: Math.min(endDay, ...amounts.map((limit) => knownDay(limit, history))),
  };
}

function isAmount(limit: CaseLimit): limit is AmountLimit {
  return 'weights' in limit;
}

function reachedDay(
  limit: CaseLimit,
  { from, endDay }: Interval,
  used: readonly Contribution[],
): number | null {
  if (!isAmount(limit)) {
    if (from === null && limit.measure !== 'date') return null;
    const day = dueDayOf(limit, from?.day ?? 0);
    return day < endDay ? day : null;
  }
  const reachedOn = from === null ? null : accrue(used, from.position, limit).reachedOn;
  return reachedOn === null ? null : parseDay(reachedOn);
}

/** The history with the gaps of its meters that lie before the next service. */
function upTo(history: History, next: LastService | null): History {
  if (next === null) return history;
  const before = (meter: MeterHistory): MeterHistory => ({
    ...meter,
    unknownGaps: meter.unknownGaps.filter(({ after }) => after < next.position),
  });
  return {
    ...history,
    odometer: before(history.odometer),
    hourMeter: before(history.hourMeter),
  };
}

/**
 * Everyday use is known through the last reading, and on through a lay-up that covers the day after it; where
 * it has no weight, or no meter, the log tells.
 */
function knownDay({ measure, weights }: AmountLimit, history: History): number {
  const kept = (weights.road ?? 1) > 0 ? readingsOf(measure, history) : [];
  const last = kept.at(-1)?.day;
  if (last === undefined) return history.asOfDay;
  const lay = history.storage.find(({ from, until }) => from <= last + 1 && last < until);
  return lay?.until ?? last;
}

function readingsOf(measure: AmountMeasure, { odometer, hourMeter }: History) {
  if (measure === 'km') return odometer.kept;
  if (measure !== 'hours') return [];
  return hourMeter.kept.length > 0 ? hourMeter.kept : odometer.kept;
}
