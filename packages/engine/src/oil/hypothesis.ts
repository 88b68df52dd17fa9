/** Members of a hypothesis' state. */
export const LEVEL = 0;
/** ln of the road rate, L per 1,000 km, without the step */
export const ROAD = 1;
/** ln of circuit over road */
export const CIRCUIT = 2;
/** ln of the oil of one run, in thousands of road kilometres */
export const STRIP = 3;
/** ln of the step this hypothesis believes in */
export const STEP = 4;
export const SIZE = 5;

/** A step of the rate that an account holds: before the drive of which operation, and ln of its size. */
export type StepBorn = { before: number; size: number };

/** One account of what the engine does: level and rates with their covariance. */
export type Hypothesis = {
  x: Float64Array;
  /** covariance, row by row */
  p: Float64Array;
  logWeight: number;
  /** thousands of km at which its step was assumed; 0 for the base */
  born: number;
  /** innovation of a gross error just seen; NaN: none */
  outlier: number;
  /** every step that led here, those long taken into the rate too */
  steps: readonly StepBorn[];
};

/** What an owner, or common practice, knows of an engine before its log: median and spread of ln. */
export type OilPriors = Record<
  'roadRate' | 'circuitRatio' | 'stripRun',
  { median: number; sdLog: number }
>;

/** Medians L/1,000 km, ratio, thousands of road km a run. Common practice, no source. */
export const USUAL_PRIORS: OilPriors = {
  roadRate: { median: 0.25, sdLog: 0.95 },
  circuitRatio: { median: 3.3, sdLog: 0.45 },
  stripRun: { median: 0.09, sdLog: 0.8 },
};

export function emptyHypothesis(): Hypothesis {
  return {
    x: new Float64Array(SIZE),
    p: new Float64Array(SIZE * SIZE),
    logWeight: Number.NEGATIVE_INFINITY,
    born: 0,
    outlier: Number.NaN,
    steps: [],
  };
}

/** The base before anything is known: a third of the span down, rates as the priors say. */
export function startAt(h: Hypothesis, spanL: number, priors: OilPriors): void {
  h.x.set([
    -0.35 * spanL,
    Math.log(priors.roadRate.median),
    Math.log(priors.circuitRatio.median),
    Math.log(priors.stripRun.median),
    0,
  ]);
  h.p.fill(0);
  const sd = [0.3 * spanL, priors.roadRate.sdLog, priors.circuitRatio.sdLog, priors.stripRun.sdLog];
  sd.forEach((one, i) => {
    h.p[i * SIZE + i] = one * one;
  });
  h.logWeight = 0;
  h.born = 0;
  h.outlier = Number.NaN;
  h.steps = [];
}

export function copyInto(to: Hypothesis, from: Hypothesis): void {
  to.x.set(from.x);
  to.p.set(from.p);
  to.logWeight = from.logWeight;
  to.born = from.born;
  to.outlier = from.outlier;
  to.steps = from.steps;
}

/** Takes the step into the rate: a <- a + d, d <- 0. */
export function absorb({ x, p }: Hypothesis): void {
  x[ROAD] = (x[ROAD] as number) + (x[STEP] as number);
  x[STEP] = 0;
  for (let j = 0; j < SIZE; j += 1)
    p[ROAD * SIZE + j] = (p[ROAD * SIZE + j] as number) + (p[STEP * SIZE + j] as number);
  for (let i = 0; i < SIZE; i += 1)
    p[i * SIZE + ROAD] = (p[i * SIZE + ROAD] as number) + (p[i * SIZE + STEP] as number);
  for (let j = 0; j < SIZE; j += 1) {
    p[STEP * SIZE + j] = 0;
    p[j * SIZE + STEP] = 0;
  }
}

/**
 * Merges one hypothesis into another by their moments: weighted mean, covariance plus the spread of the means.
 * What the heavier one remembers survives (an outlier, its steps), of the receiving one where they are equal.
 */
export function mergeInto(to: Hypothesis, from: Hypothesis): void {
  const most = Math.max(to.logWeight, from.logWeight);
  if (most === Number.NEGATIVE_INFINITY) return;
  const [a, b] = [Math.exp(to.logWeight - most), Math.exp(from.logWeight - most)];
  const share = b / (a + b);
  const keep = a / (a + b);
  for (let i = 0; i < SIZE; i += 1)
    for (let j = 0; j <= i; j += 1) {
      const spread =
        ((from.x[i] as number) - (to.x[i] as number)) *
        ((from.x[j] as number) - (to.x[j] as number));
      const merged =
        keep * (to.p[i * SIZE + j] as number) +
        share * (from.p[i * SIZE + j] as number) +
        keep * share * spread;
      to.p[i * SIZE + j] = merged;
      to.p[j * SIZE + i] = merged;
    }
  for (let i = 0; i < SIZE; i += 1)
    to.x[i] = keep * (to.x[i] as number) + share * (from.x[i] as number);
  if (from.logWeight > to.logWeight) {
    to.outlier = from.outlier;
    to.steps = from.steps;
  }
  to.logWeight = most + Math.log(a + b);
}
