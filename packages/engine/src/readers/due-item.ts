import type { CaseItem, CaseLimit } from '../history/case.ts';
import { AMOUNT_MEASURES, CALENDAR_MEASURES, USE_CLASSES, type UseClass } from '../log/item.ts';
import { DISTANCE_UNITS, type DistanceUnit, KM_PER_UNIT } from '../log/units.ts';
import { isLoose, type Loose, type OddValues } from './odd-values.ts';

const WARN_DAYS = 14;
const DAYS_MAX = 3650;
/** So small a limit would be none, and dividing by it must stay finite. */
const AMOUNT_MIN = 1e-6;
const AMOUNT_MAX = 1e9;
const SPAN_MAX = { months: 1200, days: 40_000 } as const;
const MEASURES = [...AMOUNT_MEASURES, ...CALENDAR_MEASURES] as const;

function readWeights(raw: unknown, odd: OddValues): Partial<Record<UseClass, number>> {
  if (raw === undefined || raw === null) return {};
  if (!isLoose(raw)) {
    odd.ignore('weights', raw);
    return {};
  }
  const given = USE_CLASSES.map(
    (one) => [one, odd.number(`weight ${one}`, raw[one], 0, 1000)] as const,
  );
  return Object.fromEntries(given.filter(([, weight]) => weight !== null));
}

function readLimit(raw: unknown, unit: DistanceUnit, odd: OddValues): CaseLimit | null {
  if (!isLoose(raw)) return odd.ignore('limit', raw);
  const measure = odd.oneOf('measure', raw.measure ?? 'missing', MEASURES);
  if (measure === null) return null;
  if (measure === 'date') {
    const day = odd.date('value', raw.value);
    return day === null ? null : { measure, value: day };
  }
  if (raw.value === undefined || raw.value === null) return odd.ignore('value', null);
  if (measure === 'months' || measure === 'days') {
    const span = odd.number('value', raw.value, 0, SPAN_MAX[measure]);
    if (span === null) return null;
    return Number.isInteger(span) ? { measure, value: span } : odd.ignore('value', span);
  }
  const value = odd.number('value', raw.value, AMOUNT_MIN, AMOUNT_MAX);
  const own = measure === 'km' ? odd.oneOf('unit', raw.unit ?? unit, DISTANCE_UNITS) : 'km';
  if (value === null || own === null) return null;
  return { measure, value: value * KM_PER_UNIT[own], weights: readWeights(raw.weights, odd) };
}

function readLimits(raw: unknown, unit: DistanceUnit, odd: OddValues): CaseLimit[] {
  return odd
    .list('limits', raw)
    .map((limit) => readLimit(limit, unit, odd))
    .filter((limit) => limit !== null);
}

function readSevere(raw: unknown, unit: DistanceUnit, odd: OddValues): CaseItem['severe'] {
  if (raw === undefined || raw === null) return null;
  if (!isLoose(raw)) return odd.ignore('severe', raw);
  const share = odd.number('share', raw.share, 0, 1);
  const classes = odd
    .list('classes', raw.classes)
    .map((one) => odd.oneOf('class', one, USE_CLASSES))
    .filter((one) => one !== null);
  if (share === null || classes.length === 0) return odd.ignore('severe', raw);
  return {
    classes,
    measure: odd.oneOf('measure', raw.measure, AMOUNT_MEASURES) ?? 'km',
    share,
    basis: odd.oneOf('basis', raw.basis, ['limit', 'used']) ?? 'limit',
    limits: readLimits(raw.limits, unit, odd),
  };
}

function readBaseline(raw: unknown, unit: DistanceUnit, odd: OddValues): CaseItem['baseline'] {
  if (raw === undefined || raw === null) return null;
  if (!isLoose(raw)) return odd.ignore('baseline', raw);
  const date = odd.date('baseline date', raw.date);
  if (date === null) return null;
  const value = odd.number('baseline odo', raw.odo, 0, 10_000_000);
  const own = odd.oneOf('unit', raw.unit ?? unit, DISTANCE_UNITS);
  return {
    date,
    minute: odd.minute('baseline time', raw.time),
    odometerKm: value === null || own === null ? null : value * KM_PER_UNIT[own],
    complete: raw.complete === true,
  };
}

/**
 * One item of a `due/1` file. Where only `leadDays` is given it serves as both; with neither, 14 days'
 * warning. A limit that cannot be used is left out with a flag.
 *
 * @param unit the car's, for limits that name none
 */
export function dueItem(id: string, raw: Loose, unit: DistanceUnit, odd: OddValues): CaseItem {
  const warnDays = odd.number('warnDays', raw.warnDays, 0, DAYS_MAX);
  const leadDays = odd.number('leadDays', raw.leadDays, 0, DAYS_MAX);
  return {
    id,
    warnDays: Math.round(warnDays ?? leadDays ?? WARN_DAYS),
    leadDays: Math.round(leadDays ?? 0),
    limits: readLimits(raw.limits, unit, odd),
    severe: readSevere(raw.severe, unit, odd),
    baseline: readBaseline(raw.baseline, unit, odd),
  };
}
