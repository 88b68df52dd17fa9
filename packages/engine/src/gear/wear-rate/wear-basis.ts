import type { Contribution } from '../../history/contribution.ts';
import type { WearBasis, WearUse } from './result.ts';

/**
 * Sessions that wear a part as much as one unit of each sort of use: 2,000 km of road or 10 launches
 * count like a circuit session.
 *
 * Source: common practice, no source.
 */
const SESSIONS_PER: Readonly<Record<WearBasis, number>> = {
  sessions: 1,
  km: 1 / 2000,
  launches: 0.1,
};

const FIELD = { sessions: 'sessions', km: 'roadKm', launches: 'launches' } as const;
const BASES: readonly WearBasis[] = ['sessions', 'km', 'launches'];

export const NO_USE: WearUse = { sessions: 0, roadKm: 0, launches: 0 };

/** Least use between two measurements to speak of a rate, in the basis. Common practice, no source. */
export const LEAST_SPAN: Readonly<Record<WearBasis, number>> = {
  sessions: 1,
  km: 200,
  launches: 5,
};

/** Use over which wear is much the same, a circuit day or a long trip, in the basis. */
export const STRETCH: Readonly<Record<WearBasis, number>> = { sessions: 4, km: 1000, launches: 10 };

/**
 * Use of a part by sort, between two places of its timeline. Touring days count by their kilometres.
 *
 * @param after use after it counts
 * @param until use up to it counts
 */
export function wearUse(
  contributions: readonly Contribution[],
  after: number,
  until: number,
): WearUse {
  const use = { ...NO_USE };
  for (const it of contributions) {
    if (it.position <= after || it.position > until) continue;
    use.launches += it.launches;
    if (it.useClass === 'road' || it.useClass === 'touring') use.roadKm += it.distanceKm;
    else use.sessions += it.sessions;
  }
  return use;
}

/** The sort of use that has worn a part most; sessions where it has done nothing. */
export function basisOf(use: WearUse): WearBasis {
  const worn = (basis: WearBasis) => use[FIELD[basis]] * SESSIONS_PER[basis];
  return BASES.reduce((most, basis) => (worn(basis) > worn(most) ? basis : most));
}

/** All use as one amount. @example useIn('sessions', { sessions: 4, roadKm: 1000, launches: 0 }) // 4.5 */
export function useIn(basis: WearBasis, use: WearUse): number {
  const sessions = BASES.reduce((sum, it) => sum + use[FIELD[it]] * SESSIONS_PER[it], 0);
  return sessions / SESSIONS_PER[basis];
}

/** Whether sorts of use other than the basis make up a tenth of it or more. */
export function isMixed(basis: WearBasis, use: WearUse): boolean {
  return useIn(basis, use) - use[FIELD[basis]] >= 0.1 * use[FIELD[basis]] && useIn(basis, use) > 0;
}
