import { predict } from './filter.ts';
import { CIRCUIT, type Hypothesis, LEVEL, ROAD, SIZE, STEP, STRIP } from './hypothesis.ts';

/** What was driven since the last entry: thousands of km on the road and on circuits, and drag-strip runs. */
export type Drive = { road: number; circuit: number; runs: number };

/** Random walk of ln rate: variance per 1,000 km. */
const WALK_VARIANCE = 0.06 ** 2;
/** Litres: variance of what is consumed per litre consumed. */
export const CONSUMPTION_SCALE_L = 0.015;
const FLOOR = 1e-9;
const EXPONENT_MAX = 5;
const COVARIANCE_MAX = 4;

/** Which members make up the ln rate of a class, beside road and step; -1 none. */
const CLASSES = [-1, CIRCUIT, STRIP] as const;

/** Scratch that lasts between calls, so that a drive allocates nothing. */
export type DriveRoom = {
  /** P g of each class */
  pg: Float64Array[];
  amounts: Float64Array;
  uses: Float64Array;
  row: Float64Array;
  work: Float64Array;
};

export function driveRoom(): DriveRoom {
  return {
    pg: CLASSES.map(() => new Float64Array(SIZE)),
    amounts: new Float64Array(CLASSES.length),
    uses: new Float64Array(CLASSES.length),
    row: new Float64Array(SIZE),
    work: new Float64Array(SIZE),
  };
}

/**
 * Drives: the level falls by what the rates make of the distance, with the exact mean, variance and
 * covariances of sum q_i e^(g_i.x) for a Gaussian x (log-normal moments).
 *
 * @param h changed in place
 * @param drive thousands of km and runs, >= 0
 * Source: moments of the multivariate log-normal distribution; 0.015 L and the walk by simulation.
 */
export function driveBy(h: Hypothesis, drive: Drive, room: DriveRoom): void {
  const distance = drive.road + drive.circuit;
  if (distance + drive.runs <= 0) return;
  const { x, p } = h;
  const { pg, amounts, uses, row, work } = room;
  p[ROAD * SIZE + ROAD] = (p[ROAD * SIZE + ROAD] as number) + WALK_VARIANCE * distance;
  amounts[0] = drive.road;
  amounts[1] = drive.circuit;
  amounts[2] = drive.runs;

  let used = 0;
  row.fill(0);
  row[LEVEL] = 1;
  for (let i = 0; i < CLASSES.length; i += 1) {
    uses[i] = 0;
    if ((amounts[i] as number) <= 0) continue;
    const own = CLASSES[i] as number;
    const pgi = pg[i] as Float64Array;
    for (let j = 0; j < SIZE; j += 1)
      pgi[j] =
        (p[j * SIZE + ROAD] as number) +
        (p[j * SIZE + STEP] as number) +
        (own < 0 ? 0 : (p[j * SIZE + own] as number));
    const mean = dot(x, own);
    const variance = dot(pgi, own);
    const use = (amounts[i] as number) * Math.exp(Math.min(mean + variance / 2, EXPONENT_MAX));
    uses[i] = use;
    used += use;
    row[ROAD] = (row[ROAD] as number) - use;
    row[STEP] = (row[STEP] as number) - use;
    if (own >= 0) row[own] = -use;
  }
  // what the log-normal moments add to the linear part of the variance
  let extra = 0;
  for (let i = 0; i < CLASSES.length; i += 1)
    for (let j = 0; j < CLASSES.length; j += 1) {
      const product = (uses[i] as number) * (uses[j] as number);
      if (product === 0) continue;
      const covariance = dot(pg[i] as Float64Array, CLASSES[j] as number);
      extra += product * (Math.exp(Math.min(covariance, COVARIANCE_MAX)) - 1 - covariance);
    }
  let shift = -used;
  for (let j = 1; j < SIZE; j += 1) shift -= (row[j] as number) * (x[j] as number);
  predict(x, p, row, shift, extra + CONSUMPTION_SCALE_L * used + FLOOR, work);
  if ((p[0] as number) < FLOOR) p[0] = FLOOR;
}

/** g . v for a class' vector g: road, step and the class' own member. */
function dot(v: Float64Array, own: number): number {
  return (v[ROAD] as number) + (v[STEP] as number) + (own < 0 ? 0 : (v[own] as number));
}
