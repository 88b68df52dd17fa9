// Least squares by another road: normal equations of whole numbers, solved without any rounding.

/** Exact determinant of a matrix of whole numbers, by minors. */
function determinant(m: readonly (readonly bigint[])[]): bigint {
  if (m.length === 1) return m[0]?.[0] as bigint;
  return (m[0] as readonly bigint[]).reduce((sum, first, column) => {
    const minor = m.slice(1).map((row) => row.filter((_, at) => at !== column));
    return sum + (column % 2 === 0 ? 1n : -1n) * first * determinant(minor);
  }, 0n);
}

/** Exact quotient of two whole numbers, to 18 digits behind the point. */
function quotient(a: bigint, b: bigint): number {
  const scale = 10n ** 18n;
  return Number((a * scale) / b) / 1e18;
}

/**
 * Solves min |y - X b| for whole numbers by Cramer's rule.
 *
 * @returns b, the diagonal of (X'X)^-1, and the sum of squared residuals
 */
export function exactLeastSquares(
  rows: readonly (readonly number[])[],
  y: readonly number[],
): { b: number[]; inverse: number[]; squares: number } {
  const n = rows[0]?.length ?? 0;
  const x = rows.map((row) => row.map(BigInt));
  const right = y.map(BigInt);
  const columns = Array.from({ length: n }, (_, i) => x.map((row) => row[i] as bigint));
  const product = (a: readonly bigint[], b: readonly bigint[]) =>
    a.reduce((sum, one, at) => sum + one * (b[at] as bigint), 0n);
  const normal = columns.map((a) => columns.map((b) => product(a, b)));
  const xy = columns.map((a) => product(a, right));
  const whole = determinant(normal);
  const tops = columns.map((_, i) =>
    determinant(normal.map((row, r) => row.map((v, c) => (c === i ? (xy[r] as bigint) : v)))),
  );
  const inverse = columns.map((_, i) => {
    const minor = normal.filter((_row, r) => r !== i).map((row) => row.filter((_v, c) => c !== i));
    return quotient(minor.length === 0 ? 1n : determinant(minor), whole);
  });
  // |y - Xb|^2 = y'y - b'X'y
  const explained = tops.reduce((sum, top, i) => sum + top * (xy[i] as bigint), 0n);
  const squares = quotient(product(right, right) * whole - explained, whole);
  return { b: tops.map((top) => quotient(top, whole)), inverse, squares };
}
