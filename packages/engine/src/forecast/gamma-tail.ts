/** Lanczos coefficients for g = 7, n = 9. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313,
  -176.61502916214059, 12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6,
  1.5056327351493116e-7,
];
const HALF_LOG_TWO_PI = 0.9189385332046728;
const RELATIVE = 1e-12;
/** Above this the cube root of a gamma variable is normal to far more digits than a date needs. */
const LARGE_SHAPE = 3000;
const TINY = 1e-300;
const STEPS_MAX = 10_000;

/**
 * Natural logarithm of the gamma function.
 *
 * @param x > 0
 * Source: C. Lanczos, A precision approximation of the gamma function, SIAM J. Numer. Anal. B 1 (1964);
 * relative error below 1e-14.
 */
export function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const z = x - 1;
  let sum = LANCZOS[0] as number;
  for (let i = 1; i < LANCZOS.length; i += 1) sum += (LANCZOS[i] as number) / (z + i);
  const t = z + 7.5;
  return HALF_LOG_TWO_PI + (z + 0.5) * Math.log(t) - t + Math.log(sum);
}

/**
 * Probability that a gamma variable of that shape and scale 1 exceeds x: the regularised upper incomplete
 * gamma function Q(shape, x).
 *
 * Series for x < shape + 1, else the continued fraction by Lentz's method, both to relative 1e-12 with the
 * prefactor exp(shape ln x - x - ln Gamma(shape)); Wilson and Hilferty's cube root above a shape of 3,000.
 *
 * @param shape > 0, finite
 * @param x any; at or below 0 the answer is 1
 * @returns 0..1
 * Source: NIST Digital Library of Mathematical Functions, 8.7, 8.9, 8.11; E. B. Wilson, M. M. Hilferty,
 * The distribution of chi-square, PNAS 17 (1931).
 * @example gammaTail(1, 1) // e^-1
 */
export function gammaTail(shape: number, x: number): number {
  if (x <= 0) return 1;
  if (x === Number.POSITIVE_INFINITY) return 0;
  if (shape > LARGE_SHAPE) return wilsonHilferty(shape, x);
  return gammaTailWith(shape, logGamma(shape), x);
}

/** The same where the logarithm of Gamma(shape) is at hand; shape at most 3,000. */
function gammaTailWith(shape: number, logGammaShape: number, x: number): number {
  const factor = Math.exp(shape * Math.log(x) - x - logGammaShape);
  return clamp(x < shape + 1 ? 1 - factor * series(shape, x) : factor * fraction(shape, x));
}

function series(shape: number, x: number): number {
  let term = 1 / shape;
  let sum = term;
  for (let n = 1; n < STEPS_MAX && Math.abs(term) > Math.abs(sum) * RELATIVE; n += 1) {
    term *= x / (shape + n);
    sum += term;
  }
  return sum;
}

function fraction(shape: number, x: number): number {
  let b = x + 1 - shape;
  let c = 1 / TINY;
  let d = 1 / b;
  let h = d;
  for (let n = 1; n < STEPS_MAX; n += 1) {
    const a = -n * (n - shape);
    b += 2;
    d = a * d + b;
    if (Math.abs(d) < TINY) d = TINY;
    c = b + a / c;
    if (Math.abs(c) < TINY) c = TINY;
    d = 1 / d;
    const step = d * c;
    h *= step;
    if (Math.abs(step - 1) < RELATIVE) break;
  }
  return h;
}

function wilsonHilferty(shape: number, x: number): number {
  const ninth = 1 / (9 * shape);
  return normalTail((Math.cbrt(x / shape) - 1 + ninth) / Math.sqrt(ninth));
}

/** Probability that a standard normal variable exceeds z: half of Q(1/2, z^2/2). */
function normalTail(z: number): number {
  const half = 0.5 * gammaTailWith(0.5, logGamma(0.5), (z * z) / 2);
  if (z === 0) return 0.5;
  return z > 0 ? half : 1 - half;
}

function clamp(p: number): number {
  return Math.min(1, Math.max(0, p));
}
