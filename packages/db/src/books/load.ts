import { addDays } from '@quartermark/engine/calendar';
import {
  type Book,
  type BookOrder,
  carProfile,
  type Entry,
  entryInput,
  eventInput,
  type Item,
  itemInput,
  type LayUpWindow,
  orderInput,
  type PlannedEvent,
  plannedEventOf,
  plannedStorage,
} from '@quartermark/engine/log';
import { and, asc, eq } from 'drizzle-orm';
import type { z } from 'zod';
import { type CarRow, readCar } from '../cars/read.ts';
import type { Tx } from '../connect.ts';
import type { EntryRow } from '../entries/read.ts';
import { type EventRow, listEventsOfCar } from '../events/read.ts';
import { readGarage } from '../garages/read.ts';
import { type ItemRow, listItems } from '../items/read.ts';
import { listLayUps } from '../lay-ups/list.ts';
import { listOrders, type OrderRow } from '../orders/read.ts';
import { listPlannedLayUps } from '../planned-lay-ups/read.ts';
import { entry } from '../schema.ts';
import { UnreadableBook } from './unreadable-book.ts';

/** An event that ended so many days ago is no longer expected to be logged. */
const EVENTS_SINCE_DAYS = 30;

/**
 * Everything the engine reads of one car, and the input version it makes up. Call it in a
 * `repeatable read` transaction, or the parts may be of different moments.
 *
 * @param asOf civil date in the garage's zone
 * @throws UnreadableBook if a stored body no longer fits the schema
 * @throws Error if the car is not in the garage (any more); `readCar` and `carStanding` say so before
 */
export async function loadBook(
  tx: Tx,
  garageId: string,
  carId: string,
  asOf: string,
): Promise<{ book: Book; inputVersion: number }> {
  // asked at once, so that they travel in one go and are answered one after the other
  const [car, garage, items, layUps, plans, events, orders, entries] = await Promise.all([
    readCar(tx, garageId, carId),
    readGarage(tx, garageId),
    listItems(tx, garageId, { carId }),
    listLayUps(tx, garageId, carId),
    listPlannedLayUps(tx, garageId, asOf, carId),
    listEventsOfCar(tx, garageId, carId, addDays(asOf, -EVENTS_SINCE_DAYS)),
    listOrders(tx, garageId, { carId }),
    listWithTombstones(tx, garageId, carId),
  ]);
  if (!car || !garage)
    throw new Error(`could not load a book: car ${carId} is not in garage ${garageId}`);
  const recorded = layUps.map(windowOf);
  const book: Book = {
    format: 'log/1',
    asOf,
    garage: { zone: garage.zone },
    car: {
      ...carOf(car),
      ...(garage.hemisphere === null ? {} : { hemisphere: garage.hemisphere }),
    },
    items: items.map((row) => itemOf(carId, row)),
    layUps: [...recorded, ...plannedStorage(plans.map(windowOf), recorded, asOf)],
    planned: events.flatMap((row) => plannedOf(carId, row) ?? []),
    ...(orders.length === 0 ? {} : { orders: orders.map((row) => orderOf(carId, row)) }),
    entries: entries.map((row) => entryOf(carId, row)),
  };
  return { book, inputVersion: car.inputVersion };
}

function listWithTombstones(tx: Tx, garageId: string, carId: string): Promise<EntryRow[]> {
  return tx
    .select()
    .from(entry)
    .where(and(eq(entry.garageId, garageId), eq(entry.carId, carId)))
    .orderBy(asc(entry.recorded));
}

function carOf(row: CarRow): Book['car'] {
  const { id, name, unit, odoDigits } = row;
  const profile = read(carProfile, row.profile, id, 'car', id);
  return { id, name, unit, ...(odoDigits === null ? {} : { odoDigits }), profile };
}

function itemOf(carId: string, row: ItemRow): Item {
  return { id: row.id, ...read(itemInput, row.body, carId, 'item', row.id) };
}

type WindowRow = { id: string; startOn: string; endOn: string | null };

function windowOf({ id, startOn, endOn }: WindowRow): LayUpWindow {
  return { id, start: startOn, ...(endOn === null ? {} : { end: endOn }) };
}

function plannedOf(carId: string, row: EventRow): PlannedEvent | null {
  return plannedEventOf(row.id, read(eventInput, row.body, carId, 'event', row.id), carId);
}

function orderOf(carId: string, { id, itemId, body }: OrderRow): BookOrder {
  return { id, item: itemId, ...read(orderInput, body, carId, 'order', id) };
}

function entryOf(carId: string, row: EntryRow): Entry {
  const body = read(entryInput, row.body, carId, 'entry', row.id);
  const { recorded, revision, removedAt } = row;
  return { ...body, recorded, revision, removed: removedAt !== null };
}

function read<S extends z.ZodType>(
  schema: S,
  body: unknown,
  carId: string,
  part: UnreadableBook['part'],
  partId: string,
): z.output<S> {
  const parsed = schema.safeParse(body);
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  const where = issue?.path.map(String).join('.') ?? '';
  throw new UnreadableBook(carId, part, partId, `${where}: ${issue?.message ?? 'unreadable'}`);
}
