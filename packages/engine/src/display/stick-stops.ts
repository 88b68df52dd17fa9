/** The named stops of a stick, as fractions of the way from MIN to MAX. */
const STOPS = [
  { at: 0, name: 'MIN', isMark: true },
  { at: 0.25, name: 'a quarter', isMark: false },
  { at: 0.5, name: 'half', isMark: false },
  { at: 0.75, name: 'three quarters', isMark: false },
  { at: 1, name: 'MAX', isMark: true },
] as const;
export type StickStop = (typeof STOPS)[number];

/** The stop that lies next to a level; of two as near the lower one. @example nearestStop(0.8).name // "three quarters" */
export function nearestStop(fraction: number): StickStop {
  return STOPS.reduce<StickStop>(
    (best, stop) => (Math.abs(stop.at - fraction) < Math.abs(best.at - fraction) ? stop : best),
    STOPS[0],
  );
}

/** On a stop, as one says it. @example atStop(nearestStop(1)) // "at MAX" */
export function atStop({ name, isMark }: StickStop): string {
  return isMark ? `at ${name}` : name;
}
