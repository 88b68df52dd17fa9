import { addDays } from '@quartermark/engine/calendar';
import { HORIZON_DAYS } from '@quartermark/engine/display';
import { type AddedUse, addedUse, whatIf } from '@quartermark/engine/what-if';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { badField } from '../refused.ts';
import type { WhatIfView } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { bookNow } from './book-now.ts';

export const LINES_MAX = 20;

export const whatIfInput = z.strictObject({
  garageId: id,
  carId: id,
  added: z.array(addedUse).max(LINES_MAX, `at most ${LINES_MAX} lines; take some away`).default([]),
});

/**
 * What would become of a car's dates if it did something more: its book is read and asked twice, as it
 * stands and with what was added. Nothing is written.
 */
export function whatIfOf(
  world: World,
  asker: Asker,
  { garageId, carId, added }: z.output<typeof whatIfInput>,
): Promise<WhatIfView> {
  return inGarage(
    world,
    asker,
    garageId,
    async (tx) => {
      const { book, ...car } = await bookNow(world, tx, { garageId, carId });
      for (const [index, line] of added.entries()) checkDays(line, index, car.garage.today);
      return { ...car, carId, answer: book && whatIf(book, added) };
    },
    { isolation: 'repeatable read', readOnly: true },
  );
}

/** @throws Refused where no forecast reaches a line's days, or they have passed */
function checkDays({ start, end = start }: AddedUse, index: number, today: string): void {
  const last = addDays(today, HORIZON_DAYS);
  const [first, until] = [`added.${index}.start`, `added.${index}.end`];
  if (start < today)
    throw badField(first, `start: ${start} has passed; choose today (${today}) or a later day`);
  if (start > last)
    throw badField(
      first,
      `start: ${start} is beyond three years; choose ${last} or an earlier day`,
    );
  if (end > last)
    throw badField(until, `end: ${end} is beyond three years; choose ${last} or an earlier day`);
}
