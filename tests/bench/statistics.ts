/** Milliseconds of repeated measurements. */
export type Times = number[];

/**
 * Percentile by nearest rank: the smallest value that at least p percent do not exceed.
 *
 * @param p above 0, up to 100
 * @example percentile([4, 1, 3, 2], 50) // 2
 */
export function percentile(times: readonly number[], p: number): number {
  if (times.length === 0) throw new RangeError('could not take a percentile: nothing was measured');
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil((p / 100) * sorted.length) - 1)] as number;
}

export const p50 = (times: readonly number[]): number => percentile(times, 50);
export const p95 = (times: readonly number[]): number => percentile(times, 95);

/** Milliseconds that a piece of work takes. */
export async function timed(work: () => unknown): Promise<number> {
  const began = performance.now();
  await work();
  return performance.now() - began;
}
