import { type Fact, factsOfCar, type Said, type Tonight } from '@quartermark/digest';
import type { Tx } from '../connect.ts';
import type { GarageRow } from '../garages/read.ts';
import type { Complain } from '../readiness/events-room.ts';
import { carsTonight } from './cars-tonight.ts';
import type { LetterReader } from './readers.ts';

/** What there is to tell in a garage tonight, whoever reads it. */
export type GarageTonight = Pick<Tonight, 'today' | 'facts' | 'garage'>;

/**
 * Reads a garage for its letters. Call in a `repeatable read` transaction.
 *
 * @param today civil date in the garage's zone
 */
export async function garageTonight(
  tx: Tx,
  row: GarageRow,
  today: string,
  complain: Complain,
): Promise<GarageTonight> {
  const facts: Fact[] = [];
  const cars: string[] = [];
  for await (const page of carsTonight(tx, row, today, complain))
    for (const car of page) {
      cars.push(car.id);
      facts.push(...factsOfCar(car, today));
    }
  return { today, facts, garage: { name: row.name, cars } };
}

/** What the letter of one member is composed of. @param last what he was told last */
export function tonightOf(
  tonight: GarageTonight,
  { wish }: Pick<LetterReader, 'wish'>,
  last: readonly Said[],
): Tonight {
  return { ...tonight, last, settings: wish, member: { cars: wish.cars } };
}
