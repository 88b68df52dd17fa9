const FIRST_WAIT_MS = 60_000;
const LONGEST_WAIT_MS = 3_600_000;

/**
 * How long a car that failed for good rests before it is tried again: 1 min, doubled after each failure,
 * at most 1 h. A new entry does not wait.
 *
 * @param failures how many times it has failed for good, 1 or more
 * @example waitAfterMs(3) // 240000
 */
export function waitAfterMs(failures: number): number {
  return Math.min(FIRST_WAIT_MS * 2 ** (failures - 1), LONGEST_WAIT_MS);
}
