import { formatDay } from '../calendar/day-number.ts';
import { ENGINE_VERSION } from '../engine-version.ts';
import { buildHistory, type History } from '../history/build-history.ts';
import type { CarCase, CaseItem } from '../history/case.ts';
import { leadDaysNow } from '../orders/order-by.ts';
import { analyseItem } from './analyse-item.ts';
import { findLayUp } from './find-lay-up.ts';
import { type LastService, lastServices } from './last-service.ts';
import { type Asked, type Ledger, ledgerOf } from './ledger.ts';
import { readOdometer } from './read-odometer.ts';
import type { CaseAnalysis } from './result.ts';
import { sortFlags } from './sort-flags.ts';

/**
 * Says what is known of a car on a day: what has accrued on each item since it was last done, how
 * much is left, in which state it is, and what was odd in the log. Pure: the same case gives the same
 * answer, in whatever order its entries come.
 *
 * @param car the case: SI values, finite, not negative
 * @throws RangeError for a date that does not exist
 * @example analyseCase(car).items[0]?.state
 */
export function analyseCase(car: CarCase, asked: Asked = {}): CaseAnalysis {
  return analyseHistory(car, buildHistory(car), asked);
}

/** The same, where the history of the case is at hand already. */
export function analyseHistory(car: CarCase, history: History, asked: Asked = {}): CaseAnalysis {
  return analyseLedger(car, history, ledgerOf(car, history, asked));
}

/** The same, where its ledger is at hand already. */
export function analyseLedger(car: CarCase, history: History, ledger: Ledger): CaseAnalysis {
  const services = lastServices(history.timeline);
  return {
    schema: 1,
    engineVersion: ENGINE_VERSION,
    car: car.car.id,
    asOf: car.asOf,
    flags: sortFlags(history.flags),
    items: car.items.map((item) => {
      const service = services.get(item.id) ?? null;
      return analyseItem(withLeadDaysNow(item, service), ledger, service);
    }),
    laidUp: findLayUp(car.storage, history.asOfDay),
    odometer: readOdometer(history),
  };
}

/** While its parts are on the shelf an item needs no days to get them. */
function withLeadDaysNow(item: CaseItem, service: LastService | null): CaseItem {
  const { orders, leadDays } = item;
  if (orders === undefined) return item;
  const done = service === null ? null : formatDay(service.day);
  return { ...item, leadDays: leadDaysNow(leadDays, orders, done) };
}
