import {
  carWithSnapshot,
  driverNames,
  type GarageRow,
  listGear,
  listGearOnceOn,
  listItems,
  listLayUps,
  readGarage,
  type Tx,
} from '@quartermark/db';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { failureViewOf } from '../failure-view-of.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { gearRows } from '../gear/gear-rows.ts';
import { itemViewOf } from '../item/view-of.ts';
import { notFoundHere } from '../refused.ts';
import type { CarView, GearRow } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { carOf } from './car-of.ts';

export const carViewInput = z.strictObject({ garageId: id, carId: id });

/** A car with its items and what was last computed of it. Its own figures are not computed here. */
export function carView(
  world: World,
  asker: Asker,
  { garageId, carId }: z.output<typeof carViewInput>,
): Promise<CarView> {
  return inGarage(
    world,
    asker,
    garageId,
    async (tx) => {
      const garage = await readGarage(tx, garageId);
      const view = garage && (await carViewOf(tx, world, garage, carId));
      if (!view) throw notFoundHere('car', 'carId');
      return view;
    },
    { isolation: 'repeatable read', readOnly: true },
  );
}

/** Call in a `repeatable read` transaction. @returns null if the car is not in the garage */
export async function carViewOf(
  tx: Tx,
  world: World,
  garage: GarageRow,
  carId: string,
): Promise<CarView | null> {
  const garageId = garage.id;
  // sent down one connection without waiting in between
  const [found, items, layUps, people, parts] = await Promise.all([
    carWithSnapshot(tx, garageId, carId),
    listItems(tx, garageId, { carId }),
    listLayUps(tx, garageId, carId),
    driverNames(tx, garageId, carId),
    listGearOnceOn(tx, garageId, carId),
  ]);
  if (!found) return null;
  const { car, snapshot, failure } = found;
  const garageView = garageViewOf(garage, world.clock.now());
  return {
    garage: garageView,
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
    gear: await fittedNow({ tx, garage, today: garageView.today, log: world.log }, carId, parts),
    people,
  };
}

async function fittedNow(
  asked: Parameters<typeof gearRows>[0],
  carId: string,
  parts: readonly string[],
): Promise<GearRow[]> {
  if (parts.length === 0) return [];
  const pieces = (await listGear(asked.tx, asked.garage.id)).filter(({ id }) => parts.includes(id));
  const rows = await gearRows(asked, pieces);
  return rows.filter(({ fittedTo }) => fittedTo?.carId === carId);
}
