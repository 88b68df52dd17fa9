import type { CarView } from '@quartermark/api/client';
import type { SaidIn } from '@quartermark/engine/readiness';

/** In which units a car is spoken of: those of its odometer and of the garage's bottles. */
export const saidInOf = ({ car, garage }: CarView): SaidIn => ({
  distance: car.unit,
  volume: garage.volumeUnit,
});
