import { parseDay } from '../calendar/day-number.ts';
import type { Flag } from '../wear/result.ts';
import type { CarCase } from './case.ts';
import type { Contribution } from './contribution.ts';
import { loggedExchanges, settleExchangeDays } from './exchange-day.ts';
import { fillGaps } from './fill-gaps.ts';
import { findAssumedOrders, findLookAlikes } from './find-doubts.ts';
import { placeEntries } from './place-entries.ts';
import type { Placed } from './placed.ts';
import { fullScaleKm, type MeterHistory, readMeter } from './read-meter.ts';
import { addRoadHours } from './road-hours.ts';
import { inOrder, spreadUses } from './spread-uses.ts';
import { type StorageWindow, storageWindows } from './storage-windows.ts';

/** What a log says happened, in order. Everything that is computed of a car starts from here. */
export type History = {
  asOfDay: number;
  /** entries up to asOf and the items' starting points, in order */
  timeline: readonly Placed[];
  /** sorted, merged */
  storage: StorageWindow[];
  odometer: MeterHistory;
  hourMeter: MeterHistory;
  /** all use that is known, in order */
  contributions: Contribution[];
  /** what was set aside or found odd, in no particular order */
  flags: Flag[];
};

/**
 * Builds the history of a car from its case. The case may list its entries in any order: a back-dated
 * one simply takes its place.
 *
 * @param car the case; nothing of it is changed. Amounts must be finite and not negative
 * @throws RangeError for a date that does not exist
 */
export function buildHistory(car: CarCase): History {
  const asOfDay = parseDay(car.asOf);
  const placed = placeEntries(car, asOfDay);
  const scale = fullScaleKm(car.car);
  let timeline = settleExchangeDays(placed.timeline, loggedExchanges(placed.timeline));
  let odometer = readMeter(timeline, 'odo', scale);
  const settled = settleExchangeDays(timeline, unloggedExchanges(odometer));
  if (settled !== timeline) {
    timeline = settled;
    odometer = readMeter(timeline, 'odo', scale);
  }
  const hourMeter = readMeter(timeline, 'hours', null);
  const storage = storageWindows(car.storage, asOfDay);

  const uses = spreadUses(timeline, asOfDay);
  const byOdometer = fillGaps(timeline, uses, odometer, storage);
  const byHours = fillGaps(timeline, uses, hourMeter, storage);
  const contributions = [...uses, ...byOdometer.road, ...byHours.road].sort(inOrder);
  if (hourMeter.kept.length === 0) addRoadHours(contributions, car.car.roadKmh);

  return {
    asOfDay,
    timeline,
    storage,
    odometer,
    hourMeter,
    contributions,
    flags: [
      ...placed.flags,
      ...odometer.flags,
      ...hourMeter.flags,
      ...byOdometer.flags,
      ...byHours.flags,
      ...findLookAlikes(timeline),
      ...findAssumedOrders(timeline),
    ],
  };
}

function unloggedExchanges({ unloggedExchanges: found }: MeterHistory) {
  return found.map(({ lastOld, firstNew }) => ({
    meter: 'odo' as const,
    day: lastOld.day,
    oldValue: lastOld.reading,
    newValue: firstNew.reading,
  }));
}
