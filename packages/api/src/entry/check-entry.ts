import {
  knownPhotos,
  listEntriesOnDay,
  listGearOnceOn,
  listItems,
  listItemsOfGear,
  readCar,
  readingsNear,
  rejectedReadings,
} from '@quartermark/db';
import { todayIn } from '@quartermark/engine/calendar';
import type { EntryInput, EntryOf } from '@quartermark/engine/log';
import type { Writing } from '../command/run-command.ts';
import { checkStorage } from '../lay-up/check-storage.ts';
import { badField, notFoundHere } from '../refused.ts';
import { bodiesOf } from './body-of.ts';
import { checkDay } from './check-day.ts';
import { checkGear } from './check-gear.ts';
import { checkNamed } from './check-named.ts';
import { checkOdometer } from './check-odometer.ts';
import { checkOrder, otherSide } from './check-order.ts';
import { checkTwin } from './check-twin.ts';
import type { Answers } from './entry-for-garage.ts';

/**
 * Everything an entry must satisfy before it is written. What can be wrong is refused; what only looks
 * odd is asked about once, and never when nobody is there to answer.
 *
 * @param before the entry as it was, when it is amended: what was answered then is not asked again
 */
export async function checkEntry(
  writing: Writing,
  entry: EntryInput,
  answers: Answers,
  before: EntryInput | null = null,
): Promise<void> {
  const { tx, garage, now } = writing;
  checkDay(entry, todayIn(now, garage.zone));
  const car = entry.car === undefined ? null : await readCar(tx, garage.id, entry.car);
  if (entry.car !== undefined && !car) throw notFoundHere('car', 'entry.car');
  await checkGear(writing, entry, before);
  await checkNamed(writing, entry, before);
  await checkPhotos(writing, entry);
  if (entry.kind === 'service') await checkItems(writing, entry, before);
  if (entry.car === undefined) return;
  await checkStorage(writing, entry);
  if (!answers.queued) await ask(writing, entry.car, entry, answers, before);
}

async function checkPhotos({ tx, garage }: Writing, { photos = [] }: EntryInput): Promise<void> {
  const known = await knownPhotos(tx, garage.id, photos);
  const index = photos.findIndex((photo) => !known.has(photo));
  if (index >= 0)
    throw badField(
      `entry.photos.${index}`,
      'photos: one of them has not arrived; send it again, or take it off the entry',
    );
}

async function checkItems(
  { tx, garage }: Writing,
  { car, gear, items }: EntryOf<'service'>,
  before: EntryInput | null,
): Promise<void> {
  const known = new Set<string>();
  if (car !== undefined) {
    for (const item of await listItems(tx, garage.id, { carId: car })) known.add(item.id);
    const parts = await listGearOnceOn(tx, garage.id, car);
    for (const item of await listItemsOfGear(tx, garage.id, parts)) known.add(item.id);
  }
  if (gear !== undefined)
    for (const item of await listItems(tx, garage.id, { gearId: gear })) known.add(item.id);
  // an item removed since stays where it was done
  if (before?.kind === 'service') for (const item of before.items) known.add(item);
  const index = items.findIndex((item) => !known.has(item));
  if (index >= 0)
    throw badField(
      `entry.items.${index}`,
      `items: ${items[index]} is no service item of this ${car === undefined ? 'piece' : 'car'}; choose one from its list`,
    );
}

const sameMoment = (a: EntryInput, b: EntryInput | null) =>
  b !== null && a.on === b.on && a.time === b.time && a.dayOrder === b.dayOrder;

const sameReading = (a: EntryInput, b: EntryInput | null) =>
  a.odometer?.text === b?.odometer?.text && a.odometer?.unit === b?.odometer?.unit;

async function ask(
  { tx, garage }: Writing,
  carId: string,
  entry: EntryInput,
  { confirmed }: Answers,
  before: EntryInput | null,
): Promise<void> {
  const moved = !sameMoment(entry, before);
  const read = entry.odometer !== undefined && (moved || !sameReading(entry, before));
  if (read && !confirmed.includes('odometerBackwards')) {
    const near = bodiesOf(await readingsNear(tx, garage.id, carId, entry.on));
    checkOdometer(entry, near, await rejectedReadings(tx, garage.id, carId));
  }
  if (!moved || otherSide(entry).length === 0) return;
  const sameDay = bodiesOf(await listEntriesOnDay(tx, garage.id, carId, entry.on));
  if (!confirmed.includes('orderUnclear')) checkOrder(entry, sameDay);
  // written down by two people, or twice by one whose first try seemed lost
  if (!confirmed.includes('looksTheSame')) checkTwin(entry, sameDay);
}
