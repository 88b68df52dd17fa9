import { logNormalDensity } from '../probability/normal.ts';
import { update } from './filter.ts';
import { type Hypothesis, LEVEL, SIZE } from './hypothesis.ts';

/** Where a level comes from: read by procedure, read otherwise, filled to MAX, or only inferred. */
export type LevelTag = 'read' | 'off' | 'full' | 'weak';
export type Verdict = 'sound' | 'doubtful' | 'movedUp' | 'movedDown';

const GROSS_SHARE = { read: 0.06, off: 0.06, full: 0.03 } as const;
/** Standard deviation of a gross error, in spans. */
const GROSS_SD = 0.6;
const DOUBTFUL = 0.3;
const EXPONENT_MAX = 700;
/** What the level is taken to be when two readings agree that it moved, in spans. */
const MOVED_SD = 0.7;
const AGREE_SD = 3;

export type ObserveRoom = { gain: Float64Array };

/** What came of an observation. */
export type Observed = {
  verdict: Verdict;
  logLikelihood: number;
  /** share with which it was taken as sound, and the variance of its innovation */
  weight: number;
  variance: number;
};

const LOG_GOOD = { read: Math.log(1 - 0.06), off: Math.log(1 - 0.06), full: Math.log(1 - 0.03) };
const LOG_BAD = {
  read: Math.log(GROSS_SHARE.read),
  off: Math.log(GROSS_SHARE.off),
  full: Math.log(GROSS_SHARE.full),
};

/**
 * Observes a level: a mixture of a sound reading and a gross error that carries no information.
 *
 * A second reading by procedure that disagrees in the same way as the one before means that the level has
 * really moved: the level is then learnt anew.
 *
 * @param h changed in place
 * @param levelL litres from MAX, negative below
 * @param sdL its standard deviation, > 0
 * @param spanL litres between the marks
 * @param out filled with the verdict and the log likelihood
 */
export function observe(
  h: Hypothesis,
  levelL: number,
  sdL: number,
  tag: LevelTag,
  spanL: number,
  { gain }: ObserveRoom,
  out: Observed,
): void {
  const { x, p } = h;
  const r = sdL * sdL;
  const v = levelL - (x[LEVEL] as number);
  const f = (p[0] as number) + r;
  out.verdict = 'sound';
  if (tag === 'weak') {
    out.logLikelihood = logNormalDensity(v, f);
    out.weight = 1;
    out.variance = update(x, p, levelL, r, 1, gain);
    return;
  }
  const good = LOG_GOOD[tag] + logNormalDensity(v, f);
  const bad = LOG_BAD[tag] + logNormalDensity(v, f + (GROSS_SD * spanL) ** 2);
  out.logLikelihood = Math.max(good, bad) + Math.log1p(Math.exp(-Math.abs(good - bad)));
  const odds = bad - good;
  let sound = odds > EXPONENT_MAX ? 0 : 1 / (1 + Math.exp(odds));
  if (sound < DOUBTFUL && tag !== 'full') {
    out.verdict = 'doubtful';
    if (tag === 'read') {
      if (h.outlier * v > 0 && Math.abs(v - h.outlier) < AGREE_SD * sdL) {
        for (let j = 1; j < SIZE; j += 1) {
          p[j] = 0;
          p[j * SIZE] = 0;
        }
        p[0] = (MOVED_SD * spanL) ** 2;
        sound = 1;
        out.verdict = v > 0 ? 'movedUp' : 'movedDown';
        h.outlier = Number.NaN;
      } else h.outlier = v;
    }
  } else if (tag === 'read') h.outlier = Number.NaN;
  out.weight = sound;
  out.variance = update(x, p, levelL, r, sound, gain);
}

/** Pours in so many litres, known to within a standard deviation. */
export function add({ x, p }: Hypothesis, volumeL: number, sdL: number): void {
  x[LEVEL] = (x[LEVEL] as number) + volumeL;
  p[0] = (p[0] as number) + sdL * sdL;
}

/** Sets the level: what it was before says nothing any more. */
export function reset(h: Hypothesis, levelL: number, sdL: number): void {
  const { x, p } = h;
  x[LEVEL] = levelL;
  for (let j = 1; j < SIZE; j += 1) {
    p[j] = 0;
    p[j * SIZE] = 0;
  }
  p[0] = sdL * sdL;
  h.outlier = Number.NaN;
}
