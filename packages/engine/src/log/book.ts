import { z } from 'zod';
import { civilDate, recordId, shortText, timeZone } from './common.ts';
import { entry } from './entry.ts';
import { ATTEND_USUAL } from './event.ts';
import { item, USE_CLASSES } from './item.ts';
import { bookOrder } from './order.ts';

/** What is known of a car beyond its name; drives proposals and cautions. All of it is optional. */
export const carProfile = z.strictObject({
  /** as its people say; laid up, lent and sold also follow from the log */
  status: z.enum(['inUse', 'inPieces', 'away', 'sold']).optional(),
  sump: z.enum(['wet', 'dry']).optional(),
  induction: z.enum(['natural', 'forced']).optional(),
  drive: z.enum(['combustion', 'hybrid', 'electric']).optional(),
  fuel: z.enum(['petrol', 'diesel', 'other']).optional(),
  octane: z.number().min(60).max(130).optional(),
  gearbox: shortText.optional(),
  wheelFixing: z.enum(['bolt', 'stud', 'centreLock']).optional(),
  discMaterial: z.enum(['iron', 'carbonCeramic']).optional(),
  airSuspension: z.boolean().optional(),
  noiseDb: z.number().min(0).max(200).optional(),
  liftPoints: shortText.optional(),
  /** litres between MIN and MAX */
  oilSpanL: z.number().positive().max(20).optional(),
  /** litres in the engine at MAX */
  oilCapacityL: z.number().positive().max(60).optional(),
  dipstick: z
    .strictObject({
      state: z.enum(['hotIdle', 'hotStopped', 'cold']),
      minutesAfterStop: z.number().min(0).max(1440).optional(),
    })
    .optional(),
  oilGrade: shortText.optional(),
  oilApproval: shortText.optional(),
  /** use of oil on the road, in L/1,000 km, from which its owner wants something done */
  oilLimitLPer1000Km: z.number().positive().max(10).optional(),
});
export type CarProfile = z.infer<typeof carProfile>;

export const carFields = {
  name: shortText,
  /** unit of the odometer */
  unit: z.enum(['km', 'mi']),
  /** digits the odometer shows before it rolls over to zero; unknown where not given */
  odoDigits: z.int().min(4).max(7).optional(),
  profile: carProfile.default({}),
} as const;
export const carInput = z.strictObject(carFields);
export type CarInput = z.infer<typeof carInput>;
export type CarDraft = z.input<typeof carInput>;

/** A storage window, both ends inclusive; without `end` it is open. */
export const layUpWindow = z.strictObject({
  id: recordId,
  start: civilDate,
  end: civilDate.optional(),
});
export type LayUpWindow = z.infer<typeof layUpWindow>;

export const plannedEvent = z.strictObject({
  id: recordId,
  name: shortText.optional(),
  start: civilDate,
  end: civilDate.optional(),
  use: z.enum(USE_CLASSES),
  km: z.number().min(0).optional(),
  hours: z.number().min(0).optional(),
  sessions: z.number().min(0).optional(),
  launches: z.number().min(0).optional(),
  attend: z.number().min(0).max(1).default(ATTEND_USUAL),
});
export type PlannedEvent = z.infer<typeof plannedEvent>;

/** One car's book as a file: what `npm run export` writes and `npm run analyse` reads. */
export const book = z.strictObject({
  format: z.literal('log/1'),
  /** the day the book speaks of, in the garage's zone */
  asOf: civilDate,
  garage: z.strictObject({ zone: timeZone }),
  car: z.strictObject({
    id: recordId,
    ...carFields,
    name: shortText.optional(),
    hemisphere: z.enum(['N', 'S']).optional(),
    /** average road speed for hours without an hour meter; null switches that off */
    roadKmh: z.number().positive().nullable().optional(),
  }),
  items: z.array(item).max(500),
  layUps: z.array(layUpWindow).max(500),
  planned: z.array(plannedEvent).max(500),
  /** parts ordered for its items, where there are any */
  orders: z.array(bookOrder).max(2000).optional(),
  /** tombstones included, in any order */
  entries: z.array(entry),
});
export type Book = z.infer<typeof book>;
export type BookDraft = z.input<typeof book>;
