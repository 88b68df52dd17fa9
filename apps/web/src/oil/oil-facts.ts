import type { CarView } from '@quartermark/api/client';
import type { OilFacts } from '@quartermark/engine/display';

/** What the words of the oil need of a car: the person's units, and its odometer's. */
export function oilFactsOf({ car, garage, analysis }: CarView): OilFacts {
  const { distanceUnit, volumeUnit, today } = garage;
  return {
    distanceUnit,
    volumeUnit,
    unit: car.unit,
    asOf: analysis?.asOf ?? today,
    drySump: car.profile.sump === 'dry',
  };
}
