import { addDays } from '@quartermark/engine/calendar';
import {
  type EventInput,
  eventInput,
  type ReadyFor,
  type Requirements,
} from '@quartermark/engine/log';
import type { Piece } from '@quartermark/engine/readiness';
import { type Shelf, shelfOf } from '../books/shelf.ts';
import type { Tx } from '../connect.ts';
import { listEvents } from '../events/read.ts';
import type { GarageRow } from '../garages/read.ts';
import { workOutPieces } from '../gear/pieces.ts';
import { listGear } from '../gear/read.ts';
import { type GearRecord, listGearRecords } from '../gear/records.ts';
import { listRequirements, requirementsOf } from '../requirements/read.ts';

/** Events that ended longer ago say nothing of what a car may do at the next. */
const EVENTS_SINCE_DAYS = 3 * 366;

export type CalendarEvent = { eventId: string; event: EventInput; revision: number };

/** Takes note of what could not be read, by the ids that it is found by. */
export type Complain = (found: Readonly<Record<string, string>>, message: string) => void;

/** Takes note in a log of failures. */
export const complainTo =
  (log: { error(fields: Record<string, unknown>, message: string): void }): Complain =>
  (found, message) =>
    log.error({ ...found }, message);

/** What the events of a garage share, read once, as of one moment. */
export type EventsRoom = {
  tx: Tx;
  row: GarageRow;
  /** civil date in the garage's zone */
  today: string;
  shelf: Shelf;
  /** of the last three years and to come, by their first day */
  events: CalendarEvent[];
  /** components, equipment and people of the garage */
  pieces: GearRecord[];
  /** worked out the first time it is asked for; null: it is not in the garage (any more) */
  pieceOf(gearId: string): Promise<Piece | null>;
  /** what the garage asks in place of the usual */
  asks: ReadonlyMap<ReadyFor, Requirements>;
  complain: Complain;
};

/** Call in a `repeatable read` transaction, or with the garage locked. */
export async function openEventsRoom(
  tx: Tx,
  row: GarageRow,
  today: string,
  complain: Complain,
): Promise<EventsRoom> {
  const { id: garageId } = row;
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
    complain({ garageId, eventId }, 'an event could not be read');
    return [];
  });
  return {
    tx,
    row,
    today,
    shelf,
    events,
    pieces,
    pieceOf: piecesOf(complain, shelf, pieces),
    asks: new Map(
      asks.flatMap((one) => {
        const body = requirementsOf(one);
        return body === null ? [] : [[one.use, body] as const];
      }),
    ),
    complain,
  };
}

function piecesOf(
  complain: Complain,
  shelf: Shelf,
  records: readonly GearRecord[],
): EventsRoom['pieceOf'] {
  const byId = new Map(records.map((record) => [record.row.id, record]));
  const worked = new Map<string, Promise<Piece | null>>();
  async function workOut(gearId: string): Promise<Piece | null> {
    const record = byId.get(gearId);
    if (record === undefined) return null;
    const [one] = await workOutPieces(shelf, [record]);
    if (one === undefined) return null;
    const { piece, problem } = one;
    if (problem !== null) complain({ gearId, problem }, 'a piece could not be worked out');
    return piece;
  }
  return (gearId) => {
    const known = worked.get(gearId) ?? workOut(gearId);
    worked.set(gearId, known);
    return known;
  };
}
