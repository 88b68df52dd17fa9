import type { UseClass } from '../log/item.ts';
import type { UseEntry } from './case.ts';

export const KM_PER_CIRCUIT_HOUR = 110;
/** One run down a drag strip and back; a file without passes has as many as launches. */
export const KM_PER_PASS = 0.8;
export const KM_PER_SESSION = {
  circuit: 40,
  autocross: 5,
  strip: 2,
  touring: 250,
} as const satisfies Partial<Record<UseClass, number>>;
const HOURS_PER_SESSION: Partial<Record<UseClass, number>> = {
  circuit: 0.4,
  autocross: 0.1,
  strip: 0.05,
};

export type Amounts = {
  distanceKm: number;
  hours: number;
  sessions: number;
  launches: number;
  /** true: derived from another amount, so a meter may scale it down */
  distanceEstimated: boolean;
  hoursEstimated: boolean;
  /** true: road use without hours, which the distance gives where there is no hour meter */
  hoursOpen: boolean;
};

export type GivenAmounts = Pick<
  UseEntry,
  'useClass' | 'distanceKm' | 'hours' | 'sessions' | 'launches' | 'passes'
>;

/**
 * What a use amounts to, once, from what was given.
 *
 * Distance: given; else hours x 110 km (circuit only); else sessions x 40 / 5 / 2 / 250 km (circuit,
 * autocross, drag strip, touring day); else passes (where not counted apart: launches) x 0.8 km; else
 * 0. Hours, except on the road: given; else sessions x 0.40 / 0.10 / 0.05 h (circuit, autocross, drag
 * strip); else given km / 110 (circuit only); else 0. Sessions and launches are never derived.
 *
 * @param given amounts >= 0, null where not given
 * Source: common practice for club days, no published source.
 * @example deriveAmounts({ useClass: 'circuit', sessions: 5, distanceKm: null, hours: null, launches: null }).distanceKm // 200
 */
export function deriveAmounts(given: GivenAmounts): Amounts {
  const onRoad = given.useClass === 'road' || given.useClass === 'touring';
  return {
    distanceKm: given.distanceKm ?? derivedKm(given),
    hours: given.hours ?? (onRoad ? 0 : derivedHours(given)),
    sessions: given.sessions ?? 0,
    launches: given.launches ?? 0,
    distanceEstimated: given.distanceKm === null,
    hoursEstimated: given.hours === null,
    hoursOpen: onRoad && given.hours === null,
  };
}

function derivedKm({ useClass, hours, sessions, launches, passes }: GivenAmounts): number {
  if (hours !== null && useClass === 'circuit') return hours * KM_PER_CIRCUIT_HOUR;
  if (sessions !== null && useClass !== 'road') return sessions * KM_PER_SESSION[useClass];
  return (passes ?? launches ?? 0) * KM_PER_PASS;
}

function derivedHours({ useClass, distanceKm, sessions }: GivenAmounts): number {
  const perSession = HOURS_PER_SESSION[useClass];
  if (sessions !== null && perSession !== undefined) return sessions * perSession;
  return useClass === 'circuit' && distanceKm !== null ? distanceKm / KM_PER_CIRCUIT_HOUR : 0;
}
