import type {
  CarCase,
  CaseEntry,
  CaseItem,
  CaseLimit,
  MeterResetEntry,
  PlannedUse,
  ReadingEntry,
  ServiceEntry,
  UseEntry,
} from '../src/history/case.ts';
import type { UseClass } from '../src/log/item.ts';

// Small cases, written as a person would say them. Minutes are given as "HH:MM".

type At = { time?: string; id?: string; recorded?: number };

function at(type: string, date: string, { time, id, recorded }: At) {
  const [hours = '0', minutes = '0'] = time?.split(':') ?? [];
  return {
    id: id ?? `${type} ${date}${time === undefined ? '' : ` ${time}`}`,
    date,
    minute: time === undefined ? null : Number(hours) * 60 + Number(minutes),
    recorded: recorded ?? null,
    kind: type,
  };
}

function sealed<E extends Omit<CaseEntry, 'canonical'>>(entry: E): E & { canonical: string } {
  return { ...entry, canonical: JSON.stringify(entry) };
}

export function reading(
  date: string,
  odometerKm: number | null,
  more: At & { hours?: number } = {},
): ReadingEntry {
  return sealed({
    type: 'reading' as const,
    ...at('reading', date, { id: `reading ${date} ${odometerKm ?? more.hours}`, ...more }),
    odometerKm,
    hourMeterH: more.hours ?? null,
  });
}

export function use(
  date: string,
  useClass: UseClass,
  amounts: At & {
    km?: number;
    hours?: number;
    sessions?: number;
    launches?: number;
    endDate?: string;
  } = {},
): UseEntry {
  return sealed({
    type: 'use' as const,
    ...at(useClass, date, amounts),
    useClass,
    endDate: amounts.endDate ?? null,
    distanceKm: amounts.km ?? null,
    hours: amounts.hours ?? null,
    sessions: amounts.sessions ?? null,
    launches: amounts.launches ?? null,
    plannedOn: null,
  });
}

export function service(
  date: string,
  items: string[],
  more: At & { odo?: number; hours?: number; complete?: boolean } = {},
): ServiceEntry {
  return sealed({
    type: 'service' as const,
    ...at('service', date, more),
    items,
    odometerKm: more.odo ?? null,
    hourMeterH: more.hours ?? null,
    complete: more.complete ?? false,
  });
}

export function exchange(
  date: string,
  newValue: number,
  more: At & { oldValue?: number; meter?: 'odo' | 'hours' } = {},
): MeterResetEntry {
  return sealed({
    type: 'meterReset' as const,
    ...at('meterReset', date, more),
    meter: more.meter ?? 'odo',
    oldValue: more.oldValue ?? null,
    newValue,
  });
}

export function km(value: number, weights: Partial<Record<UseClass, number>> = {}): CaseLimit {
  return { measure: 'km', value, weights };
}

export function item(
  id: string,
  limits: CaseLimit[],
  more: Partial<Omit<CaseItem, 'id' | 'limits'>> = {},
): CaseItem {
  return { id, limits, warnDays: 14, leadDays: 0, severe: null, baseline: null, ...more };
}

export function startingPoint(
  date: string,
  odometerKm: number | null = null,
  complete = false,
): NonNullable<CaseItem['baseline']> {
  return { date, minute: null, odometerKm, complete };
}

export function carCase(
  asOf: string,
  entries: CaseEntry[],
  items: CaseItem[] = [],
  more: Partial<CarCase['car']> & {
    storage?: [start: string, end: string | null][];
    planned?: PlannedUse[];
  } = {},
): CarCase {
  const { storage = [], planned = [], ...car } = more;
  return {
    car: { id: 'car', odoDigits: null, hemisphere: null, roadKmh: 45, ...car },
    asOf,
    entries,
    storage: storage.map(([start, end]) => ({ id: `from ${start}`, start, end })),
    planned,
    items,
  };
}
