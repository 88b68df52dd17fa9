/**
 * Indices of the longest non-decreasing subsequence, by patience sorting: each value lies on the
 * first pile whose top is larger, so every pile's top is the smallest end of a run of that length.
 * Among runs of equal length the one with the smallest end wins, which is the one whose odd value is
 * the earlier: a later reading wins a tie. O(n log n).
 *
 * @param values finite numbers, in order
 * Source: C. Schensted, "Longest increasing and decreasing subsequences", Canadian Journal of
 * Mathematics 13 (1961), 179-191.
 * @example longestRun([100, 250, 200, 300]) // [0, 2, 3]
 */
export function longestRun(values: readonly number[]): number[] {
  const tops: number[] = [];
  const before: number[] = [];
  values.forEach((value, index) => {
    let low = 0;
    let high = tops.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((values[tops[middle] as number] as number) > value) high = middle;
      else low = middle + 1;
    }
    before.push(low > 0 ? (tops[low - 1] as number) : -1);
    tops[low] = index;
  });
  const run: number[] = [];
  for (let at = tops.at(-1) ?? -1; at >= 0; at = before[at] as number) run.push(at);
  return run.reverse();
}
