import {
  carsLastRecorded,
  listEvents,
  listGear,
  listMyGarages,
  readGarage,
  type Tx,
} from '@quartermark/db';
import { lastValuesOf } from '../car/last-values.ts';
import { carViewOf } from '../car/view.ts';
import { inGarage } from '../command/in-garage.ts';
import { eventViewOf } from '../event/view-of.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { gearRows } from '../gear/gear-rows.ts';
import type { CarView, PocketSheet } from '../views.ts';
import type { Asker, World } from '../world.ts';

/** More cars than a person records for from a pocket. */
const CARS_MAX = 60;

/**
 * Everything a phone needs to record without signal, of all garages of the asker, each as of one
 * moment.
 */
export async function pocketSheet(world: World, asker: Asker): Promise<PocketSheet> {
  const garages: PocketSheet['garages'] = [];
  for (const garageId of await garageIds(world, asker)) {
    const sheet = await inGarage(world, asker, garageId, (tx) => sheetOf(world, tx, garageId), {
      isolation: 'repeatable read',
      readOnly: true,
    });
    if (sheet) garages.push(sheet);
  }
  return { at: world.clock.now().toISOString(), garages };
}

async function garageIds(world: World, asker: Asker): Promise<string[]> {
  return (await listMyGarages(world.db, asker.userId)).map(({ id }) => id);
}

async function sheetOf(
  world: World,
  tx: Tx,
  garageId: string,
): Promise<PocketSheet['garages'][number] | null> {
  const row = await readGarage(tx, garageId);
  if (!row) return null;
  const garage = garageViewOf(row, world.clock.now());
  const [pieces, events, carIds] = await Promise.all([
    listGear(tx, garageId),
    listEvents(tx, garageId, garage.today),
    carsLastRecorded(tx, garageId, CARS_MAX),
  ]);
  const gear = await gearRows({ tx, garage: row, today: garage.today, log: world.log }, pieces);
  const cars = await Promise.all(
    carIds.map(async (carId) => {
      const fitted = gear.filter(({ fittedTo }) => fittedTo?.carId === carId);
      const [view, last] = await Promise.all([
        carViewOf(tx, garage, carId, fitted),
        lastValuesOf(tx, garageId, carId),
      ]);
      return view ? [{ view: lighter(view), last }] : [];
    }),
  );
  return { garage, cars: cars.flat(), gear, events: events.map(eventViewOf), days: [] };
}

/** Without the ids of the entries each figure rests on, and of what was read oddly: a phone without signal could not open them. */
function lighter(view: CarView): CarView {
  const { analysis } = view;
  if (analysis === null) return view;
  return {
    ...view,
    analysis: {
      ...analysis,
      items: analysis.items.map((it) => ({ ...it, evidence: [] })),
      oil: { ...analysis.oil, doubtful: [], moved: [], offProcedure: [] },
    },
  };
}
