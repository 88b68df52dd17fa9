import { studentQuantile } from '../../probability/quantiles.ts';
import { roundAmount } from '../../wear/round-amount.ts';
import { mannKendall } from './mann-kendall.ts';
import { NEW_SD_FACTOR } from './repeatability.ts';
import type {
  PositionWear,
  WearBasis,
  WearFinding,
  WearFloor,
  WearLine,
  WearPoint,
} from './result.ts';
import { robustLine } from './robust-line.ts';
import { useLeft, valueAfter } from './use-left.ts';
import { LEAST_SPAN, STRETCH } from './wear-basis.ts';

/** The bounds hold the value eight times in ten: one in ten lies below, one above. */
const UPPER = 0.9;
/** A rate is called rough until the fall is so clear that chance gives it at most one time in ten. */
const ROUGH_FROM = 0.1;
/** A rise beyond so many standard deviations of a difference is no chance of measuring. */
const RISE_SDS = 2;
/** Wear of one day differs from that of another by 30 %. Common practice, no source. */
const DAY_DIFFERS = 0.3;

export type Series = Pick<PositionWear, 'what' | 'corner' | 'groove' | 'where' | 'unit'> & {
  /** in order, at least one, use never falling; the first may be the new depth */
  points: WearPoint[];
  /** standard deviation of one measurement in the series' unit */
  sd: number;
};

type Facts = { basis: WearBasis; nowUse: number; floors: readonly WearFloor[] };

/**
 * What the measurements of one position say: value now, wear per unit of use, use left to each minimum.
 *
 * A rise is never smoothed away: with one, nothing is said of a rate until the log is mended. Units: mm or
 * g, use in the basis. Errors: RangeError for a series without points.
 */
export function positionWear(series: Series, facts: Facts): PositionWear {
  const { points, sd, ...place } = series;
  const last = points.at(-1);
  if (last === undefined)
    throw new RangeError(`could not judge ${place.where}: no points, it should have one`);
  const rise = firstRise(points, sd);
  const fitted = rise === null ? lineOf(series, facts) : null;
  const { line = null, finding = rise ? 'rises' : fewFinding(points) } = fitted ?? {};
  const rateOff = line ? line.reach * Math.sqrt(line.rateVariance) : 0;
  return {
    ...place,
    points,
    last,
    useSince: roundAmount(Math.max(0, facts.nowUse - last.use)),
    rise,
    finding,
    line,
    now: line ? valueAfter(line, 0) : unworn(last, facts, rise !== null),
    rate: line
      ? {
          likely: line.rate,
          low: Math.max(0, line.rate - rateOff),
          high: line.rate + rateOff,
        }
      : null,
    floors: (place.unit === 'mm' ? facts.floors : []).map((floor) => ({
      ...floor,
      left: line ? useLeft(line, floor.mm) : null,
    })),
  };
}

function fewFinding(points: readonly WearPoint[]): WearFinding {
  return points.filter(({ entry }) => entry !== null).length > 1 ? 'noUse' : 'single';
}

/** Where there is no line, the last measurement is the value as long as there was no use since. */
function unworn({ use, value }: WearPoint, { nowUse }: Facts, rises: boolean) {
  return rises || nowUse > use ? null : { likely: value, low: value, high: value };
}

/** The first measurement that is greater than a lesser one before it by more than measuring allows. */
function firstRise(points: readonly WearPoint[], sd: number): PositionWear['rise'] {
  let least = points[0];
  for (const point of points.slice(1)) {
    if (least === undefined) return null;
    const both = Math.hypot(sd, least.entry === null ? sd * NEW_SD_FACTOR : sd);
    if (point.value - least.value > RISE_SDS * both) return { from: least, to: point };
    if (point.value < least.value) least = point;
  }
  return null;
}

function lineOf(
  { points, sd }: Series,
  { basis, nowUse }: Facts,
): { line: WearLine; finding: WearFinding } | null {
  const lastUse = points.at(-1)?.use ?? 0;
  const span = lastUse - (points[0]?.use ?? 0);
  if (span < LEAST_SPAN[basis]) return null;
  const fitted = robustLine(
    points.map(({ use, value, entry }) => ({
      use,
      value,
      sd: entry === null ? sd * NEW_SD_FACTOR : sd,
    })),
  );
  if (fitted === null) return null;
  // a slope that is nothing but rounding is no wear
  const rate = -fitted.slope * span > sd / 1000 ? -fitted.slope : 0;
  const line: WearLine = {
    lastUse,
    nowUse: Math.max(nowUse, lastUse),
    centreUse: fitted.centreUse,
    centreValue: fitted.centreValue,
    rate,
    centreVariance: fitted.centreVariance,
    rateVariance: fitted.slopeVariance,
    driftPerUse: (DAY_DIFFERS * rate) ** 2 * STRETCH[basis],
    reach: studentQuantile(UPPER, fitted.degrees),
  };
  if (rate === 0) return { line, finding: 'flat' };
  const { s, pOneSided } = mannKendall(points);
  return { line, finding: s < 0 && pOneSided <= ROUGH_FROM ? 'line' : 'rough' };
}
