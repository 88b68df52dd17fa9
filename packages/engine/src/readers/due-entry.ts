import { addDays } from '../calendar/add.ts';
import type { CaseEntry } from '../history/case.ts';
import { canonicalJson } from '../log/canonical-json.ts';
import { USE_CLASSES } from '../log/item.ts';
import { DISTANCE_UNITS, type DistanceUnit, KM_PER_UNIT } from '../log/units.ts';
import type { Flag } from '../wear/result.ts';
import { isLoose, type Loose, OddValues } from './odd-values.ts';

const KM_MAX = 10_000_000;
const HOURS_MAX = 1_000_000;
const COUNT_MAX = 100_000;
/** A use longer than this is a mistyped end. */
const USE_DAYS_MAX = 366;

type Placed = Pick<CaseEntry, 'id' | 'date' | 'minute' | 'recorded' | 'kind' | 'canonical'>;
type Source = { raw: Loose; at: Placed; odd: OddValues; unit: DistanceUnit };

/** Kilometres of a member in its own unit, the entry's or the car's; unknown units make no distance. */
function km({ raw, odd, unit }: Source, name: string, unitName = 'unit'): number | null {
  const value = odd.number(name, raw[name], 0, KM_MAX);
  if (value === null) return null;
  const own = raw[unitName] ?? raw.unit ?? unit;
  const known = odd.oneOf(unitName, own, DISTANCE_UNITS);
  return known === null ? null : value * KM_PER_UNIT[known];
}

function readReading(source: Source): CaseEntry {
  const { raw, at, odd } = source;
  const hourMeterH = odd.number('hourMeter', raw.hourMeter, 0, HOURS_MAX);
  return { type: 'reading', ...at, odometerKm: km(source, 'odo'), hourMeterH };
}

function endOf({ raw, at, odd }: Source): string | null {
  const end = odd.date('endDate', raw.endDate);
  if (end === null) return null;
  const inOrder = end >= at.date && end <= addDays(at.date, USE_DAYS_MAX);
  return inOrder ? end : odd.ignore('endDate', end);
}

function readUse(source: Source): CaseEntry | null {
  const { raw, at, odd } = source;
  const useClass = odd.oneOf('class', raw.class ?? 'missing', USE_CLASSES);
  if (useClass === null) return null;
  return {
    type: 'use',
    ...at,
    useClass,
    endDate: endOf(source),
    distanceKm: km(source, 'km'),
    hours: odd.number('hours', raw.hours, 0, HOURS_MAX),
    sessions: odd.number('sessions', raw.sessions, 0, COUNT_MAX),
    launches: odd.number('launches', raw.launches, 0, COUNT_MAX),
    plannedOn: odd.date('plannedOn', raw.plannedOn),
  };
}

function readService(source: Source): CaseEntry {
  const { raw, at, odd } = source;
  const items = odd.list('items', raw.items).filter((item) => {
    if (typeof item === 'string') return true;
    odd.ignore('items', item);
    return false;
  }) as string[];
  return {
    type: 'service',
    ...at,
    items,
    odometerKm: km(source, 'odo'),
    hourMeterH: odd.number('hourMeter', raw.hourMeter, 0, HOURS_MAX),
    complete: raw.complete === true,
  };
}

function readReset(source: Source): CaseEntry | null {
  const { raw, at, odd } = source;
  const meter = odd.oneOf('meter', raw.meter ?? 'missing', ['odo', 'hours']);
  if (meter === null) return null;
  const value = (name: string, unitName: string) =>
    meter === 'odo' ? km(source, name, unitName) : odd.number(name, raw[name], 0, HOURS_MAX);
  const newValue = value('newValue', 'unit');
  if (newValue === null) {
    if (raw.newValue === undefined || raw.newValue === null) odd.ignore('newValue', null);
    return null;
  }
  return { type: 'meterReset', ...at, meter, oldValue: value('oldValue', 'oldUnit'), newValue };
}

function ordinal(odd: OddValues, raw: Loose): number | null {
  const name = raw.recorded === undefined ? 'seq' : 'recorded';
  return odd.number(name, raw[name], Number.MIN_SAFE_INTEGER, Number.MAX_SAFE_INTEGER);
}

function read(source: Source): CaseEntry | null {
  switch (source.raw.type) {
    case 'reading':
      return readReading(source);
    case 'use':
      return readUse(source);
    case 'service':
      return readService(source);
    case 'meterReset':
      return readReset(source);
    default:
      return source.odd.ignore('type', source.raw.type ?? null);
  }
}

/**
 * One entry of a `due/1` file. What cannot be used is flagged: a value then counts as not given, an
 * entry without a usable date, type, class or new meter value does not count at all.
 *
 * @param unit the car's, for entries that name none
 */
export function dueEntry(
  raw: unknown,
  unit: DistanceUnit,
): { entry: CaseEntry | null; flags: Flag[] } {
  const id = isLoose(raw) && typeof raw.id === 'string' ? raw.id : null;
  const date = isLoose(raw) ? new OddValues(id).date('date', raw.date) : null;
  const odd = new OddValues(id, date);
  if (!isLoose(raw)) odd.ignore('entry', raw);
  else if (date === null) odd.ignore('date', raw.date ?? null);
  else {
    const at = {
      id,
      date,
      minute: odd.minute('time', raw.time),
      recorded: ordinal(odd, raw),
      kind: typeof raw.type === 'string' ? raw.type : '',
      // a number too large for a double is no JSON; here it only has to sort
      canonical: canonicalJson(JSON.parse(JSON.stringify(raw))),
    };
    return { entry: read({ raw, at, odd, unit }), flags: odd.flags };
  }
  return { entry: null, flags: odd.flags };
}
