// A local level by another road: all of it at once, as one Gaussian vector with its covariance written out.

/** Lower Cholesky factor of a symmetric positive matrix. */
function cholesky(m: readonly (readonly number[])[]): number[][] {
  const l = m.map((row) => row.map(() => 0));
  m.forEach((row, i) => {
    for (let j = 0; j <= i; j += 1) {
      let sum = row[j] as number;
      for (let k = 0; k < j; k += 1) sum -= (l[i]?.[k] as number) * (l[j]?.[k] as number);
      (l[i] as number[])[j] = i === j ? Math.sqrt(sum) : sum / (l[j]?.[j] as number);
    }
  });
  return l;
}

function forward(l: readonly (readonly number[])[], b: readonly number[]): number[] {
  const z: number[] = [];
  l.forEach((row, i) => {
    let sum = b[i] as number;
    for (let k = 0; k < i; k += 1) sum -= (row[k] as number) * (z[k] as number);
    z.push(sum / (row[i] as number));
  });
  return z;
}

/**
 * Log-likelihood of a local level that starts at 0 with variance kappa, and mean and variance of its first
 * member given all of the readings.
 */
export function denseLocalLevel(
  values: readonly number[],
  variances: { observation: number; level: number },
  kappa: number,
): { logLikelihood: number; last: Moments; first: Moments } {
  const level = (i: number, j: number) => kappa + variances.level * Math.min(i, j);
  const l = cholesky(
    values.map((_a, i) =>
      values.map((_b, j) => level(i, j) + (i === j ? variances.observation : 0)),
    ),
  );
  const z = forward(l, values);
  const logLikelihood = z.reduce(
    (sum, one, i) =>
      sum - 0.5 * (Math.log(2 * Math.PI) + one * one) - Math.log(l[i]?.[i] as number),
    0,
  );
  const given = (at: number): Moments => {
    const c = forward(
      l,
      values.map((_, i) => level(i, at)),
    );
    return {
      mean: c.reduce((sum, one, i) => sum + one * (z[i] as number), 0),
      variance: level(at, at) - c.reduce((sum, one) => sum + one * one, 0),
    };
  };
  return { logLikelihood, last: given(values.length - 1), first: given(0) };
}

type Moments = { mean: number; variance: number };
