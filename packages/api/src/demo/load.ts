import {
  carInput,
  eventInput,
  gearInput,
  itemInput,
  orderInput,
  plannedLayUp,
  specSheet,
} from '@quartermark/engine/log';
import type { SeedGarage, SeedStep } from '@quartermark/seed';
import { parse } from '../asked.ts';
import { writeCar } from '../car/add.ts';
import type { Writing } from '../command/run-command.ts';
import { rewriteEntry } from '../entry/amend.ts';
import { type Answers, entryForGarage } from '../entry/entry-for-garage.ts';
import { buryEntry } from '../entry/remove.ts';
import { writeEntry } from '../entry/write-entry.ts';
import { writeEvent } from '../event/add.ts';
import { writeGear } from '../gear/add.ts';
import { writeItem } from '../item/add.ts';
import { writeOrder } from '../order/add.ts';
import { writePlannedLayUp } from '../planned-lay-up/add.ts';
import { writeSpec } from '../spec/change.ts';

/** Nobody is there to be asked about an invented odometer. */
const ANSWERS: Answers = { confirmed: ['odometerBackwards', 'orderUnclear'], queued: true };

/** Writes an invented garage through the verbs, in the order in which its people recorded it. */
export async function load(writing: Writing, seed: SeedGarage): Promise<void> {
  const { cars, gear, gearEntries, events, plannedLayUps, orders, specs } = seed;
  for (const piece of gear)
    await writeGear(writing, {
      gearId: piece.id,
      gear: parse(gearInput, piece.gear),
      items: piece.items.map(({ id, item }) => ({ itemId: id, item: parse(itemInput, item) })),
    });
  for (const { id: carId, car, items, entries } of cars) {
    await writeCar(writing, { carId, car: parse(carInput, car) });
    for (const { id: itemId, item } of items)
      await writeItem(writing, { carId }, { itemId, item: parse(itemInput, item) });
    const revisions = new Map<string, number>();
    for (const step of entries) await take(writing, step, revisions);
  }
  const revisions = new Map<string, number>();
  for (const step of gearEntries) await take(writing, step, revisions);
  for (const { id: eventId, event } of events)
    await writeEvent(writing, { eventId, event: parse(eventInput, event) });
  for (const { id: layUpId, carId, layUp } of plannedLayUps)
    await writePlannedLayUp(writing, { carId, layUpId, layUp: parse(plannedLayUp, layUp) });
  for (const { id: orderId, itemId, order } of orders)
    await writeOrder(writing, { itemId, orderId, order: parse(orderInput, order) });
  for (const { carId, sheet } of specs) await writeSpec(writing, carId, parse(specSheet, sheet), 0);
}

async function take(
  writing: Writing,
  step: SeedStep,
  revisions: Map<string, number>,
): Promise<void> {
  if ('remove' in step) {
    const baseRevision = revisions.get(step.remove) ?? 1;
    await buryEntry(writing, { entryId: step.remove, baseRevision });
    return;
  }
  const entry = parse(entryForGarage, step.entry);
  if (!('amend' in step)) {
    await writeEntry(writing, entry, ANSWERS);
    return;
  }
  const baseRevision = revisions.get(step.amend) ?? 1;
  const amended = { entryId: step.amend, baseRevision, entry, ...ANSWERS };
  const { revision } = await rewriteEntry(writing, amended);
  revisions.set(step.amend, revision);
}
