import type { Entry } from '../../log/entry.ts';
import type { GearOf } from '../../log/gear.ts';
import { depthMm } from '../../log/quantity.ts';
import { lifeStart } from '../life-start.ts';
import { type MeasureEntry, measurements, readingsOf } from '../measured.ts';
import type { Part } from '../part.ts';
import { isCovered } from '../part-ledger.ts';
import type { MeasuredReading } from '../result.ts';
import { positionWear, type Series } from './position-wear.ts';
import { repeatability } from './repeatability.ts';
import type { ComponentWear, WearBasis, WearPoint } from './result.ts';
import { basisOf, isMixed, useIn, wearUse } from './wear-basis.ts';
import { startOfDay, wearFloors } from './wear-floors.ts';

type Component = GearOf<'component'>;
type Placed = { entry: MeasureEntry; at: number; readings: MeasuredReading[] };

const AFTER_ALL = Number.POSITIVE_INFINITY;

/**
 * How fast a component wears at each place it was measured, since it was last new.
 *
 * Use is counted in the sort that has worn it most; other sorts are counted in by common practice. Tread
 * is told by corner: a set whose wheels changed corners shows a rise, or wear that no use explains.
 *
 * @returns null for a part that was not measured in this life
 */
export function componentWear(part: Part, gear: Component): ComponentWear | null {
  const placed = measuredInThisLife(part, gear);
  const first = placed[0];
  if (first === undefined) return null;
  const { contributions } = part.ledger;
  const from = part.start?.position ?? first.at;
  const all = wearUse(contributions, from, AFTER_ALL);
  const basis = basisOf(all);
  const useAt = (at: number) => useIn(basis, wearUse(contributions, from, at));
  const nowUse = useIn(basis, all);
  const asNew = part.start === null ? null : newPoint(gear, part.start.day?.on ?? first.entry.on);
  return {
    basis,
    mixed: isMixed(basis, all),
    useKnown: isUseKnown(part, first, basis),
    neverFitted: part.windows.length === 0,
    startOfDay: startOfDay(gear),
    positions: seriesOf(placed, useAt, asNew).map((series) =>
      positionWear(series, { basis, nowUse, floors: wearFloors(gear, series.what) }),
    ),
  };
}

/** The measurements since it was last new, in order. */
function measuredInThisLife(part: Part, gear: Component): Placed[] {
  const { book, own, fits, merged, start } = part;
  const facts = { gear, asOf: book.asOf, fits: fits.entries, merged };
  return measurements(own).flatMap((entry): Placed[] => {
    const at = merged.places.get(entry.id) ?? AFTER_ALL;
    const readings = readingsOf(entry);
    // what stood before it was made new was measured of the part it replaced
    const sameLife = lifeStart(facts, at)?.position === start?.position;
    return sameLife && readings.length > 0 ? [{ entry, at, readings }] : [];
  });
}

function newPoint({ newDepth }: Component, on: string): WearPoint | null {
  return newDepth ? { use: 0, value: depthMm(newDepth), on, entry: null } : null;
}

/**
 * Whether all use since the first measurement, or since it was new, is in the log. A part that lay on the
 * shelf when it was first measured has done nothing before its first fit.
 */
function isUseKnown(part: Part, first: Placed, basis: WearBasis): boolean {
  const { windows, start } = part;
  const fitted = windows[0];
  if (fitted === undefined) return first.entry.car === undefined;
  if (start === null && first.at < fitted.from && first.entry.car !== undefined) return false;
  const since = start?.position ?? Math.max(first.at, fitted.from);
  return isCovered(windows, since, basis, false, start);
}

function seriesOf(
  placed: readonly Placed[],
  useAt: (at: number) => number,
  asNew: WearPoint | null,
): Series[] {
  const series = new Map<string, Series>();
  for (const { entry, at, readings } of placed) {
    const use = useAt(at);
    for (const reading of leastOfEach(readings)) {
      const { what, corner, groove, where, mm, g } = reading;
      const unit = mm === null ? 'g' : 'mm';
      const value = mm ?? g ?? 0;
      const one = series.get(keyOf(reading)) ?? {
        what,
        corner,
        groove,
        where,
        unit,
        points: unit === 'mm' && asNew !== null ? [asNew] : [],
        sd: repeatability(what, unit),
      };
      one.points.push({ use, value, on: entry.on, entry: (entry as Entry).id });
      series.set(keyOf(reading), one);
    }
  }
  return [...series.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, one]) => one);
}

const CORNERS: readonly MeasuredReading['corner'][] = [
  'frontLeft',
  'frontRight',
  'rearLeft',
  'rearRight',
];

/** One string per place; their order is that of the corners, then of what is measured there. */
function keyOf({ what, corner, groove, mm }: MeasuredReading): string {
  const place = [
    CORNERS.indexOf(corner),
    what,
    groove?.toLowerCase() ?? '',
    mm === null ? 'g' : '',
  ];
  return JSON.stringify(place);
}

/** A place measured several times at once is as thin as its least. */
function leastOfEach(readings: readonly MeasuredReading[]): MeasuredReading[] {
  const least = new Map<string, MeasuredReading>();
  const value = ({ mm, g }: MeasuredReading) => mm ?? g ?? 0;
  for (const reading of readings) {
    const known = least.get(keyOf(reading));
    if (known === undefined || value(reading) < value(known)) least.set(keyOf(reading), reading);
  }
  return [...least.values()];
}
