import { addDays } from '../calendar/add.ts';
import type { CarCase, CaseItem } from '../history/case.ts';
import { ATTEND_USUAL } from '../log/event.ts';
import { USE_CLASSES } from '../log/item.ts';
import { DISTANCE_UNITS, type DistanceUnit, KM_PER_UNIT } from '../log/units.ts';
import type { Flag } from '../wear/result.ts';
import { ROAD_KMH } from './book-case.ts';
import { dueEntry } from './due-entry.ts';
import { dueItem } from './due-item.ts';
import { FileShapeError } from './file-shape-error.ts';
import { isDate, isLoose, type Loose, OddValues, shortly } from './odd-values.ts';

const AMOUNT_MAX = 1_000_000;

function list(file: Loose, name: string): readonly unknown[] {
  const value = file[name] ?? [];
  if (Array.isArray(value)) return value;
  throw new FileShapeError(
    `could not read the file: "${name}" is ${shortly(value)}, it should be a list`,
  );
}

function readItems(file: Loose, unit: DistanceUnit, odd: OddValues): CaseItem[] {
  const items = new Map<string, CaseItem>();
  for (const raw of list(file, 'items')) {
    if (!isLoose(raw) || typeof raw.id !== 'string' || items.has(raw.id)) odd.ignore('item', raw);
    else items.set(raw.id, dueItem(raw.id, raw, unit, odd));
  }
  return [...items.values()];
}

function readStorage(file: Loose, odd: OddValues): CarCase['storage'] {
  return list(file, 'storage').flatMap((raw, index) => {
    const start = isLoose(raw) ? odd.date('storage start', raw.start) : null;
    if (!isLoose(raw) || start === null) {
      odd.ignore('storage', raw);
      return [];
    }
    const end = odd.date('storage end', raw.end);
    if (end !== null && end < start) {
      odd.ignore('storage', raw);
      return [];
    }
    const id = typeof raw.id === 'string' ? raw.id : `storage ${index + 1}`;
    return [{ id, start, end }];
  });
}

/** A planned event that lasts longer than this is a mistyped end. */
const EVENT_DAYS_MAX = 366;

function readPlanned(file: Loose, unit: DistanceUnit, odd: OddValues): CarCase['planned'] {
  return list(file, 'planned').flatMap((raw, index) => {
    const start = isLoose(raw) ? odd.date('planned date', raw.date) : null;
    const useClass = isLoose(raw) ? odd.oneOf('class', raw.class ?? 'missing', USE_CLASSES) : null;
    if (!isLoose(raw) || start === null || useClass === null) {
      odd.ignore('planned', raw);
      return [];
    }
    const given = odd.date('planned endDate', raw.endDate);
    const inOrder = given === null || (given >= start && given <= addDays(start, EVENT_DAYS_MAX));
    const distance = odd.number('km', raw.km, 0, AMOUNT_MAX);
    const own = odd.oneOf('unit', raw.unit ?? unit, DISTANCE_UNITS);
    return {
      id: typeof raw.id === 'string' ? raw.id : `planned ${index + 1}`,
      start,
      end: inOrder ? given : odd.ignore('planned endDate', given),
      useClass,
      distanceKm: distance === null || own === null ? null : distance * KM_PER_UNIT[own],
      hours: odd.number('hours', raw.hours, 0, AMOUNT_MAX),
      sessions: odd.number('sessions', raw.sessions, 0, AMOUNT_MAX),
      launches: odd.number('launches', raw.launches, 0, AMOUNT_MAX),
      attend: odd.number('pAttend', raw.pAttend, 0, 1) ?? ATTEND_USUAL,
    };
  });
}

function readCar(raw: Loose, unit: DistanceUnit, odd: OddValues): CarCase['car'] {
  const digits = odd.number('odoDigits', raw.odoDigits, 3, 9);
  const roadKmh = odd.number('roadKmh', raw.roadKmh, 1, 300);
  return {
    id: typeof raw.id === 'string' ? raw.id : 'car',
    odoDigits:
      digits === null || Number.isInteger(digits) ? digits : odd.ignore('odoDigits', digits),
    odoUnit: unit,
    hemisphere: odd.oneOf('hemisphere', raw.hemisphere, ['N', 'S']),
    // null switches the derivation off; not given means the usual speed
    roadKmh: raw.roadKmh === null ? null : (roadKmh ?? ROAD_KMH),
  };
}

/**
 * Reads a `due/1` file: `{schema: 1, asOf, car, entries[], storage[], planned[], items[]}`.
 *
 * @param file an object with `schema: 1`
 * @returns the case and a flag for every value that could not be used
 * @throws FileShapeError where `asOf` is no date or a list is none
 */
export function dueCase(file: Loose): { car: CarCase; flags: Flag[] } {
  if (!isDate(file.asOf))
    throw new FileShapeError(
      `could not read the file: "asOf" is ${shortly(file.asOf ?? null)}, it should be a date YYYY-MM-DD`,
    );
  const odd = new OddValues();
  const raw = isLoose(file.car) ? file.car : {};
  const unit = odd.oneOf('car unit', raw.unit, DISTANCE_UNITS) ?? 'km';
  const entries = list(file, 'entries').map((entry) => dueEntry(entry, unit));
  const car: CarCase = {
    car: readCar(raw, unit, odd),
    asOf: file.asOf,
    entries: entries.map(({ entry }) => entry).filter((entry) => entry !== null),
    storage: readStorage(file, odd),
    planned: readPlanned(file, unit, odd),
    items: readItems(file, unit, odd),
  };
  return { car, flags: [...odd.flags, ...entries.flatMap(({ flags }) => flags)] };
}
