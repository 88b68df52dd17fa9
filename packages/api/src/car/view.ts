import { carWithSnapshot, listItems, listLayUps, readGarage } from '@quartermark/db';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { failureViewOf } from '../failure-view-of.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { itemViewOf } from '../item/view-of.ts';
import { notFoundHere } from '../refused.ts';
import type { CarView } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { carOf } from './car-of.ts';

export const carViewInput = z.strictObject({ garageId: id, carId: id });

/** A car with its items and what was last computed of it. Nothing is computed here. */
export function carView(
  world: World,
  asker: Asker,
  { garageId, carId }: z.output<typeof carViewInput>,
): Promise<CarView> {
  return inGarage(world, asker, garageId, async (tx) => {
    // sent down one connection without waiting in between
    const [garage, found, items, layUps] = await Promise.all([
      readGarage(tx, garageId),
      carWithSnapshot(tx, garageId, carId),
      listItems(tx, garageId, { carId }),
      listLayUps(tx, garageId, carId),
    ]);
    if (!garage || !found) throw notFoundHere('car', 'carId');
    const { car, snapshot, failure } = found;
    return {
      garage: garageViewOf(garage, world.clock.now()),
      carId,
      car: carOf(car),
      revision: car.revision,
      items: items.map(itemViewOf),
      layUps: layUps.map(({ id, startOn, endOn }) => ({
        id,
        start: startOn,
        ...(endOn === null ? {} : { end: endOn }),
      })),
      version: snapshot?.inputVersion ?? 0,
      wantedVersion: car.inputVersion,
      computedAt: snapshot?.computedAt.toISOString() ?? null,
      engineVersion: snapshot?.engineVersion ?? null,
      analysis: snapshot?.analysis ?? null,
      failure: failureViewOf(failure),
    };
  });
}
