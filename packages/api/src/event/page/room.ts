import {
  type GarageRow,
  type GearRecord,
  listEvents,
  listGear,
  listGearRecords,
  listRequirements,
  readGarage,
  requirementsOf,
  type Shelf,
  shelfOf,
  type Tx,
  workOutPieces,
} from '@quartermark/db';
import { addDays } from '@quartermark/engine/calendar';
import { eventInput, type ReadyFor, type Requirements } from '@quartermark/engine/log';
import type { Piece } from '@quartermark/engine/readiness';
import { garageViewOf } from '../../garage/view-of.ts';
import type { EventView, GarageView } from '../../views.ts';
import type { World } from '../../world.ts';

/** Events that ended longer ago say nothing of what a car may do at the next. */
const EVENTS_SINCE_DAYS = 3 * 366;

/** What the pages of a garage's events share, read once, as of one moment. */
export type Room = {
  world: World;
  tx: Tx;
  row: GarageRow;
  garage: GarageView;
  shelf: Shelf;
  /** of the last three years and to come, by their first day */
  events: EventView[];
  /** components, equipment and people of the garage */
  pieces: GearRecord[];
  /** worked out the first time it is asked for; null: it is not in the garage (any more) */
  pieceOf(gearId: string): Promise<Piece | null>;
  /** what the garage asks in place of the usual */
  asks: ReadonlyMap<ReadyFor, Requirements>;
};

/**
 * Call in a `repeatable read` transaction, or with the garage locked.
 *
 * @returns null if there is no such garage
 */
export async function openRoom(world: World, tx: Tx, garageId: string): Promise<Room | null> {
  const row = await readGarage(tx, garageId);
  if (!row) return null;
  const garage = garageViewOf(row, world.clock.now());
  const { today } = garage;
  const [rows, gear, asks] = await Promise.all([
    listEvents(tx, garageId, addDays(today, -EVENTS_SINCE_DAYS)),
    listGear(tx, garageId),
    listRequirements(tx, garageId),
  ]);
  const pieces = await listGearRecords(tx, garageId, gear, today);
  const shelf = shelfOf(tx, row, today);
  const events = rows.flatMap(({ id: eventId, body, revision }) => {
    const event = eventInput.safeParse(body);
    if (event.success) return [{ eventId, event: event.data, revision }];
    world.log.error({ garageId, eventId }, 'an event could not be read');
    return [];
  });
  return {
    world,
    tx,
    row,
    garage,
    shelf,
    events,
    pieces,
    pieceOf: piecesOf(world, shelf, pieces),
    asks: new Map(
      asks.flatMap((one) => {
        const body = requirementsOf(one);
        return body === null ? [] : [[one.use, body] as const];
      }),
    ),
  };
}

function piecesOf({ log }: World, shelf: Shelf, records: readonly GearRecord[]): Room['pieceOf'] {
  const byId = new Map(records.map((record) => [record.row.id, record]));
  const worked = new Map<string, Promise<Piece | null>>();
  async function workOut(gearId: string): Promise<Piece | null> {
    const record = byId.get(gearId);
    if (record === undefined) return null;
    const [one] = await workOutPieces(shelf, [record]);
    if (one === undefined) return null;
    const { piece, problem } = one;
    if (problem !== null) log.error({ gearId, problem }, 'a piece could not be worked out');
    return piece;
  }
  return (gearId) => {
    const known = worked.get(gearId) ?? workOut(gearId);
    worked.set(gearId, known);
    return known;
  };
}
