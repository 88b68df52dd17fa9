/** A place along an axis, in the units of the drawing, and the number that stands there. */
export type Tick = { at: number; words: string };

/** Round numbers from 0 up to an end, at most so many. @example ticks(26, 5) // [0, 10, 20] */
export function ticks(end: number, most: number): number[] {
  if (!(end > 0)) return [0];
  const rough = end / most;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((factor) => factor * power).find((it) => it >= rough) ?? rough;
  const count = Math.floor(end / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => Number((index * step).toPrecision(6)));
}

/** A place of a drawing to a tenth of its unit: finer than anybody sees. */
export function round(value: number): number {
  return Math.round(value * 10) / 10;
}
