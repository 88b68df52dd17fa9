/** Rational approximations of erf and erfc, by W. J. Cody. */
const A = [
  3.1611237438705655, 113.86415415105016, 377.485237685302, 3209.3775891384694, 0.18577770618460315,
];
const B = [23.601290952344122, 244.02463793444417, 1282.6165260773723, 2844.236833439171];
const C = [
  0.5641884969886701, 8.883149794388377, 66.11919063714163, 298.6351381974001, 881.952221241769,
  1712.0476126340707, 2051.0783778260716, 1230.3393547979972, 2.1531153547440383e-8,
];
const D = [
  15.744926110709835, 117.6939508913125, 537.1811018620099, 1621.3895745666903, 3290.7992357334597,
  4362.619090143247, 3439.3676741437216, 1230.3393548037495,
];
const P = [
  0.30532663496123236, 0.36034489994980445, 0.12578172611122926, 0.016083785148742275,
  0.0006587491615298378, 0.016315387137302097,
];
const Q = [
  2.568520192289822, 1.8729528499234673, 0.5279051029514285, 0.06051834131244132,
  0.0023352049762686918,
];
const SMALL = 0.46875;
const MIDDLE = 4;
const INVERSE_SQRT_PI = 0.5641895835477563;

function erfcPositive(x: number): number {
  if (x <= SMALL) {
    const z = x * x;
    let top = (A[4] as number) * z;
    let bottom = z;
    for (let i = 0; i < 3; i += 1) {
      top = (top + (A[i] as number)) * z;
      bottom = (bottom + (B[i] as number)) * z;
    }
    return 1 - (x * (top + (A[3] as number))) / (bottom + (B[3] as number));
  }
  if (x <= MIDDLE) {
    let top = (C[8] as number) * x;
    let bottom = x;
    for (let i = 0; i < 7; i += 1) {
      top = (top + (C[i] as number)) * x;
      bottom = (bottom + (D[i] as number)) * x;
    }
    return (Math.exp(-x * x) * (top + (C[7] as number))) / (bottom + (D[7] as number));
  }
  if (x > 27) return 0;
  const z = 1 / (x * x);
  let top = (P[5] as number) * z;
  let bottom = z;
  for (let i = 0; i < 4; i += 1) {
    top = (top + (P[i] as number)) * z;
    bottom = (bottom + (Q[i] as number)) * z;
  }
  const tail = (z * (top + (P[4] as number))) / (bottom + (Q[4] as number));
  return (Math.exp(-x * x) * (INVERSE_SQRT_PI - tail)) / x;
}

/**
 * Probability that a standard normal variable is at most z.
 *
 * @param z any; infinite ends give 0 and 1
 * @returns 0..1, error below 1e-12
 * Source: W. J. Cody, Rational Chebyshev approximations for the error function, Math. Comp. 23 (1969).
 */
export function normalCdf(z: number): number {
  const half = 0.5 * erfcPositive(Math.abs(z) * Math.SQRT1_2);
  return z <= 0 ? half : 1 - half;
}

const HALF_LOG_TWO_PI = 0.9189385332046728;

/** Logarithm of the normal density of a deviation with that variance (> 0). */
export function logNormalDensity(deviation: number, variance: number): number {
  return -0.5 * ((deviation * deviation) / variance + Math.log(variance)) - HALF_LOG_TWO_PI;
}
