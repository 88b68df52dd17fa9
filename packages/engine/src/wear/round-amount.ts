const PARTS = 1e6;

/**
 * Rounds an amount to a millionth of its unit. Sums of daily shares do not add up to the last bit;
 * rounded, ten shares of a tenth reach the limit of 1, and 7,500 mi driven are 7,500 mi allowed.
 *
 * @param amount km, h or a count, below 1e9
 * @example roundAmount(0.1 + 0.2) // 0.3
 */
export function roundAmount(amount: number): number {
  return Math.round(amount * PARTS) / PARTS;
}
