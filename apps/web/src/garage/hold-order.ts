/**
 * Rows in the order they were first shown, with fresh contents: a list that is being read, or about to
 * be pressed, must not move under the finger when news arrives. Rows not shown before come last, in
 * their own order; rows that are gone drop out.
 *
 * @param held ids in the order shown so far
 * @param rows the fresh rows, in their proper order
 * @param idOf what tells a row from the others
 * @returns the rows as to be shown, and whether that differs from the proper order
 */
export function holdOrder<R>(
  held: readonly string[],
  rows: readonly R[],
  idOf: (row: R) => string,
): { rows: R[]; moved: boolean } {
  const place = new Map(held.map((id, index) => [id, index]));
  const at = (row: R) => place.get(idOf(row)) ?? held.length;
  const shown = [...rows].sort((a, b) => at(a) - at(b));
  return { rows: shown, moved: shown.some((row, index) => row !== rows[index]) };
}
