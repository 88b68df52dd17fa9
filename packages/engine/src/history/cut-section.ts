import type { MeterPoint } from './meter-sections.ts';

/** The smallest drop of an odometer that asks for an explanation, km. */
const DROP_KM = 300;
/** How many entries are looked at on either side of a drop. */
const LOOK = 3;
/** The fastest mean over a roll-over that is believed, km per day. */
const ROLL_OVER_KM_PER_DAY = 1000;

export type Cut = {
  /** in order; values unwrapped. Readings still to be judged inside their segment */
  segments: MeterPoint[][];
  lowTypos: MeterPoint[];
  unloggedExchanges: { lastOld: MeterPoint; firstNew: MeterPoint }[];
  rollOvers: MeterPoint[];
};

/**
 * Cuts an odometer's readings between two logged exchanges into segments of one scale each.
 *
 * At a drop of more than 300 km from v to x two questions are asked. Does it *return*: is one of the
 * next 3 readings at least v - 300? Does it *go on*: is one of the last 3 readings of days before v's
 * at most x, so that v was the odd one? Returns and does not go on: a low typo, dropped up to the
 * return. Neither, with the digits known, v - x more than half of the full scale and at most
 * 1,000 km a day (days + 1) once unwrapped: a roll-over, the full scale is added from there on.
 * Neither, and something follows: an exchange nobody logged, a new segment begins. Anything else is
 * left to the longest non-decreasing run.
 *
 * @param points in order, km
 * @param fullScaleKm 10^digits in km; null where the digits are not known
 * Source: common practice in reading handwritten odometer columns, no published source.
 * @example cutSection(the values 88000, 88400, 20, 450, null).segments.length // 2
 */
export function cutSection(points: readonly MeterPoint[], fullScaleKm: number | null): Cut {
  const cut: Cut = { segments: [[]], lowTypos: [], unloggedExchanges: [], rollOvers: [] };
  const standing: MeterPoint[] = [];
  let segment = cut.segments[0] as MeterPoint[];
  let offset = 0;
  const keep = (point: MeterPoint) => {
    segment.push(point);
    standing.push(point);
  };

  for (let at = 0; at < points.length; at += 1) {
    const raw = points[at] as MeterPoint;
    const point = { ...raw, value: raw.reading + offset };
    const last = standing.at(-1);
    if (last === undefined || last.value - point.value <= DROP_KM || goesOn(standing, point)) {
      keep(point);
      continue;
    }
    const returnsAt = returnOf(points, at, last.value - DROP_KM - offset);
    if (returnsAt !== null) {
      cut.lowTypos.push(...points.slice(at, returnsAt));
      at = returnsAt - 1;
    } else if (fullScaleKm !== null && rollsOver(last, point, fullScaleKm)) {
      offset += fullScaleKm;
      const unwrapped = { ...point, value: point.value + fullScaleKm };
      cut.rollOvers.push(unwrapped);
      keep(unwrapped);
    } else {
      if (at + 1 < points.length) {
        cut.unloggedExchanges.push({ lastOld: last, firstNew: point });
        segment = [];
        cut.segments.push(segment);
      }
      keep(point);
    }
  }
  return cut;
}

function goesOn(standing: readonly MeterPoint[], point: MeterPoint): boolean {
  const dropped = standing.at(-1) as MeterPoint;
  let seen = 0;
  for (let at = standing.length - 2; at >= 0 && seen < LOOK; at -= 1) {
    const earlier = standing[at] as MeterPoint;
    if (earlier.day >= dropped.day) continue;
    if (earlier.value <= point.value) return true;
    seen += 1;
  }
  return false;
}

function returnOf(points: readonly MeterPoint[], at: number, reading: number): number | null {
  for (let next = at + 1; next <= at + LOOK && next < points.length; next += 1)
    if ((points[next] as MeterPoint).reading >= reading) return next;
  return null;
}

function rollsOver(last: MeterPoint, point: MeterPoint, fullScaleKm: number): boolean {
  const days = point.day - last.day + 1;
  const drop = last.value - point.value;
  return drop > fullScaleKm / 2 && fullScaleKm - drop <= ROLL_OVER_KM_PER_DAY * days;
}
