import { studentQuantile } from '../../probability/quantiles.ts';

/** What was filled up between two full tanks, and driven between them. */
export type Stretch = { roadKm: number; hardKm: number; litres: number };

export type FuelClass = 'roadKm' | 'hardKm';

/** Litres a kilometre of each class that is told, and what is left over. */
export type FuelFit = {
  /** L/km; absent: never driven, or the fit would make it negative */
  rates: Partial<Record<FuelClass, number>>;
  /** variance of a stretch about the fit, L^2 */
  varianceL2: number;
  /** stretches less rates */
  degrees: number;
  /** km of a stretch on average */
  meanKm: number;
  stretches: readonly Stretch[];
};

/** Classes driven in so nearly one proportion that nobody can tell them apart: 1 - r^2. */
const SAME_DIRECTION = 1e-4;
const OUTSTANDING = 3;
/** Student's t at 0.9 with 1, 2 and 3 degrees of freedom, which the series does not reach. */
const FEW_DEGREES = [3.0776835372, 1.8856180832, 1.6377443536];
const CLASSES = ['roadKm', 'hardKm'] as const;

/**
 * Litres a kilometre on the road and in hard use: least squares without an intercept over stretches between
 * full tanks, litres = a road + b hard, neither rate negative (one that would be is left out and the other
 * fitted anew).
 *
 * @param stretches km and L, >= 0
 * @returns null where there are no more stretches than rates, or the classes cannot be told apart
 * Source: normal equations of least squares; Lawson and Hanson, Solving Least Squares Problems, chapter 23,
 * for what is not negative.
 */
export function fitFuel(stretches: readonly Stretch[]): FuelFit | null {
  const driven = CLASSES.filter((key) => stretches.some((one) => one[key] > 0));
  const solved = solve(stretches, driven);
  if (solved === null) return null;
  const kept = driven.filter((key) => (solved[key] ?? 0) > 0);
  const rates = kept.length === driven.length ? solved : solve(stretches, kept);
  const degrees = stretches.length - kept.length;
  if (rates === null || degrees < 1 || kept.length === 0) return null;
  const left = stretches.map((one) => one.litres - litresOf(rates, one));
  const squares = left.reduce((sum, one) => sum + one * one, 0);
  const km = stretches.reduce((sum, one) => sum + one.roadKm + one.hardKm, 0);
  return {
    rates,
    varianceL2: squares / degrees,
    degrees,
    meanKm: km / stretches.length,
    stretches,
  };
}

/**
 * Litres for a drive: likely, and not exceeded nine times in ten by Student's t.
 *
 * Variance: that of a stretch for each stretch's length of it, at least one, and what the rates themselves
 * are unsure of, s^2 x'(X'X)^-1 x.
 *
 * @param fit that has a rate for every class of the drive
 */
export function litresFor(
  fit: FuelFit,
  drive: Record<FuelClass, number>,
): { likelyL: number; cautiousL: number } {
  const likelyL = litresOf(fit.rates, drive);
  const long = Math.max(1, (drive.roadKm + drive.hardKm) / fit.meanKm);
  const variance = fit.varianceL2 * (long + leverage(fit, drive));
  return { likelyL, cautiousL: likelyL + student90(fit.degrees) * Math.sqrt(variance) };
}

/**
 * Whether a rate stands out from its own standard error three times over: less, and the fill-ups say more of how
 * they scatter than of the car. Common practice, no source.
 */
export function isTold(fit: FuelFit, key: FuelClass): boolean {
  const rate = fit.rates[key];
  if (rate === undefined) return false;
  const one = { roadKm: 0, hardKm: 0, [key]: 1 };
  return rate >= OUTSTANDING * Math.sqrt(fit.varianceL2 * leverage(fit, one));
}

/** Student's t at 0.9. @param degrees a whole number, 1 or more */
export function student90(degrees: number): number {
  return FEW_DEGREES[degrees - 1] ?? studentQuantile(0.9, degrees);
}

function litresOf(rates: FuelFit['rates'], drive: Record<FuelClass, number>): number {
  return CLASSES.reduce((sum, key) => sum + (rates[key] ?? 0) * drive[key], 0);
}

type Sums = { rr: number; rh: number; hh: number };

function sumsOf(stretches: readonly Stretch[]): Sums {
  const sum = (a: FuelClass, b: FuelClass) =>
    stretches.reduce((all, one) => all + one[a] * one[b], 0);
  return { rr: sum('roadKm', 'roadKm'), rh: sum('roadKm', 'hardKm'), hh: sum('hardKm', 'hardKm') };
}

function solve(stretches: readonly Stretch[], keys: readonly FuelClass[]): FuelFit['rates'] | null {
  const { rr, rh, hh } = sumsOf(stretches);
  const along = (key: FuelClass) => stretches.reduce((all, one) => all + one[key] * one.litres, 0);
  const [first, second] = keys;
  if (first === undefined) return null;
  if (second === undefined) return { [first]: along(first) / (first === 'roadKm' ? rr : hh) };
  const determinant = rr * hh - rh * rh;
  if (determinant <= SAME_DIRECTION * rr * hh) return null;
  const [road, hard] = [along('roadKm'), along('hardKm')];
  return {
    roadKm: (hh * road - rh * hard) / determinant,
    hardKm: (rr * hard - rh * road) / determinant,
  };
}

/** x'(X'X)^-1 x over the rates that were fitted. */
function leverage({ rates, stretches }: FuelFit, drive: Record<FuelClass, number>): number {
  const { rr, rh, hh } = sumsOf(stretches);
  const { roadKm, hardKm } = drive;
  if (rates.hardKm === undefined) return (roadKm * roadKm) / rr;
  if (rates.roadKm === undefined) return (hardKm * hardKm) / hh;
  const determinant = rr * hh - rh * rh;
  return (hh * roadKm ** 2 - 2 * rh * roadKm * hardKm + rr * hardKm ** 2) / determinant;
}
