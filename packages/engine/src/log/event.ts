import { z } from 'zod';
import { civilDate, recordId, shortText } from './common.ts';
import { EVENT_SORTS, type EventSort } from './event-sort.ts';
import { distance } from './quantity.ts';
import { requirements } from './requirements.ts';

const many = (name: string, max: number) =>
  z
    .number(`${name}: must be a number`)
    .min(0, `${name}: must not be negative`)
    .max(max, `${name}: at most ${max}`);

/** The most that can be planned of a measure; a distance in its own unit. */
export const USE_MOST = { distance: 50_000, hours: 240, sessions: 300, launches: 600 } as const;

/** What each car that goes is to do there, all days of the event together. */
export const eventUse = z.strictObject({
  /** as typed; without the way there and back, which is everyday use */
  distance: distance.optional(),
  hours: many('hours', USE_MOST.hours).optional(),
  sessions: many('sessions', USE_MOST.sessions).optional(),
  launches: many('launches', USE_MOST.launches).optional(),
});
export type EventUse = z.infer<typeof eventUse>;
export type UseMeasure = keyof EventUse;

/** In what the use of an event can be planned, the usual measure of its sort first. */
export const USE_MEASURES: Readonly<Record<EventSort, readonly UseMeasure[]>> = {
  circuit: ['sessions', 'distance', 'hours'],
  autocross: ['sessions', 'distance', 'hours'],
  dragStrip: ['launches', 'distance'],
  roadTrip: ['distance', 'hours'],
  meet: ['distance'],
};

/** Somebody who has entered an event goes nine times in ten (common practice, no source). */
export const ATTEND_USUAL = 0.9;

/** A day or some days on the garage's calendar. */
export const eventInput = z
  .strictObject({
    name: shortText,
    sort: z.enum(EVENT_SORTS),
    start: civilDate,
    end: civilDate.optional(),
    /** in the owner's own words */
    place: shortText.optional(),
    /** cars that go; none named: whichever is ready, and it counts for no car's dates */
    cars: z.array(recordId).max(100).default([]),
    /** nothing said: nothing is counted ahead */
    use: eventUse.optional(),
    /** how likely it is that the cars go, 0..1 */
    attend: z
      .number('attend: must be a number')
      .min(0, 'attend: must not be negative')
      .max(1, 'attend: at most 1, which is certain')
      .default(ATTEND_USUAL),
    /** who drives which car; people are those of the garage */
    crew: z
      .array(z.strictObject({ car: recordId, people: z.array(recordId).min(1).max(20) }))
      .max(100)
      .optional(),
    /** the way there: one way, and the cars that go on a trailer; others are driven */
    travel: z
      .strictObject({
        distance: distance.optional(),
        trailered: z.array(recordId).max(100).default([]),
      })
      .optional(),
    /** for this event alone; absent: the garage's for its sort, else the usual ones */
    requirements: requirements.optional(),
  })
  .refine(({ start, end }) => end === undefined || end >= start, {
    path: ['end'],
    error: 'end: the last day is before the first; swap them or leave it empty',
  })
  .superRefine(({ sort, use }, ctx) => {
    const known = USE_MEASURES[sort];
    for (const measure of Object.keys(use ?? {}) as UseMeasure[])
      if (use?.[measure] !== undefined && !known.includes(measure))
        ctx.addIssue({
          code: 'custom',
          path: ['use', measure],
          message: `${measure}: not counted at an event of this sort; give ${known.join(' or ')} or leave it out`,
        });
  });
export type EventInput = z.infer<typeof eventInput>;
export type EventDraft = z.input<typeof eventInput>;
