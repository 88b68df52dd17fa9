import { carsLastRecorded, listMyGarages, type Tx } from '@quartermark/db';
import { addDays } from '@quartermark/engine/calendar';
import type { CarReadiness } from '@quartermark/engine/readiness';
import { lastValuesOf } from '../car/last-values.ts';
import { carViewOf } from '../car/view.ts';
import { inGarage } from '../command/in-garage.ts';
import { eventPageOf } from '../event/page/page-of.ts';
import { openRoom } from '../event/page/room.ts';
import type { EventPage } from '../event-views.ts';
import { gearRows } from '../gear/gear-rows.ts';
import type { CarView, EventView, PocketSheet } from '../views.ts';
import type { Asker, World } from '../world.ts';

/** More cars than a person records for from a pocket. */
const CARS_MAX = 60;

/** Events that somebody packs for now. */
const DAYS_MAX = 4;
const AHEAD_DAYS = 14;

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
  const room = await openRoom(world, tx, garageId);
  if (!room) return null;
  const { garage } = room;
  const carIds = await carsLastRecorded(tx, garageId, CARS_MAX);
  const gear = await gearRows(room.shelf, room.pieces, world.log);
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
  const events = room.events.filter(({ event }) => lastDay(event) >= garage.today);
  const days: EventPage[] = [];
  for (const view of daysAhead(events, garage.today))
    days.push(bare(await eventPageOf(room, view)));
  return { garage, cars: cars.flat(), gear, events, days };
}

/**
 * Without the ids of the entries each figure rests on, and of what was read oddly: a phone without signal
 * could not open them. For the road it says only what is not met.
 */
function lighter(view: CarView): CarView {
  const { analysis, road } = view;
  if (analysis === null) return view;
  return {
    ...view,
    road: road && openAlone(road),
    analysis: {
      ...analysis,
      items: analysis.items.map((it) => ({ ...it, evidence: [] })),
      oil: { ...analysis.oil, doubtful: [], moved: [], offProcedure: [] },
    },
  };
}

const lastDay = ({ start, end = start }: EventView['event']) => end;

/** Those that run today or begin within two weeks, by their first day. */
function daysAhead(events: readonly EventView[], today: string): EventView[] {
  const last = addDays(today, AHEAD_DAYS);
  return events.filter(({ event }) => event.start <= last).slice(0, DAYS_MAX);
}

/** What is done with it without signal: to see what is missing, to tick, to show the inspector. */
function bare(page: EventPage): EventPage {
  const cars = page.cars.map((car) => ({
    ...car,
    readiness: car.readiness && openAlone(car.readiness),
    recorded: [],
    items: [],
  }));
  return { ...page, cars, proposal: null, former: null };
}

/** Only what is not met, without the ids of the entries it rests on. */
function openAlone(readiness: CarReadiness): CarReadiness {
  const open = readiness.needs.filter(({ status }) => status !== 'met');
  return { ...readiness, needs: open.map((need) => ({ ...need, evidence: [] })) };
}
