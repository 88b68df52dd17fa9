import { z } from 'zod';
import { civilDate, recordId, shortText } from './common.ts';

export const EVENT_SORTS = ['meet', 'roadTrip', 'circuit', 'dragStrip', 'autocross'] as const;
export type EventSort = (typeof EVENT_SORTS)[number];

/** A day or some days on the garage's calendar. */
export const eventInput = z
  .strictObject({
    name: shortText,
    sort: z.enum(EVENT_SORTS),
    start: civilDate,
    end: civilDate.optional(),
    /** in the owner's own words */
    place: shortText.optional(),
    /** cars that go; none named: whichever is ready */
    cars: z.array(recordId).max(100).default([]),
  })
  .refine(({ start, end }) => end === undefined || end >= start, {
    path: ['end'],
    error: 'end: the last day is before the first; swap them or leave it empty',
  });
export type EventInput = z.infer<typeof eventInput>;
export type EventDraft = z.input<typeof eventInput>;
