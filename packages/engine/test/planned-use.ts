import type { CarCase, PlannedUse } from '../src/history/case.ts';

/** An event on the calendar; a circuit day that takes place for certain unless said otherwise. */
export function outing(
  id: string,
  start: string,
  { km, ...more }: Partial<Omit<PlannedUse, 'id' | 'start' | 'distanceKm'>> & { km?: number } = {},
): PlannedUse {
  return {
    id,
    start,
    end: null,
    useClass: 'circuit',
    distanceKm: km ?? null,
    hours: null,
    sessions: null,
    launches: null,
    attend: 1,
    ...more,
  };
}

/** The same uses, said to have been put on the calendar on a day. */
export function plannedOn(entries: CarCase['entries'], day: string): CarCase['entries'] {
  return entries.map((it) => (it.type === 'use' ? { ...it, plannedOn: day } : it));
}
