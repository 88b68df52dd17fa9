import type { IncidentSort } from '../log/common.ts';
import type { AmountMeasure, CalendarMeasure, UseClass } from '../log/item.ts';
import type { OrderInput } from '../log/order.ts';
import type { Placed } from './placed.ts';

/**
 * One car's case as the models read it: plain SI values, whatever file or book they came from. The
 * readers (`log/1`, `due/1`, `oil/1`) map into this; nothing below it knows the shape of a file.
 */
export type CarCase = {
  car: {
    id: string;
    odoDigits: number | null;
    /** unit the odometer counts in, so that its digits say where it rolls over; km where absent */
    odoUnit?: 'km' | 'mi';
    hemisphere: 'N' | 'S' | null;
    /** average road speed where there is no hour meter; null switches the derivation off */
    roadKmh: number | null;
  };
  /** civil date `YYYY-MM-DD` */
  asOf: string;
  entries: CaseEntry[];
  /** storage windows, both ends inclusive; `end` null = open */
  storage: { id: string; start: string; end: string | null }[];
  /** events on the calendar that this car may go to, past ones too */
  planned: PlannedUse[];
  items: CaseItem[];
};

/** An event on the calendar and what the car is to do there; amounts null where not said. */
export type PlannedUse = {
  id: string;
  start: string;
  end: string | null;
  useClass: UseClass;
  distanceKm: number | null;
  hours: number | null;
  sessions: number | null;
  launches: number | null;
  /** probability that it takes place with this car, 0..1 */
  attend: number;
};

export type CaseEntry = ReadingEntry | UseEntry | ServiceEntry | MeterResetEntry;

type CaseEntryCommon = {
  /** id in its file; null where the file gave none */
  id: string | null;
  date: string;
  /** local minute of the day 0..1439; null if unknown (counts as 720) */
  minute: number | null;
  /** the server's ordinal; null counts as last */
  recorded: number | null;
  /** kind in its file, part of the sort key */
  kind: string;
  /** canonical JSON of the mapped entry, the sort key's last resort */
  canonical: string;
};

export type ReadingEntry = CaseEntryCommon & {
  type: 'reading';
  odometerKm: number | null;
  hourMeterH: number | null;
};

export type UseEntry = CaseEntryCommon & {
  type: 'use';
  useClass: UseClass;
  endDate: string | null;
  /** as given; what is missing is derived once, in the history */
  distanceKm: number | null;
  hours: number | null;
  sessions: number | null;
  launches: number | null;
  /** runs down a drag strip, where the file counts them apart from launches */
  passes?: number;
  plannedOn: string | null;
};

export type ServiceEntry = CaseEntryCommon & {
  type: 'service';
  items: string[];
  odometerKm: number | null;
  hourMeterH: number | null;
  /** true: all use since then is in the log */
  complete: boolean;
};

export type MeterResetEntry = CaseEntryCommon & {
  type: 'meterReset';
  meter: 'odo' | 'hours';
  /** km or h; null = not known, so the distance across is unknown */
  oldValue: number | null;
  newValue: number;
};

export type CaseLimit =
  | { measure: AmountMeasure; value: number; weights: Partial<Record<UseClass, number>> }
  | { measure: Exclude<CalendarMeasure, 'date'>; value: number }
  | { measure: 'date'; value: string };

export type CaseItem = {
  id: string;
  warnDays: number;
  leadDays: number;
  limits: CaseLimit[];
  severe: {
    classes: UseClass[];
    measure: AmountMeasure;
    share: number;
    basis: 'limit' | 'used';
    limits: CaseLimit[];
  } | null;
  /** reads as a service entry of this item alone */
  baseline: {
    date: string;
    minute: number | null;
    odometerKm: number | null;
    complete: boolean;
  } | null;
  /** a one-off: done once, it is over; no where absent */
  once?: boolean;
  /** civil date since when its owner treats it as due; until it is done on that day or later */
  dueSince?: string;
  /** parts that were ordered for it, closed ones too */
  orders?: OrderInput[];
  /** what happened that makes it due at once, in no particular order */
  triggers?: CaseTrigger[];
};

/** Something after which an item is due, until it is done later in the order of the log. */
export type CaseTrigger = {
  entry: string;
  /** its place in the order of things; it reads and serves nothing */
  mark: Placed;
  code: IncidentSort | 'oilHot' | 'wheelsOff';
};
