import {
  answerOil,
  foldLedger,
  type OilAnswer,
  type OilPriors,
  type StickCar,
  type Today,
  toOperations,
  USUAL_PRIORS,
} from '../oil/index.ts';
import { FileShapeError } from './file-shape-error.ts';
import { isLoose, type Loose, shortly } from './odd-values.ts';
import { type OilEntry, oilEntry, readAt, readCondition } from './oil-entry.ts';
import { type OilEvents, oilEvents } from './oil-events.ts';
import { oilOrder, UNTIMED_MINUTE } from './oil-order.ts';

/** What is said of an `oil/1` file: level, rates and warnings, and what could not be used. */
export type OilResult = OilAnswer & { notes: string[] };

export type OilLog = {
  car: string;
  asOf: string | null;
  oil: OilResult;
  /** the entries that count, in their order; the probability of a rise as of each that cuts a drive */
  order: {
    entry: string | number;
    on: string;
    minute: number | null;
    kind: string;
    riseProbability?: number;
  }[];
};

const SPAN_MAX_L = 20;
const CAPACITY_MAX_L = 60;

const positive = (value: unknown, max: number): number | null =>
  typeof value === 'number' && value > 0 && value <= max ? value : null;

/** Without its span 1.0 L is assumed: the commonest of passenger cars, common practice, no source. */
function stickOf(car: Loose): StickCar {
  return {
    spanL: positive(car.spanL, SPAN_MAX_L) ?? 1,
    capacityL: positive(car.capacityL, CAPACITY_MAX_L),
    drySump: car.drySump === true,
    procedure: readCondition(car.readingProcedure),
  };
}

function priorsOf({ priors }: Loose): OilPriors {
  const given = isLoose(priors) ? priors : {};
  const one = (name: keyof OilPriors) => {
    const raw = given[name];
    const [median, sdLog] = isLoose(raw)
      ? [positive(raw.median, 1000), positive(raw.sdLog, 10)]
      : [null, null];
    return median === null || sdLog === null ? USUAL_PRIORS[name] : { median, sdLog };
  };
  return {
    roadRate: one('roadRate'),
    circuitRatio: one('circuitRatio'),
    stripRun: one('stripRun'),
  };
}

type AsOf = { date: string; minute: number | null; raw: Loose };

function readAsOf(file: Loose): AsOf | null {
  const raw = file.asOf;
  if (raw === undefined || raw === null) return null;
  const at = readAt(isLoose(raw) ? raw.at : raw);
  return at && { ...at, raw: isLoose(raw) ? raw : {} };
}

function withinAsOf(entry: OilEntry, asOf: AsOf | null): boolean {
  if (asOf === null) return true;
  if (entry.date !== asOf.date) return entry.date < asOf.date;
  return asOf.minute === null || (entry.minute ?? UNTIMED_MINUTE) <= asOf.minute;
}

function spanNote(car: Loose): string[] {
  return positive(car.spanL, SPAN_MAX_L) === null ? ['span not known: 1.0 L assumed'] : [];
}

/** The day of the answer as the last entry, if it shows an odometer. */
function endOf(asOf: AsOf | null): OilEntry | null {
  if (asOf === null) return null;
  const { entry } = oilEntry({ ...asOf.raw, at: asOf.date, kind: 'asOf', id: 'asOf' }, -1);
  return entry?.odometerKm == null ? null : { ...entry, minute: asOf.minute };
}

function todayOf(asOf: AsOf | null, { rest, lastKm, lastKnownKm }: OilEvents): Today | null {
  if (asOf === null) return null;
  const inUse = asOf.raw.inUse !== false;
  if (rest !== null) return { drive: rest, distanceVarianceKm2: 0, inUse };
  const expected = isLoose(asOf.raw.expectedKm) ? asOf.raw.expectedKm : {};
  const mean = positive(expected.mean, 1_000_000) ?? 0;
  const distanceVarianceKm2 = positive(expected.var, 1e12) ?? 0;
  const totalKm = lastKnownKm === null ? lastKm + mean : Math.max(lastKm, lastKnownKm + mean);
  const road = (totalKm - lastKm) / 1000;
  return { drive: { road, circuit: 0, runs: 0 }, distanceVarianceKm2, inUse };
}

/**
 * Reads an `oil/1` log: `{car, entries[], asOf?}`, and keeps its ledger.
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
  const found = oilEvents(sorted, endOf(asOf));
  const stick = stickOf(car);
  const { state, rises } = foldLedger(
    stick.spanL,
    priorsOf(car),
    toOperations(stick, found.events),
  );
  const riseOf = new Map(rises.map((rise) => [rise.entry, rise.riseProbability]));
  return {
    car: typeof car.id === 'string' ? car.id : 'car',
    asOf: asOf?.date ?? null,
    order: sorted.map(({ ref, date, minute, kind }) => ({
      entry: ref,
      on: date,
      minute,
      kind,
      ...(riseOf.has(ref) && { riseProbability: riseOf.get(ref) as number }),
    })),
    oil: {
      ...answerOil(state, todayOf(asOf, found), found.logged),
      notes: [
        ...spanNote(car),
        ...(badAsOf
          ? [`asOf ${shortly(file.asOf)} is no date: answered after the last entry`]
          : []),
        ...kept.flatMap(({ notes }) => notes),
        ...found.notes,
      ],
    },
  };
}
