import { z } from 'zod';
import { civilDate, incidentSort, localTime, recordId, shortText } from './common.ts';
import { odometerReading } from './quantity.ts';

export const USE_CLASSES = ['road', 'touring', 'circuit', 'strip', 'autocross'] as const;
export type UseClass = (typeof USE_CLASSES)[number];

/** Measures that grow with use. */
export const AMOUNT_MEASURES = ['km', 'hours', 'sessions', 'launches'] as const;
export type AmountMeasure = (typeof AMOUNT_MEASURES)[number];

/** Measures that grow with the calendar. `date` is a day printed on a label. */
export const CALENDAR_MEASURES = ['months', 'days', 'date'] as const;
export type CalendarMeasure = (typeof CALENDAR_MEASURES)[number];
export type Measure = AmountMeasure | CalendarMeasure;

const positive = (name: string, max: number) =>
  z.number().positive(`${name}: must be more than zero`).max(max, `${name}: at most ${max}`);

/** How much a unit of use counts towards a limit, per class; 1 where none is given. */
export const weights = z.partialRecord(
  z.enum(USE_CLASSES),
  z.number().min(0, 'weight: must not be negative').max(1000),
);

export const limit = z.discriminatedUnion('measure', [
  z.strictObject({
    measure: z.literal('km'),
    /** as typed: the limit comes back in the unit it was given in */
    value: positive('distance limit', 5_000_000),
    unit: z.enum(['km', 'mi']),
    weights: weights.optional(),
  }),
  z.strictObject({
    measure: z.literal('hours'),
    value: positive('hours limit', 100_000),
    weights: weights.optional(),
  }),
  z.strictObject({
    measure: z.literal('sessions'),
    value: positive('sessions limit', 100_000),
    weights: weights.optional(),
  }),
  z.strictObject({
    measure: z.literal('launches'),
    value: positive('launches limit', 100_000),
    weights: weights.optional(),
  }),
  z.strictObject({ measure: z.literal('months'), value: z.int().positive().max(600) }),
  z.strictObject({ measure: z.literal('days'), value: z.int().positive().max(20_000) }),
  z.strictObject({ measure: z.literal('date'), value: civilDate }),
]);
export type Limit = z.infer<typeof limit>;

/** Hard use switches shorter limits on. `basis: "limit"` cannot flip back and is the default. */
export const severe = z.strictObject({
  classes: z.array(z.enum(USE_CLASSES)).min(1),
  measure: z.enum(AMOUNT_MEASURES).default('km'),
  share: z.number().positive().max(1),
  basis: z.enum(['limit', 'used']).default('limit'),
  limits: z.array(limit).min(1).max(7),
});

/** The same as a service entry: when the item was last known to be good. */
export const baseline = z.strictObject({
  on: civilDate,
  time: localTime.optional(),
  odometer: odometerReading.optional(),
  /** true: all use since then is in the log */
  historyComplete: z.boolean().optional(),
});

/** Engine oil and its filter are renewed by an `oilChange` entry as well as by a service. */
export const itemRole = z.enum([
  'engineOil',
  'oilFilter',
  'brakeFluid',
  'pads',
  'tyres',
  'wheelFasteners',
  'other',
]);

/** What makes an item due at once, whatever its limits say, until it is done again. */
export const triggers = z.strictObject({
  /** an incident of one of these sorts */
  incidents: z.array(incidentSort).min(1).max(7).optional(),
  /** a session whose oil was hotter than this, by the owner's or the maker's limit */
  oilHotterThanC: z.number().min(60).max(250).optional(),
  /** wheels were off and their torque is not on record since */
  wheelsOff: z.boolean().optional(),
});

export const itemFields = {
  name: shortText,
  role: itemRole.default('other'),
  limits: z.array(limit).min(1, 'limits: give at least one').max(7),
  severe: severe.optional(),
  baseline: baseline.optional(),
  /** a one-off follow-up (run-in oil, a leak look after 50 km): done once, it is over */
  once: z.boolean().optional(),
  /** "treat as due now": due since this day, until it is done on that day or later */
  dueSince: civilDate.optional(),
  triggers: triggers.optional(),
  /** days before the limit at which the person wants to hear of it */
  warnDays: z.int().min(0).max(365).default(14),
  /** days to get the parts; 0 if on the shelf */
  leadDays: z.int().min(0).max(365).default(0),
  /** whose value the limits are: the manual's, your own, common practice ... */
  source: shortText.optional(),
} as const;

/** What a form sends for an item. */
export const itemInput = z.strictObject(itemFields);
export const item = z.strictObject({ id: recordId, ...itemFields });
export type ItemInput = z.infer<typeof itemInput>;
export type ItemDraft = z.input<typeof itemInput>;
export type Item = z.infer<typeof item>;
