import type { Limit } from '../log/item.ts';
import type { Wanted } from './proposal.ts';

type Weights = NonNullable<Extract<Limit, { measure: 'km' }>['weights']>;

/** Counts circuit and autocross alone: what the road does is said by distance. */
export const HARD_ONLY: Weights = { road: 0, touring: 0, circuit: 1, autocross: 1, strip: 0 };
/** Counts the road alone: what hard use does is said by sessions. */
export const ROAD_ONLY: Weights = { circuit: 0, autocross: 0, strip: 0 };

export function months(value: number): Limit {
  return { measure: 'months', value };
}

/** A distance as a person would write it in the car's own unit: 12,000 km, 7,500 mi. */
export function distance(
  { unit }: Pick<Wanted, 'unit'>,
  inKm: number,
  inMiles: number,
  weights: Weights,
): Limit {
  return { measure: 'km', value: unit === 'km' ? inKm : inMiles, unit, weights };
}

/** Limits for circuit and autocross, where the car does either. */
export function onCircuits(
  { does }: Wanted,
  { hours, sessions, autocross = 1 }: { hours?: number; sessions?: number; autocross?: number },
): Limit[] {
  if (!does('circuit') && !does('autocross')) return [];
  const limits: Limit[] = [];
  if (hours !== undefined) limits.push({ measure: 'hours', value: hours, weights: HARD_ONLY });
  if (sessions !== undefined)
    limits.push({ measure: 'sessions', value: sessions, weights: { ...HARD_ONLY, autocross } });
  return limits;
}

/** Launches, where the car goes to a drag strip. */
export function onDragStrips({ does }: Wanted, launches: number): Limit[] {
  return does('strip') ? [{ measure: 'launches', value: launches }] : [];
}
