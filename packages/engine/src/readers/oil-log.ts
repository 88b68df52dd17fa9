import { FileShapeError } from './file-shape-error.ts';
import { isLoose, type Loose, shortly } from './odd-values.ts';
import {
  type OilCondition,
  type OilEntry,
  type OilLevel,
  oilEntry,
  readAt,
  readCondition,
} from './oil-entry.ts';
import { oilOrder, UNTIMED_MINUTE } from './oil-order.ts';
import { judgeReading, type StickCar } from './stick-procedure.ts';

/** What is said of an `oil/1` file: the last level as read, and what could not be used. */
export type OilResult = {
  lastReading: {
    entry: string | number;
    level: OilLevel;
    condition: OilCondition | null;
    offProcedure: boolean;
  } | null;
  notes: string[];
};

export type OilLog = {
  car: string;
  asOf: string | null;
  oil: OilResult;
  /** the entries that count, in their order */
  order: { entry: string | number; on: string; minute: number | null; kind: string }[];
};

function stickOf(car: Loose): StickCar {
  const { capacityL } = car;
  return {
    drySump: car.drySump === true,
    procedure: readCondition(car.readingProcedure),
    capacityL: typeof capacityL === 'number' && capacityL > 0 ? capacityL : null,
  };
}

function withinAsOf(
  entry: OilEntry,
  asOf: { date: string; minute: number | null } | null,
): boolean {
  if (asOf === null) return true;
  if (entry.date !== asOf.date) return entry.date < asOf.date;
  return asOf.minute === null || (entry.minute ?? UNTIMED_MINUTE) <= asOf.minute;
}

function lastReading(entries: readonly OilEntry[], stick: StickCar): OilResult['lastReading'] {
  const last = entries.findLast(({ levels }) => levels.length > 0);
  const level = last?.levels.at(-1);
  if (last === undefined || level === undefined) return null;
  const { ref, condition } = last;
  const offProcedure = judgeReading(stick, condition ?? undefined) === 'off';
  return { entry: ref, level, condition, offProcedure };
}

/** Values lower than the one before are said; exchanges begin a new scale. */
function lowerOdometers(entries: readonly OilEntry[]): string[] {
  const notes: string[] = [];
  let last: number | null = null;
  for (const { kind, date, odometerKm } of entries) {
    if (odometerKm === null) continue;
    if (last !== null && odometerKm < last && kind !== 'odometerReplaced')
      notes.push(`odometer ${odometerKm} km is lower than ${last} km before it (${date})`);
    last = odometerKm;
  }
  return notes;
}

function spanNote(car: Loose): string[] {
  const { spanL } = car;
  const usable = typeof spanL === 'number' && spanL > 0 && spanL <= 20;
  return usable ? [] : ['span not known: 1.0 L assumed'];
}

function readAsOf(file: Loose): { date: string; minute: number | null } | null {
  const raw = file.asOf;
  if (raw === undefined || raw === null) return null;
  return readAt(isLoose(raw) ? raw.at : raw);
}

/**
 * Reads an `oil/1` log: `{car, entries[], asOf?}`. There is no estimate of level or consumption in it;
 * it says which level was read last, and lists what could not be used.
 *
 * @param file the log itself, taken out of its `logbook` member where it has one
 * @throws FileShapeError where `entries` is no list
 */
export function oilLog(file: Loose): OilLog {
  const entries = file.entries ?? [];
  if (!Array.isArray(entries))
    throw new FileShapeError(
      `could not read the file: "entries" is ${shortly(entries)}, it should be a list`,
    );
  const car = isLoose(file.car) ? file.car : {};
  const asOf = readAsOf(file);
  const badAsOf = asOf === null && file.asOf !== undefined && file.asOf !== null;
  const kept = entries
    .map((raw: unknown, index) => ({ raw, index }))
    .filter(({ raw }) => !isLoose(raw) || raw.deleted !== true)
    .map(({ raw, index }) => oilEntry(raw, index));
  const read = kept.map(({ entry }) => entry).filter((entry) => entry !== null);
  const sorted = oilOrder(read.filter((entry) => withinAsOf(entry, asOf)));
  return {
    car: typeof car.id === 'string' ? car.id : 'car',
    asOf: asOf?.date ?? null,
    order: sorted.map(({ ref, date, minute, kind }) => ({ entry: ref, on: date, minute, kind })),
    oil: {
      lastReading: lastReading(sorted, stickOf(car)),
      notes: [
        ...spanNote(car),
        ...(badAsOf
          ? [`asOf ${shortly(file.asOf)} is no date: answered after the last entry`]
          : []),
        ...kept.flatMap(({ notes }) => notes),
        ...lowerOdometers(sorted),
      ],
    },
  };
}
