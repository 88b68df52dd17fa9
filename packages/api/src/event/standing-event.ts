import { type EventRow, readEvent } from '@quartermark/db';
import type { Writing } from '../command/run-command.ts';
import { notFoundHere, refuse } from '../refused.ts';
import { stale } from '../stale.ts';

/**
 * The event as it stands, if it may be changed from `baseRevision`.
 *
 * @throws Refused `notFound`, `removed` or `conflict`
 */
export async function standingEvent(
  { tx, garage }: Writing,
  eventId: string,
  baseRevision: number,
): Promise<EventRow> {
  const row = await readEvent(tx, garage.id, eventId);
  if (!row) throw notFoundHere('event', 'eventId');
  if (row.removedAt)
    throw refuse(
      'removed',
      'eventId',
      'This event was taken off the calendar; what you wrote is still in the form. Add it as a new one.',
    );
  if (row.revision !== baseRevision)
    throw await stale(tx, garage.id, 'The event was', baseRevision, row);
  return row;
}
