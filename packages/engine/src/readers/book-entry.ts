import { daysBetween } from '../calendar/add.ts';
import type { CaseEntry } from '../history/case.ts';
import { canonicalJson } from '../log/canonical-json.ts';
import type { Entry, EntryOf } from '../log/entry.ts';
import type { Item } from '../log/item.ts';
import { distanceKm, hoursH } from '../log/quantity.ts';
import { minuteOfDay } from '../log/sort-entries.ts';

type Placed = Pick<CaseEntry, 'id' | 'date' | 'minute' | 'recorded' | 'kind'>;
type Bare = CaseEntry extends infer E
  ? E extends CaseEntry
    ? Omit<E, 'canonical'>
    : never
  : never;
type With<K extends Entry['kind']> = EntryOf<K> & Entry;

function placed(entry: Entry): Placed {
  const { id, on, recorded, kind } = entry;
  return { id, date: on, minute: minuteOfDay(entry), recorded, kind };
}

function odometerKm(entry: Entry): number | null {
  return entry.odometer === undefined ? null : distanceKm(entry.odometer);
}

function reading(entry: Entry, at: Placed): Bare[] {
  const km = odometerKm(entry);
  const hours = entry.kind === 'odometer' ? entry.hourMeter : undefined;
  if (km === null && hours === undefined) return [];
  const hourMeterH = hours === undefined ? null : hoursH(hours);
  return [{ type: 'reading', ...at, odometerKm: km, hourMeterH }];
}

const NO_AMOUNTS = {
  endDate: null,
  distanceKm: null,
  hours: null,
  sessions: null,
  launches: null,
  plannedOn: null,
} as const;

function drive(entry: With<'drive'>): Bare[] {
  const endDate = entry.until ?? null;
  const km = entry.distance === undefined ? null : distanceKm(entry.distance);
  const days = daysBetween(entry.on, endDate ?? entry.on) + 1;
  const sessions = entry.use === 'touring' && km === null ? days : null;
  const at = placed(entry);
  // the odometer stands at the end of the trip; its time of day is that of the start
  const end = days > 1 ? { ...at, date: endDate ?? entry.on, minute: null } : at;
  return [
    { type: 'use', ...at, ...NO_AMOUNTS, useClass: entry.use, endDate, distanceKm: km, sessions },
    ...reading(entry, end),
  ];
}

function session(entry: With<'session'>): Bare[] {
  const at = placed(entry);
  return [
    {
      type: 'use',
      ...at,
      ...NO_AMOUNTS,
      useClass: entry.use,
      distanceKm: entry.distance === undefined ? null : distanceKm(entry.distance),
      hours: entry.hours ?? null,
      sessions: entry.sessions,
      plannedOn: entry.plannedOn ?? null,
    },
    ...reading(entry, at),
  ];
}

function strip(entry: With<'strip'>): Bare[] {
  const at = placed(entry);
  const passes = entry.passes.length;
  const launches = entry.launches ?? passes;
  const plannedOn = entry.plannedOn ?? null;
  return [
    { type: 'use', ...at, ...NO_AMOUNTS, useClass: 'strip', launches, passes, plannedOn },
    ...reading(entry, at),
  ];
}

function service(entry: With<'service'>): Bare[] {
  return [
    {
      type: 'service',
      ...placed(entry),
      items: entry.items,
      odometerKm: odometerKm(entry),
      hourMeterH: entry.hourMeter === undefined ? null : hoursH(entry.hourMeter),
      complete: entry.historyComplete ?? false,
    },
  ];
}

function oilChange(entry: With<'oilChange'>, items: readonly Item[]): Bare[] {
  const renewed = items.filter(
    ({ role }) => role === 'engineOil' || (role === 'oilFilter' && entry.filterRenewed === true),
  );
  return [
    {
      type: 'service',
      ...placed(entry),
      items: renewed.map(({ id }) => id),
      odometerKm: odometerKm(entry),
      hourMeterH: null,
      complete: false,
    },
  ];
}

function meterValue(typed: With<'meterReplaced'>['newFirst']): number {
  return typed.unit === 'h'
    ? hoursH({ text: typed.text, unit: 'h' })
    : distanceKm({ text: typed.text, unit: typed.unit });
}

function meterReplaced(entry: With<'meterReplaced'>): Bare[] {
  return [
    {
      type: 'meterReset',
      ...placed(entry),
      meter: entry.meter === 'odometer' ? 'odo' : 'hours',
      oldValue: entry.oldLast === undefined ? null : meterValue(entry.oldLast),
      newValue: meterValue(entry.newFirst),
    },
  ];
}

function bare(entry: Entry, items: readonly Item[]): Bare[] {
  switch (entry.kind) {
    case 'drive':
      return drive(entry);
    case 'session':
      return session(entry);
    case 'strip':
      return strip(entry);
    case 'service':
      return service(entry);
    case 'oilChange':
      return oilChange(entry, items);
    case 'meterReplaced':
      return meterReplaced(entry);
    case 'odometer':
    case 'fuel':
    case 'oilCheck':
    case 'oilTopUp':
    case 'fluid':
    case 'inspection':
    case 'measure':
    case 'fit':
    case 'wheels':
    case 'finding':
    case 'incident':
    case 'layUp':
    case 'wakeUp':
    case 'repair':
    case 'labReport':
    case 'handover':
    case 'answer':
    case 'note':
      return reading(entry, placed(entry));
  }
}

/**
 * What one entry of the log means to the models:
 *
 * | entry | read as |
 * | --- | --- |
 * | drive, session, drag strip | a use, and a reading at its end where it has an odometer value |
 * | service | a service of its items |
 * | oil change | a service of the items in the role of engine oil, and of the oil filter if renewed |
 * | meter replaced | a reset of that meter |
 * | any other kind | a reading where it has an odometer or hour-meter value, else nothing |
 *
 * A road trip without distance counts its days; a drag-strip day without launches counts its passes.
 *
 * @param items of the car, for the roles
 */
export function caseEntries(entry: Entry, items: readonly Item[]): CaseEntry[] {
  return bare(entry, items).map((mapped) => ({ ...mapped, canonical: canonicalJson(mapped) }));
}
