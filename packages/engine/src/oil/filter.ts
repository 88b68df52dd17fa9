/**
 * The two steps of a linear-Gaussian filter, for a state whose first member alone moves: level first, rates
 * after it. `p` is the covariance, row by row, symmetric.
 */

/**
 * Predicts: x_0 <- F_0 . x + u, P <- F P F' + Q with F the identity but for its first row, and Q only at the
 * first member.
 *
 * @param x state, length n; changed in place
 * @param p covariance, n x n; changed in place
 * @param row first row of F, length n
 * @param shift u, added to the first member
 * @param noise Q at the first member; may be negative where it corrects the linear part
 * @param work scratch of length n
 * Source: R. E. Kalman, A new approach to linear filtering and prediction problems (1960).
 */
export function predict(
  x: Float64Array,
  p: Float64Array,
  row: Float64Array,
  shift: number,
  noise: number,
  work: Float64Array,
): void {
  const n = x.length;
  let level = shift;
  let variance = noise;
  for (let j = 0; j < n; j += 1) level += (row[j] as number) * (x[j] as number);
  for (let i = 0; i < n; i += 1) {
    let sum = 0;
    for (let j = 0; j < n; j += 1) sum += (p[i * n + j] as number) * (row[j] as number);
    work[i] = sum;
    variance += (row[i] as number) * sum;
  }
  x[0] = level;
  for (let i = 1; i < n; i += 1) {
    p[i] = work[i] as number;
    p[i * n] = work[i] as number;
  }
  p[0] = variance;
}

/**
 * Updates by an observation y = x_0 + e, e of variance R: x <- x + K v, P <- P - K F K'.
 *
 * @param weight share p with which the observation is sound: the moments of the mixture in which it
 *   carries no information otherwise. 1 = the plain step
 * @param gain scratch of length n; holds the gain K afterwards
 * @returns the variance F of the innovation; its value v is y - x_0 before the step
 * Source: as above; mixture moments by the law of total variance.
 */
export function update(
  x: Float64Array,
  p: Float64Array,
  y: number,
  variance: number,
  weight: number,
  gain: Float64Array,
): number {
  const n = x.length;
  const f = (p[0] as number) + variance;
  const v = y - (x[0] as number);
  for (let i = 0; i < n; i += 1) gain[i] = (p[i * n] as number) / f;
  const drop = weight * f - weight * (1 - weight) * v * v;
  for (let i = 0; i < n; i += 1) {
    const k = gain[i] as number;
    x[i] = (x[i] as number) + weight * k * v;
    for (let j = 0; j <= i; j += 1) {
      const lower = (p[i * n + j] as number) - drop * k * (gain[j] as number);
      p[i * n + j] = lower;
      p[j * n + i] = lower;
    }
  }
  for (let i = 0; i < n; i += 1) if ((p[i * n + i] as number) < 0) p[i * n + i] = 0;
  return f;
}
