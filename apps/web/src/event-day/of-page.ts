import type { EventCar, EventPage } from '@quartermark/api/client';
import type { CarReadiness, Need, SaidIn } from '@quartermark/engine/readiness';

/** A car whose book can be read. */
export type ReadCar = EventCar & { readiness: CarReadiness };

export const isRead = (car: EventCar): car is ReadCar => car.readiness !== null;

/** In which units a car's needs are said. */
export const saidIn = ({ garage }: Pick<EventPage, 'garage'>, { unit }: EventCar): SaidIn => ({
  distance: unit,
  volume: garage.volumeUnit,
});

export const takenOn = ({ needs }: CarReadiness): Need[] =>
  needs.filter(({ accepted }) => accepted !== null);
