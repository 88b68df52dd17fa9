import type { History } from '../history/build-history.ts';
import type { MeterHistory } from '../history/read-meter.ts';
import type { AmountMeasure } from '../log/item.ts';
import type { LastService } from './last-service.ts';

/**
 * Whether all use since a service is in the log, so that the sum is the amount and not only a lower
 * bound.
 *
 * Known if the service says the history since is complete, or does not lie before the first reading
 * that was kept of the measure's meter (before the first entry of the log, for sessions, launches and
 * cars without that meter; an item's starting point is no entry of the log); and if no use of unknown
 * amount lies between, complete or not. Hours without an hour meter follow the odometer.
 *
 * @param history the car's history
 * @param service the item's last service
 */
export function isKnown(history: History, service: LastService, measure: AmountMeasure): boolean {
  const meter = meterOf(history, measure);
  if (meter?.unknownGaps.some(({ until }) => until > service.position)) return false;
  if (service.entry.complete) return true;
  const begins = meter?.kept[0]?.position ?? firstEntry(history);
  return begins !== -1 && service.position >= begins;
}

function meterOf(
  { odometer, hourMeter }: History,
  measure: AmountMeasure,
): MeterHistory | undefined {
  if (measure === 'km') return odometer;
  if (measure === 'hours') return hourMeter.kept.length > 0 ? hourMeter : odometer;
  return undefined;
}

function firstEntry({ timeline }: History): number {
  return timeline.findIndex(({ startingPoint }) => !startingPoint);
}
