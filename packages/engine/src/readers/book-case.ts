import type { CarCase, CaseItem, CaseLimit, PlannedUse } from '../history/case.ts';
import type { Book, PlannedEvent } from '../log/book.ts';
import type { Entry } from '../log/entry.ts';
import type { Item, Limit } from '../log/item.ts';
import type { BookOrder } from '../log/order.ts';
import { distanceKm } from '../log/quantity.ts';
import { minuteOfDay } from '../log/sort-entries.ts';
import { KM_PER_UNIT } from '../log/units.ts';
import { caseEntries } from './book-entry.ts';
import { itemTriggers } from './book-triggers.ts';

/** Average speed on roads, for hours where there is no hour meter (common practice, no source). */
export const ROAD_KMH = 45;

function caseLimit(limit: Limit): CaseLimit {
  switch (limit.measure) {
    case 'km':
      return {
        measure: 'km',
        value: limit.value * KM_PER_UNIT[limit.unit],
        weights: limit.weights ?? {},
      };
    case 'hours':
    case 'sessions':
    case 'launches':
      return { measure: limit.measure, value: limit.value, weights: limit.weights ?? {} };
    case 'months':
    case 'days':
      return { measure: limit.measure, value: limit.value };
    case 'date':
      return { measure: 'date', value: limit.value };
  }
}

/**
 * An item in SI values, as the models read it.
 *
 * @param entries in which something may have happened that makes the item due at once; tombstones and
 *   what is dated later left out
 */
export function caseItem(item: Item, entries: readonly Entry[] = []): CaseItem {
  const { id, warnDays, leadDays, severe, baseline, once, dueSince } = item;
  const triggers = itemTriggers(item, entries);
  return {
    id,
    warnDays,
    leadDays,
    limits: item.limits.map(caseLimit),
    severe: severe === undefined ? null : { ...severe, limits: severe.limits.map(caseLimit) },
    baseline:
      baseline === undefined
        ? null
        : {
            date: baseline.on,
            minute: minuteOfDay({ time: baseline.time }),
            odometerKm: baseline.odometer === undefined ? null : distanceKm(baseline.odometer),
            complete: baseline.historyComplete ?? false,
          },
    ...(once && { once }),
    ...(dueSince !== undefined && { dueSince }),
    ...(triggers.length > 0 && { triggers }),
  };
}

function withOrders(item: CaseItem, all: readonly BookOrder[]): CaseItem {
  const orders = all.filter((order) => order.item === item.id);
  return orders.length === 0 ? item : { ...item, orders };
}

function plannedUse({ id, start, end, use, ...given }: PlannedEvent): PlannedUse {
  return {
    id,
    start,
    end: end ?? null,
    useClass: use,
    distanceKm: given.km ?? null,
    hours: given.hours ?? null,
    sessions: given.sessions ?? null,
    launches: given.launches ?? null,
    attend: given.attend,
  };
}

/**
 * A `log/1` book as the case the models read: SI values, tombstones left out.
 *
 * @param book as its schema gives it
 */
export function bookCase(book: Book): CarCase {
  const { car, asOf } = book;
  const standing = book.entries.filter((entry) => !entry.removed);
  const happened = standing.filter(({ on }) => on <= asOf);
  return {
    car: {
      id: car.id,
      odoDigits: car.odoDigits ?? null,
      odoUnit: car.unit,
      hemisphere: car.hemisphere ?? null,
      roadKmh: car.roadKmh === undefined ? ROAD_KMH : car.roadKmh,
    },
    asOf,
    entries: standing.flatMap((entry) => caseEntries(entry, book.items)),
    storage: book.layUps.map(({ id, start, end }) => ({ id, start, end: end ?? null })),
    planned: book.planned.map(plannedUse),
    items: book.items.map((item) => withOrders(caseItem(item, happened), book.orders ?? [])),
  };
}
