import { Temporal } from 'temporal-polyfill';
import { z } from 'zod';
import { odometerReading } from './quantity.ts';

/** The longest note, in UTF-8 bytes. */
export const NOTE_BYTES_MAX = 64 * 1024;

/** Years that a car's log can speak of; keeps date arithmetic inside four-digit years. */
const YEAR_MIN = 1900;
const YEAR_MAX = 2199;

/** A civil date `YYYY-MM-DD` that exists, of the years 1900 to 2199. */
export const civilDate = z.string().superRefine((text, ctx) => {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) {
    ctx.addIssue({ code: 'custom', message: `"${text}" is not a date; write YYYY-MM-DD` });
    return;
  }
  const year = Number(text.slice(0, 4));
  if (year < YEAR_MIN || year > YEAR_MAX) {
    const message = `${text}: the year must be ${YEAR_MIN} to ${YEAR_MAX}; check the date`;
    ctx.addIssue({ code: 'custom', message });
    return;
  }
  try {
    Temporal.PlainDate.from(text, { overflow: 'reject' });
  } catch {
    ctx.addIssue({ code: 'custom', message: `${text} does not exist in the calendar` });
  }
});

/** A local time of day `HH:MM`, 00:00 to 23:59. */
export const localTime = z
  .string()
  .regex(/^([01]\d|2[0-3]):[0-5]\d$/, { error: 'the time must be HH:MM, from 00:00 to 23:59' });

/** An IANA time zone that this runtime knows. */
export const timeZone = z.string().superRefine((zone, ctx) => {
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(zone);
  } catch {
    ctx.addIssue({
      code: 'custom',
      message: `"${zone}" is not a time zone; use a name such as Europe/London`,
    });
  }
});

/** An identifier as files carry it; what the app makes itself is a UUIDv7. */
export const recordId = z.string().min(1).max(64);

export const note = z
  .string()
  .refine((text) => new TextEncoder().encode(text).length <= NOTE_BYTES_MAX, {
    error: `the note is longer than ${NOTE_BYTES_MAX / 1024} KB; shorten it or split it over two notes`,
  });

/** Text that is one line: a name, a place, a product. */
export const shortText = z.string().trim().min(1).max(200);

/** What goes wrong on a circuit or a road and must be looked into before the car is used again. */
export const incidentSort = z.enum([
  'off',
  'contact',
  'overRev',
  'softPedal',
  'overheating',
  'warningLamp',
  'lowOilPressure',
]);
export type IncidentSort = z.infer<typeof incidentSort>;

/** What every entry carries. The entry kinds are listed in DEVELOPERS.md, "The log". */
export const commonFields = {
  id: recordId,
  /** civil date in `zone` */
  on: civilDate,
  time: localTime.optional(),
  /** minute 0 or 1439 in the sort key, never shown as a time; only without `time` */
  dayOrder: z.enum(['beforeDriving', 'afterDriving']).optional(),
  zone: timeZone,
  car: recordId.optional(),
  /** the component, piece of equipment or person it is about, beside or instead of a car */
  gear: recordId.optional(),
  /** who drove, not who typed */
  driver: shortText.optional(),
  odometer: odometerReading.optional(),
  note: note.optional(),
  photos: z.array(recordId).max(20).optional(),
} as const;

/** What the server adds; never taken from a client. */
export const recordedFields = {
  /** per-garage ordinal, kept by an amended entry */
  recorded: z.int().nonnegative(),
  /** 1 for a new entry, raised by each amendment */
  revision: z.int().positive().default(1),
  /** true for a tombstone: the entry was removed and is never revived */
  removed: z.boolean().default(false),
} as const;
