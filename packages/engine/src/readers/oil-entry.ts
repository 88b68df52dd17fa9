import { POURED_MAX_L, POURED_MIN_L } from '../log/quantity.ts';
import { isOnStick } from '../log/stick.ts';
import { isDate, isLoose, type Loose, shortly } from './odd-values.ts';

/** A level as `oil/1` writes it: a fraction of the span, or nothing on the stick. */
export type OilLevel = number | 'none';

export type OilCondition = {
  state: 'hotIdle' | 'hotStopped' | 'cold';
  minutesAfterStop?: number;
  oilTempC?: number;
};

/** An entry of an `oil/1` file as far as the order and the last reading need it. */
export type OilEntry = {
  /** its `id`, else its place in the file */
  ref: string | number;
  index: number;
  kind: string;
  date: string;
  minute: number | null;
  odometerKm: number | null;
  /** numbers before texts; null = none given */
  recorded: number | string | null;
  condition: OilCondition | null;
  /** levels of this entry, in the order in which they were read */
  levels: OilLevel[];
  raw: Loose;
};

const STATES = ['hotIdle', 'hotStopped', 'cold'] as const;

function isRef(value: unknown): value is string | number {
  return typeof value === 'string' || (typeof value === 'number' && Number.isFinite(value));
}

export function isOilLevel(value: unknown): value is OilLevel {
  if (value === 'none') return true;
  return typeof value === 'number' && isOnStick(value);
}

/** Date and minute of "2023-04-01" or "2023-04-01T07:30"; null where it is neither. */
export function readAt(at: unknown): { date: string; minute: number | null } | null {
  if (typeof at !== 'string') return null;
  const parts = /^(\d{4}-\d{2}-\d{2})(?:[T ]([01]\d|2[0-3]):([0-5]\d)(?::.*)?)?$/.exec(at);
  const date = parts?.[1];
  if (parts === null || !isDate(date)) return null;
  const minute = parts[2] === undefined ? null : Number(parts[2]) * 60 + Number(parts[3]);
  return { date, minute };
}

function optional(value: unknown, min: number, max: number): number | undefined {
  return typeof value === 'number' && value >= min && value <= max ? value : undefined;
}

export function readCondition(raw: unknown): OilCondition | null {
  if (!isLoose(raw)) return null;
  const state = STATES.find((known) => known === raw.state);
  if (state === undefined) return null;
  const minutesAfterStop = optional(raw.minutesAfterStop, 0, 100_000);
  const oilTempC = optional(raw.oilTempC, -60, 250);
  return {
    state,
    ...(minutesAfterStop === undefined ? {} : { minutesAfterStop }),
    ...(oilTempC === undefined ? {} : { oilTempC }),
  };
}

const LEVEL_MEMBERS: Record<string, readonly string[]> = {
  reading: ['level'],
  topUp: ['levelBefore', 'levelAfter'],
  oilChange: ['levelAfter'],
};

type Levels = { levels: OilLevel[]; notes: string[] };

function badVolume(raw: Loose): boolean {
  const { volumeL } = raw;
  if (raw.kind !== 'topUp' || volumeL === undefined || volumeL === null) return false;
  return optional(volumeL, POURED_MIN_L, POURED_MAX_L) === undefined;
}

function readLevels(raw: Loose, kind: string, date: string): Levels {
  // its other figures are as doubtful as its volume: the whole entry stands aside
  if (badVolume(raw))
    return {
      levels: [],
      notes: [
        `top-up with an unusable volume ${shortly(raw.volumeL)}: left out as a whole (${date})`,
      ],
    };
  const given = (LEVEL_MEMBERS[kind] ?? []).filter(
    (name) => kind === 'reading' || (raw[name] !== undefined && raw[name] !== null),
  );
  const levels = given.map((name) => raw[name]).filter(isOilLevel);
  const notes = given
    .filter((name) => !isOilLevel(raw[name]))
    .map(
      (name) => `${name} ${shortly(raw[name] ?? null)} is no level on a stick: not used (${date})`,
    );
  return { levels, notes };
}

function readOdometer(raw: Loose, date: string): { odometerKm: number | null; notes: string[] } {
  const given = raw.odometerKm ?? null;
  const odometerKm = optional(given, 0, 10_000_000) ?? null;
  if (given === null || odometerKm !== null) return { odometerKm, notes: [] };
  return { odometerKm, notes: [`odometer ${shortly(given)} is no distance: not used (${date})`] };
}

/**
 * One entry of an `oil/1` file. Nothing is refused: what cannot be used leaves a note, and an entry
 * without a usable date is left out.
 */
export function oilEntry(raw: unknown, index: number): { entry: OilEntry | null; notes: string[] } {
  const at = isLoose(raw) ? readAt(raw.at) : null;
  if (!isLoose(raw) || at === null)
    return { entry: null, notes: [`entry ${index} without a usable date: left out`] };
  const kind = typeof raw.kind === 'string' ? raw.kind : '';
  const { levels, notes } = readLevels(raw, kind, at.date);
  const odometer = readOdometer(raw, at.date);
  const { recorded } = raw;
  const entry: OilEntry = {
    ref: isRef(raw.id) ? raw.id : index,
    index,
    kind,
    ...at,
    odometerKm: odometer.odometerKm,
    recorded: isRef(recorded) ? recorded : null,
    condition: readCondition(raw.condition),
    levels,
    raw,
  };
  return { entry, notes: [...notes, ...odometer.notes] };
}
