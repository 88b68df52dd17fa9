import { oilStory } from '@quartermark/engine';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { bookNow } from '../forecast/book-now.ts';
import type { OilPastView } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const oilPastInput = z.strictObject({ garageId: id, carId: id });

/** The level and the rates of a car along its log, worked out on read. Nothing is written. */
export function oilPastOf(
  world: World,
  asker: Asker,
  { garageId, carId }: z.output<typeof oilPastInput>,
): Promise<OilPastView> {
  return inGarage(
    world,
    asker,
    garageId,
    async (tx) => {
      const { book, ...car } = await bookNow(world, tx, { garageId, carId });
      return { ...car, carId, story: book && oilStory(book) };
    },
    { isolation: 'repeatable read', readOnly: true },
  );
}
