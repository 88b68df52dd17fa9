import { loadBook, readCar, readGarage, type Tx, UnreadableBook } from '@quartermark/db';
import type { Book } from '@quartermark/engine/log';
import { garageViewOf } from '../garage/view-of.ts';
import { badField, notFoundHere } from '../refused.ts';
import type { GarageView } from '../views.ts';
import type { World } from '../world.ts';

/**
 * A car's book as it stands today. Call it in a `repeatable read` transaction.
 *
 * @throws Refused `notFound`; `badInput` where a stored entry cannot be read, since half a log would give
 *   dates that are too late
 */
export async function bookNow(
  { clock, log }: World,
  tx: Tx,
  { garageId, carId }: { garageId: string; carId: string },
): Promise<{ garage: GarageView; name: string; book: Book }> {
  const [row, car] = await Promise.all([readGarage(tx, garageId), readCar(tx, garageId, carId)]);
  if (!row || !car) throw notFoundHere('car', 'carId');
  const garage = garageViewOf(row, clock.now());
  try {
    return { garage, name: car.name, book: (await loadBook(tx, garageId, carId, garage.today)).book };
  } catch (error) {
    if (!(error instanceof UnreadableBook)) throw error;
    log.error({ garageId, carId, problem: error.message }, 'a book could not be read');
    throw badField(
      'carId',
      'A part of this car’s log cannot be read, so its dates are not known. The car’s page says which part.',
    );
  }
}
