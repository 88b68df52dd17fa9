'use client';

import type { UrgentCar } from '@quartermark/api/client';
import { urgentOf } from '@quartermark/engine/display';
import { Button } from '../components/index.ts';
import type { SheetGarage } from '../pocket/sheet/pocket-sheet.ts';
import { UrgentFacts } from './UrgentFacts.tsx';

type PocketUrgentProps = {
  garage: SheetGarage;
  /** the car on the page: of it everything is said there */
  chosenId: string;
  onCar: (carId: string) => void;
};

/** In the paddock, with or without signal: what forbids driving another car of the garage, by this phone's sheet. */
export function PocketUrgent({ garage, chosenId, onCar }: PocketUrgentProps) {
  const cars = garage.cars.flatMap(({ view }): UrgentCar[] => {
    const fact = view.analysis && view.carId !== chosenId ? urgentOf(view.analysis) : null;
    return fact ? [{ carId: view.carId, name: view.car.name, ...fact }] : [];
  });
  return (
    <UrgentFacts
      cars={cars.toSorted((a, b) => rank(a) - rank(b))}
      painted=""
      nameOf={({ carId, name }) => (
        <Button look="quiet" onClick={() => onCar(carId)}>
          {name}
        </Button>
      )}
    />
  );
}

const WORST_FIRST: readonly UrgentCar['stop'][] = ['doNotDrive', 'incident', 'wheelsOff', null];
const rank = ({ stop }: UrgentCar) => WORST_FIRST.indexOf(stop);
