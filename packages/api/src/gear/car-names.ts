import { readCar, type Tx } from '@quartermark/db';
import type { GearRow } from '../views.ts';

/** Names of the cars that these pieces are or were on. */
export async function carNames(
  tx: Tx,
  garageId: string,
  rows: readonly GearRow[],
): Promise<Record<string, string>> {
  const ids = new Set(rows.flatMap(({ life }) => life?.windows.map(({ car }) => car) ?? []));
  const names: Record<string, string> = {};
  for (const carId of ids) {
    const car = await readCar(tx, garageId, carId);
    if (car) names[carId] = car.name;
  }
  return names;
}
