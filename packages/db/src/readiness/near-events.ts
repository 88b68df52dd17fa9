import { addDays } from '@quartermark/engine/calendar';
import type { CarReadiness } from '@quartermark/engine/readiness';
import { sql } from 'drizzle-orm';
import { listAcceptances } from '../acceptances/read.ts';
import type { Tx } from '../connect.ts';
import type { GarageRow } from '../garages/read.ts';
import { namesOf } from '../people/person.ts';
import { carAsked, readinessAt } from './car-asked.ts';
import {
  type CalendarEvent,
  type Complain,
  type EventsRoom,
  openEventsRoom,
} from './events-room.ts';

/** Verdicts are told of events that begin so soon: of later ones too much may change. */
const EVENT_AHEAD_DAYS = 14;

/** How a car stands for one of them; days inclusive. */
export type Standing = {
  event: { id: string; name: string; start: string; end: string };
  readiness: CarReadiness;
};

type Going = (carId: string) => Promise<Standing[]>;

/**
 * How cars stand for the events that are near; null: there is none, and no book is opened. Call in a
 * `repeatable read` transaction.
 *
 * @param today civil date in the garage's zone
 */
export async function readinessOfEvents(
  tx: Tx,
  row: GarageRow,
  today: string,
  complain: Complain,
): Promise<Going | null> {
  const near = await tx.execute<{ near: boolean }>(sql`
    select exists (select 1 from event where garage_id = ${row.id} and removed_at is null
      and end_on >= ${today}::date and start_on <= ${addDays(today, EVENT_AHEAD_DAYS)}::date) as near`);
  if (near[0]?.near !== true) return null;
  const room = await openEventsRoom(tx, row, today, complain);
  const events = room.events.filter(({ event: { start, end = start } }) => {
    return end >= today && start <= addDays(today, EVENT_AHEAD_DAYS);
  });
  const acceptances = await listAcceptances(
    tx,
    row.id,
    events.map(({ eventId }) => eventId),
  );
  const givers = acceptances.map(({ acceptedBy }) => acceptedBy);
  const names = await namesOf(tx, row.id, givers);
  return async (carId) => {
    const found: (Standing | null)[] = [];
    for (const view of events)
      if (view.event.cars.includes(carId)) found.push(await standingAt(room, view, carId));
    return found.flatMap((standing) => standing ?? []);
  };

  async function standingAt(at: EventsRoom, view: CalendarEvent, carId: string) {
    const given = acceptances.filter(({ eventId }) => eventId === view.eventId);
    const car = await carAsked(at, view, carId, { acceptances: given, names });
    const { name, start, end = start } = view.event;
    const event = { id: view.eventId, name, start, end };
    return car && { event, readiness: readinessAt(at, view, car) };
  }
}
