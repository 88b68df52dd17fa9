import { type GearRecord, type Shelf, type WorkedOut, workOutPieces } from '@quartermark/db';
import { itemViewOf } from '../item/view-of.ts';
import { orderViewOf } from '../order/view-of.ts';
import type { GearRow } from '../views.ts';
import type { Log } from '../world.ts';

/**
 * Components, equipment and people with what is known of them on the shelf's day, worked out now. Each
 * car's book is read and its history built once, however many parts it had.
 *
 * One that rests on something unreadable is listed without its figures; the others are not held up.
 */
export async function gearRows(
  shelf: Shelf,
  records: readonly GearRecord[],
  log: Log,
): Promise<GearRow[]> {
  const worked = await workOutPieces(shelf, records);
  return Promise.all(
    records.map(async (record, index) => rowOf(shelf, record, worked[index], log)),
  );
}

async function rowOf(
  shelf: Shelf,
  record: GearRecord,
  worked: WorkedOut | undefined,
  log: Log,
): Promise<GearRow> {
  const { row, items, orders, fitted } = record;
  const problem = worked?.problem ?? null;
  if (problem !== null) log.error({ gearId: row.id, problem }, 'a piece could not be worked out');
  const result = worked?.piece.result ?? null;
  return {
    gearId: row.id,
    gear: worked?.piece.gear.gear ?? row.body,
    revision: row.revision,
    items: items.map(itemViewOf),
    orders: orders.map(orderViewOf),
    analysis: result?.analysis ?? null,
    life: result?.life ?? null,
    fittedTo: fitted && {
      carId: fitted.car,
      name: (await shelf.bookOf(fitted.car))?.car.name ?? '',
      positions: fitted.positions,
      since: fitted.start,
    },
  };
}
