/** Lines of a table: the first column to the left, the others to the right. */
export function table(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, at) =>
    Math.max(...rows.map((row) => (row[at] ?? '').length)),
  );
  return rows
    .map((row) =>
      row
        .map((cell, at) =>
          at === 0 ? cell.padEnd(widths[at] ?? 0) : cell.padStart(widths[at] ?? 0),
        )
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

export const ms = (value: number): string =>
  `${value < 1 ? value.toFixed(3) : value < 100 ? value.toFixed(1) : value.toFixed(0)} ms`;

export const times = (value: number): string => `${value.toFixed(value < 10 ? 1 : 0)}x`;
