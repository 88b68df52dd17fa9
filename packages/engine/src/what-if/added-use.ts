import { z } from 'zod';
import { type PlannedEvent, plannedEvent } from '../log/book.ts';
import { civilDate } from '../log/common.ts';
import { eventInput, eventUse } from '../log/event.ts';
import { EVENT_SORTS } from '../log/event-sort.ts';
import { plannedEventOf } from '../log/planned-event.ts';

const line = z.strictObject({
  sort: z.enum(EVENT_SORTS),
  start: civilDate,
  end: civilDate.optional(),
  use: eventUse,
});

/** Use that somebody asks about: as an event of the calendar would have it, with no name and no car. */
export const addedUse = line.pipe(
  // only what can be read is held against the rules of events
  line.superRefine((line, ctx) => {
    const asEvent = eventInput.safeParse({ ...line, name: NAMELESS, cars: [NAMELESS] });
    for (const { path, message } of asEvent.error?.issues ?? [])
      ctx.addIssue({ code: 'custom', path, message });
    if (asEvent.success && plannedEventOf(NAMELESS, asEvent.data, NAMELESS) === null)
      ctx.addIssue({
        code: 'custom',
        path: ['use'],
        message: 'use: say how much, such as 4 sessions; nothing is added without an amount',
      });
  }),
);
export type AddedUse = z.infer<typeof addedUse>;

const NAMELESS = 'added';

/** The id under which the answer speaks of the line at that place. @example addedId(0) // "added-1" */
export const addedId = (index: number): string => `${NAMELESS}-${index + 1}`;

/** A line as a book counts it ahead: attended for certain. */
export function plannedOf(added: AddedUse, index: number): PlannedEvent {
  const event = eventInput.parse({ ...added, name: NAMELESS, cars: [NAMELESS], attend: 1 });
  return plannedEvent.parse(plannedEventOf(addedId(index), event, NAMELESS));
}
