import {
  type CarOfPage,
  carPage,
  listSaid,
  loadBook,
  readGarage,
  type Tx,
  UnreadableBook,
} from '@quartermark/db';
import { countingLines, judgeSaid, replay, replayDays } from '@quartermark/engine/said';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { readCursor, writeCursor } from '../cursor.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { pageFields } from '../page-fields.ts';
import { notFoundHere } from '../refused.ts';
import type { SaidCar, SaidPage } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const saidListInput = z.strictObject({
  garageId: id,
  ...pageFields,
  /** that car alone */
  carId: id.optional(),
});

/** Each costs a few histories: as many as a person waits for. */
export const SAID_PAGE_CARS = 4;

/**
 * What was said of some cars' items, and what came of it, by name of the car. What is stored comes first;
 * for months before the first of it, what would have been said is worked out from the log. Nothing is stored.
 */
export function listSaidOfCars(
  world: World,
  asker: Asker,
  { garageId, cursor, carId }: z.output<typeof saidListInput>,
): Promise<SaidPage> {
  const after = cursor ? readCursor(id, cursor) : null;
  return inGarage(
    world,
    asker,
    garageId,
    async (tx) => {
      const row = await readGarage(tx, garageId);
      if (!row) throw notFoundHere('garage', 'garageId');
      const garage = garageViewOf(row, world.clock.now());
      const page = await carPage(tx, { garageId, after, limit: SAID_PAGE_CARS, carId });
      const cars: SaidCar[] = [];
      // one after the other: each reads a whole log
      for (const car of page.cars) cars.push(await saidOfCar(world, tx, garage, car));
      return { garage, cars, next: page.next && writeCursor(page.next), total: page.total };
    },
    { isolation: 'repeatable read', readOnly: true },
  );
}

async function saidOfCar(
  world: World,
  tx: Tx,
  garage: { id: string; today: string },
  { carId, name }: CarOfPage,
): Promise<SaidCar> {
  try {
    const [{ book }, stored] = await Promise.all([
      loadBook(tx, garage.id, carId, garage.today),
      listSaid(tx, garage.id, carId),
    ]);
    const first = stored[0]?.saidOn ?? garage.today;
    const before = replayDays(garage.today).filter((day) => day < first);
    const lines = judgeSaid(book, [...stored, ...replay(book, before)]);
    const items = Object.fromEntries(book.items.map((item) => [item.id, item.name]));
    return { carId, name, items, lines: countingLines(lines) };
  } catch (error) {
    if (!(error instanceof UnreadableBook)) throw error;
    world.log.warn({ garageId: garage.id, carId, error: error.message }, 'a log cannot be read');
    return { carId, name, items: {}, lines: null };
  }
}
