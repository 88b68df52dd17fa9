import { deriveAmounts } from '../../history/derive-amounts.ts';
import type { EventSort } from '../../log/event-sort.ts';
import { plannedEventOf } from '../../log/planned-event.ts';
import { distanceKm } from '../../log/quantity.ts';
import type { EventAsked } from '../asked.ts';

/** What a car does at an event: km on the road and of hard use, and runs of a drag strip. */
export type DoneThere = {
  roadKm: number;
  /** circuit, autocross, drag strip */
  hardKm: number;
  /** among the hard kilometres; 0 where they are no runs */
  runs: number;
};

/** Of an event whose use nobody said. */
export const UNSAID =
  'Nobody said what it does there: say it in the event’s form, as a distance, sessions or launches.';

/** What a car does for an event. */
export type Trip = {
  sort: EventSort;
  /** null: nobody said, or not in a measure that gives a distance */
  there: DoneThere | null;
  /** km there and back on its own wheels, 0 on a trailer; null: nobody said how far it is */
  wayKm: number | null;
};

/**
 * What a car does at an event, and on the way there and back.
 *
 * Distances are derived as those of the history are: `deriveAmounts()`. The way is twice the travel distance,
 * as road; none for a car on a trailer. A meet of which no drive is planned asks for nothing but the way.
 *
 * @throws TypeError for a distance that was never parsed
 * @example tripOf(circuitOf5Sessions80KmAway, 'a') // { sort: 'circuit', there: { roadKm: 0, hardKm: 200, runs: 0 }, wayKm: 160 }
 */
export function tripOf({ id, event }: NonNullable<EventAsked>, carId: string): Trip {
  const { sort, travel } = event;
  const far = travel?.distance === undefined ? null : distanceKm(travel.distance);
  const onTrailer = travel?.trailered.includes(carId) === true;
  const wayKm = onTrailer ? 0 : far === null ? null : 2 * far;
  const planned = plannedEventOf(id, { ...event, cars: [carId] }, carId);
  if (planned === null) return { sort, there: sort === 'meet' ? NOTHING : null, wayKm };
  const { use, km = null, hours = null, sessions = null, launches = null } = planned;
  const amounts = deriveAmounts({ useClass: use, distanceKm: km, hours, sessions, launches });
  if (amounts.distanceKm === 0) return { sort, there: null, wayKm };
  const hard = use === 'circuit' || use === 'autocross' || use === 'strip';
  const there = hard
    ? { roadKm: 0, hardKm: amounts.distanceKm, runs: use === 'strip' ? amounts.launches : 0 }
    : { roadKm: amounts.distanceKm, hardKm: 0, runs: 0 };
  return { sort, there, wayKm };
}

const NOTHING: DoneThere = { roadKm: 0, hardKm: 0, runs: 0 };
