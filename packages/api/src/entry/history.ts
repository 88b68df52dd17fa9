import { type EntryRow, historyPage, namesOfThings, readCar, readGear } from '@quartermark/db';
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

const kind = z.enum(ENTRY_KINDS as readonly [EntryKind, ...EntryKind[]]);

export const entryHistoryInput = z.strictObject({
  garageId: id,
  /** of a car, or of a component, piece of equipment or person; neither: the whole garage */
  carId: id.optional(),
  gearId: id.optional(),
  kind: kind.optional(),
  kinds: z.array(kind).min(1).max(ENTRY_KINDS.length).optional(),
  /** words to look for in what was typed */
  text: z.string().trim().max(200).optional(),
  /** removed entries too */
  removed: z.boolean().optional(),
  ...pageFields,
});

const place = z.strictObject({ on: civilDate, recorded: z.int() });

export const HISTORY_PAGE_SIZE = 50;

/** One page of the record, newest day first. */
export function entryHistory(
  world: World,
  asker: Asker,
  input: z.output<typeof entryHistoryInput>,
): Promise<HistoryPage> {
  const { garageId, carId, gearId, text, removed, cursor } = input;
  const kinds = input.kinds ?? (input.kind && [input.kind]);
  const after = cursor ? readCursor(place, cursor) : null;
  return inGarage(world, asker, garageId, async (tx) => {
    if (carId && !(await readCar(tx, garageId, carId))) throw notFoundHere('car', 'carId');
    if (gearId && !(await readGear(tx, garageId, gearId)))
      throw notFoundHere('set, tool or person', 'gearId');
    const { rows, next } = await historyPage(tx, {
      garageId,
      after,
      limit: HISTORY_PAGE_SIZE,
      ...(carId ? { carId } : {}),
      ...(gearId ? { gearId } : {}),
      ...(kinds ? { kinds } : {}),
      ...(text ? { text } : {}),
      ...(removed ? { tombstones: true } : {}),
    });
    return {
      entries: await entryViewsOf(tx, garageId, rows),
      names: await namesOfThings(tx, garageId, rows.flatMap(idsIn)),
      next: next && writeCursor(next),
    };
  });
}

/** Everything an entry speaks of that has a name. */
function idsIn({ carId, gearId, body }: EntryRow): string[] {
  const items = body.kind === 'service' ? body.items : [];
  const set = body.kind === 'session' ? body.tyreSet : undefined;
  const part = body.kind === 'fit' || body.kind === 'measure' ? body.component : undefined;
  return [carId, gearId, part, ...items, set].flatMap((one) => one ?? []);
}
