/** What a forward pass did to a state, with what it was afterwards; `n` members, covariance row by row. */
export type Moved =
  /** x_0 <- row . x + u */
  | { did: 'predict'; row: Float64Array; x: Float64Array; p: Float64Array }
  /** observed: innovation v of variance F, gain K, share with which it was sound */
  | {
      did: 'update';
      v: number;
      f: number;
      gain: Float64Array;
      weight: number;
      x: Float64Array;
      p: Float64Array;
    }
  /** a member was set anew: what came before says nothing of it */
  | { did: 'reset'; member: number; x: Float64Array; p: Float64Array }
  /** x_into <- x_into + x_from, then x_from was set anew */
  | { did: 'absorb'; from: number; into: number; x: Float64Array; p: Float64Array };

/** Mean and standard deviation of the first member after each step, in the light of all of them. */
export type Smoothed = { mean: number; sd: number };

/**
 * Smooths a forward pass: the backward disturbance recursion, without an inverse.
 *
 * With r = 0, N = 0 after the last step and going back through step k: predict r <- F'r, N <- F'NF; update
 * r <- r + e (p v/F - p K.r), N <- L'NL + e e' p/F with L = I - p K e'; reset: the member's row and column are 0;
 * absorb: those of the member taken in are those of the one that took it.
 * Smoothed after step k: x + P r, P - P N P.
 *
 * @param steps in order
 * @returns one per step, of the first member
 * Source: J. Durbin, S. J. Koopman, Time Series Analysis by State Space Methods, 4.4.
 */
export function smooth(steps: readonly Moved[]): Smoothed[] {
  const n = steps[0]?.x.length ?? 0;
  const r = new Float64Array(n);
  const big = new Float64Array(n * n);
  const found: Smoothed[] = [];
  for (let at = steps.length - 1; at >= 0; at -= 1) {
    const step = steps[at] as Moved;
    found.push(atStep(step, r, big));
    if (step.did === 'predict') backThroughPredict(step.row, r, big);
    else if (step.did === 'update') backThroughUpdate(step, r, big);
    else if (step.did === 'reset') clear(step.member, r, big);
    else backThroughAbsorb(step.from, step.into, r, big);
  }
  return found.reverse();
}

function atStep({ x, p }: Moved, r: Float64Array, big: Float64Array): Smoothed {
  const n = x.length;
  let mean = x[0] as number;
  let variance = p[0] as number;
  for (let i = 0; i < n; i += 1) {
    mean += (p[i] as number) * (r[i] as number);
    for (let j = 0; j < n; j += 1)
      variance -= (p[i] as number) * (big[i * n + j] as number) * (p[j] as number);
  }
  return { mean, sd: Math.sqrt(Math.max(variance, 0)) };
}

/** F is the identity but for its first row. */
function backThroughPredict(row: Float64Array, r: Float64Array, big: Float64Array): void {
  const n = row.length;
  const first = r[0] as number;
  const weight = big[0] as number;
  const firstRow = Float64Array.from({ length: n }, (_, j) => big[j] as number);
  for (let i = 0; i < n; i += 1) {
    const a = row[i] as number;
    r[i] = (i === 0 ? 0 : (r[i] as number)) + a * first;
  }
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j < n; j += 1) {
      const [a, b] = [row[i] as number, row[j] as number];
      const own = i === 0 || j === 0 ? 0 : (big[i * n + j] as number);
      const left = j === 0 ? 0 : a * (firstRow[j] as number);
      const right = i === 0 ? 0 : b * (firstRow[i] as number);
      big[i * n + j] = own + left + right + a * b * weight;
    }
}

function backThroughUpdate(
  { v, f, gain, weight }: Extract<Moved, { did: 'update' }>,
  r: Float64Array,
  big: Float64Array,
): void {
  const n = gain.length;
  let along = 0;
  let total = 0;
  const ng = new Float64Array(n);
  for (let i = 0; i < n; i += 1) {
    along += (gain[i] as number) * (r[i] as number);
    for (let j = 0; j < n; j += 1)
      ng[i] = (ng[i] as number) + (big[i * n + j] as number) * (gain[j] as number);
  }
  for (let i = 0; i < n; i += 1) total += (gain[i] as number) * (ng[i] as number);
  r[0] = (r[0] as number) + weight * (v / f - along);
  for (let j = 1; j < n; j += 1) {
    const moved = (big[j] as number) - weight * (ng[j] as number);
    big[j] = moved;
    big[j * n] = moved;
  }
  big[0] =
    (big[0] as number) - 2 * weight * (ng[0] as number) + weight * weight * total + weight / f;
}

function clear(member: number, r: Float64Array, big: Float64Array): void {
  const n = r.length;
  r[member] = 0;
  for (let j = 0; j < n; j += 1) {
    big[member * n + j] = 0;
    big[j * n + member] = 0;
  }
}

function backThroughAbsorb(from: number, into: number, r: Float64Array, big: Float64Array): void {
  const n = r.length;
  r[from] = r[into] as number;
  for (let j = 0; j < n; j += 1) big[from * n + j] = big[into * n + j] as number;
  for (let i = 0; i < n; i += 1) big[i * n + from] = big[i * n + into] as number;
}
