import type { PocketSheet } from '@quartermark/api/client';
import type { SheetCar, SheetGarage } from './pocket-sheet.ts';

export type Chosen = { garage: SheetGarage; car: SheetCar };

const KEY = 'quartermark-pocket-car';

/** The car that was last chosen here; null in a browser that keeps nothing. */
export function rememberedCar(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    // storage is switched off: the last one recorded for stands in
    return null;
  }
}

export function rememberCar(carId: string): void {
  try {
    localStorage.setItem(KEY, carId);
  } catch {
    // storage is switched off or full: it is chosen again next time
  }
}

/**
 * The car the page speaks of: the one that is wanted, else the one remembered, else the first of the
 * sheet, which is the one something was last recorded for. Null where there is no car.
 */
export function chosenCar(
  sheet: PocketSheet,
  wanted: string | null,
  remembered: string | null,
): Chosen | null {
  const all = sheet.garages.flatMap((garage) => garage.cars.map((car) => ({ garage, car })));
  const of = (carId: string | null) => all.find(({ car }) => car.view.carId === carId);
  return of(wanted) ?? of(remembered) ?? all[0] ?? null;
}
