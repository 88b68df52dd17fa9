'use client';

import type { PocketSheet } from '@quartermark/api/client';
import { Button } from '../components/index.ts';
import styles from './Pocket.module.css';
import { rememberCar } from './sheet/chosen-car.ts';

type CarChooserProps = {
  sheet: PocketSheet;
  chosenId: string | null;
  onChosen: (carId: string) => void;
};

/** Every car of the sheet, a target each. */
export function CarChooser({ sheet, chosenId, onChosen }: CarChooserProps) {
  const named = sheet.garages.length > 1;
  return (
    <>
      <h1>Which car?</h1>
      {sheet.garages.map(({ garage, cars }) => (
        <div key={garage.id} className={styles.cars}>
          {named ? <h2>{garage.name}</h2> : null}
          {cars.map(({ view: { carId, car } }) => (
            <Button
              key={carId}
              className={styles.target}
              aria-pressed={carId === chosenId}
              onClick={() => {
                rememberCar(carId);
                onChosen(carId);
              }}
            >
              {car.name}
            </Button>
          ))}
        </div>
      ))}
    </>
  );
}
