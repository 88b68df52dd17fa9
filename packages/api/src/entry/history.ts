import { historyPage, readCar } from '@quartermark/db';
import { civilDate, ENTRY_KINDS, type EntryKind } from '@quartermark/engine/log';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { readCursor, writeCursor } from '../cursor.ts';
import { pageFields } from '../page-fields.ts';
import { notFoundHere } from '../refused.ts';
import type { HistoryPage } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { entryViewsOf } from './view-of.ts';

export const entryHistoryInput = z.strictObject({
  garageId: id,
  carId: id,
  kind: z.enum(ENTRY_KINDS as readonly [EntryKind, ...EntryKind[]]).optional(),
  /** words to look for in what was typed */
  text: z.string().trim().max(200).optional(),
  /** removed entries too */
  removed: z.boolean().optional(),
  ...pageFields,
});

const place = z.strictObject({ on: civilDate, recorded: z.int() });

export const HISTORY_PAGE_SIZE = 50;

/** One page of a car's record, newest day first. */
export function entryHistory(
  world: World,
  asker: Asker,
  input: z.output<typeof entryHistoryInput>,
): Promise<HistoryPage> {
  const { garageId, carId, kind, text, removed, cursor } = input;
  const after = cursor ? readCursor(place, cursor) : null;
  return inGarage(world, asker, garageId, async (tx) => {
    if (!(await readCar(tx, garageId, carId))) throw notFoundHere('car', 'carId');
    const { rows, next } = await historyPage(tx, {
      garageId,
      carId,
      after,
      limit: HISTORY_PAGE_SIZE,
      ...(kind ? { kind } : {}),
      ...(text ? { text } : {}),
      ...(removed ? { tombstones: true } : {}),
    });
    return { entries: await entryViewsOf(tx, garageId, rows), next: next && writeCursor(next) };
  });
}
