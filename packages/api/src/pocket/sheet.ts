import { carsLastRecorded, listMyGarages, readCar, type Tx } from '@quartermark/db';
import { addDays } from '@quartermark/engine/calendar';
import type { CarReadiness } from '@quartermark/engine/readiness';
import { z } from 'zod';
import { id } from '../asked.ts';
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

const CAR_ID_MAX = 100;

/** Events that somebody packs for now. */
const DAYS_MAX = 4;
const AHEAD_DAYS = 14;
/** A garage has its pages of events worked out anew each time a phone asks. */
const PACKED_MAX = 3;
/** More garages than a person looks after; beyond it the one that is looked at comes along all the same. */
const GARAGES_MAX = 20;
/** Others need connections as well. */
const ASKED_AT_ONCE = 4;

/** A page kept by a phone may be older than what is asked here, and what it remembers may be no id at all. */
export const pocketSheetInput = z
  .strictObject({ carId: z.string().max(CAR_ID_MAX).nullable() })
  .default({ carId: null });

type SheetInput = z.output<typeof pocketSheetInput>;
type SheetOfGarage = PocketSheet['garages'][number];

/**
 * Everything a phone needs to record without signal, of all garages of the asker, each as of one moment. Pages of
 * events go along for the garage of the car that is looked at, and for those whose events come first.
 *
 * @param carId the car that is looked at on the phone; null: none was ever chosen
 */
export async function pocketSheet(
  world: World,
  asker: Asker,
  { carId }: SheetInput,
): Promise<PocketSheet> {
  const read = <T>(garageId: string, reader: (tx: Tx) => Promise<T>) =>
    inGarage(world, asker, garageId, reader, { isolation: 'repeatable read', readOnly: true });
  const garages: SheetOfGarage[] = [];
  for (const garageId of await garageIds(world, asker, carId)) {
    const sheet = await read(garageId, (tx) => sheetOf(world, tx, garageId));
    if (sheet) garages.push(sheet);
  }
  for (const sheet of packingNow(garages, carId))
    sheet.days = await read(sheet.garage.id, (tx) => daysOf(world, tx, sheet.garage.id));
  return { at: world.clock.now().toISOString(), garages };
}

/** Of many garages the first by name, led by the one of the car that is looked at. */
async function garageIds(world: World, asker: Asker, carId: string | null): Promise<string[]> {
  const all = (await listMyGarages(world.db, asker.userId)).map(({ id }) => id);
  if (all.length <= GARAGES_MAX) return all;
  const looked = await garageOf(world, asker, all, carId);
  const led = looked === null ? all : [looked, ...all.filter((one) => one !== looked)];
  return led.slice(0, GARAGES_MAX);
}

async function garageOf(
  world: World,
  asker: Asker,
  garageIds: readonly string[],
  carId: string | null,
): Promise<string | null> {
  if (carId === null || !id.safeParse(carId).success) return null;
  const has = async (garageId: string) => {
    const car = await inGarage(world, asker, garageId, (tx) => readCar(tx, garageId, carId));
    return car === null ? [] : [garageId];
  };
  for (let at = 0; at < garageIds.length; at += ASKED_AT_ONCE) {
    const found = await Promise.all(garageIds.slice(at, at + ASKED_AT_ONCE).map(has));
    const [first] = found.flat();
    if (first !== undefined) return first;
  }
  return null;
}

/** The garages somebody packs for now: working out an event takes a look into the whole book of each of its cars. */
function packingNow(garages: readonly SheetOfGarage[], carId: string | null): SheetOfGarage[] {
  const first = (sheet: SheetOfGarage) => daysAhead(sheet.events, sheet.garage.today)[0];
  const has = ({ cars }: SheetOfGarage) => cars.some(({ view }) => view.carId === carId);
  const looked = garages.find(has) ?? garages.find(({ cars }) => cars.length > 0);
  return garages
    .flatMap((sheet) => {
      const start = first(sheet)?.event.start;
      // what is looked at comes before any day
      return start === undefined ? [] : [{ sheet, order: sheet === looked ? '' : start }];
    })
    .toSorted((a, b) => (a.order < b.order ? -1 : a.order > b.order ? 1 : 0))
    .slice(0, PACKED_MAX)
    .map(({ sheet }) => sheet);
}

async function sheetOf(world: World, tx: Tx, garageId: string): Promise<SheetOfGarage | null> {
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
  return { garage, cars: cars.flat(), gear, events, days: [] };
}

async function daysOf(world: World, tx: Tx, garageId: string): Promise<EventPage[]> {
  const room = await openRoom(world, tx, garageId);
  const days: EventPage[] = [];
  if (!room) return days;
  for (const view of daysAhead(room.events, room.garage.today))
    days.push(bare(await eventPageOf(room, view)));
  return days;
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
  const near = ({ event }: EventView) => lastDay(event) >= today && event.start <= last;
  return events.filter(near).slice(0, DAYS_MAX);
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
