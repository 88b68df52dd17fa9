import {
  carWithSnapshot,
  driverNames,
  listGearOn,
  listItems,
  listLayUps,
  listOrders,
  listPlannedLayUps,
  readGarage,
  shelfOf,
  type Tx,
} from '@quartermark/db';
import { addDays } from '@quartermark/engine/calendar';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { PAST_DAYS } from '../event/list.ts';
import { failureViewOf } from '../failure-view-of.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { gearRows } from '../gear/gear-rows.ts';
import { itemViewOf } from '../item/view-of.ts';
import { orderViewOf } from '../order/view-of.ts';
import { plannedLayUpViewOf } from '../planned-lay-up/view-of.ts';
import { notFoundHere } from '../refused.ts';
import type { CarView, GarageView, GearRow } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { carOf } from './car-of.ts';

export const carViewInput = z.strictObject({ garageId: id, carId: id });

const PEOPLE_MAX = 30;

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
      const row = await readGarage(tx, garageId);
      if (!row) throw notFoundHere('car', 'carId');
      const garage = garageViewOf(row, world.clock.now());
      const fitted = listGearOn(tx, garageId, carId, garage.today).then((records) =>
        gearRows(shelfOf(tx, row, garage.today), records, world.log),
      );
      const view = await carViewOf(tx, garage, carId, fitted);
      if (!view) throw notFoundHere('car', 'carId');
      return view;
    },
    { isolation: 'repeatable read', readOnly: true },
  );
}

/**
 * Call in a `repeatable read` transaction.
 *
 * @param gear the components that are on it
 * @returns null if the car is not in the garage
 */
export async function carViewOf(
  tx: Tx,
  garage: GarageView,
  carId: string,
  gear: GearRow[] | Promise<GearRow[]>,
): Promise<CarView | null> {
  const garageId = garage.id;
  // sent down one connection without waiting in between
  const [found, items, layUps, plans, orders, people, parts] = await Promise.all([
    carWithSnapshot(tx, garageId, carId),
    listItems(tx, garageId, { carId }),
    listLayUps(tx, garageId, carId),
    listPlannedLayUps(tx, garageId, addDays(garage.today, -PAST_DAYS), carId),
    listOrders(tx, garageId, { carId }),
    driverNames(tx, garageId, carId, PEOPLE_MAX),
    gear,
  ]);
  if (!found) return null;
  const { car, snapshot, failure } = found;
  return {
    garage,
    carId,
    car: carOf(car),
    revision: car.revision,
    items: items.map(itemViewOf),
    layUps: layUps.map(({ id, startOn, endOn }) => ({
      id,
      start: startOn,
      ...(endOn === null ? {} : { end: endOn }),
    })),
    plannedLayUps: plans.map(plannedLayUpViewOf),
    orders: orders.map(orderViewOf),
    version: snapshot?.inputVersion ?? 0,
    wantedVersion: car.inputVersion,
    computedAt: snapshot?.computedAt.toISOString() ?? null,
    engineVersion: snapshot?.engineVersion ?? null,
    analysis: snapshot?.analysis ?? null,
    road: snapshot?.road ?? null,
    failure: failureViewOf(failure),
    gear: parts,
    people,
  };
}
