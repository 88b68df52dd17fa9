import type { Trigger } from '@quartermark/engine';
import type { OrderBy } from '@quartermark/engine/orders';
import {
  boolean,
  date,
  doublePrecision,
  foreignKey,
  integer,
  jsonb,
  pgTable,
  primaryKey,
  text,
  uuid,
} from 'drizzle-orm/pg-core';
import { garageId } from './columns.ts';
import { car } from './schema.ts';

/** Tables of what falls due, and of what was said of it; written by the worker with the snapshot. */
const ofCar = (t: { garageId: never; carId: never }) =>
  foreignKey({ columns: [t.garageId, t.carId], foreignColumns: [car.garageId, car.id] });

/** One item of a car in the garage's list of what falls due; written with the snapshot. */
export const dueLine = pgTable(
  'due_line',
  {
    garageId: garageId(),
    carId: uuid('car_id').notNull(),
    itemId: uuid('item_id').notNull(),
    name: text('name').notNull(),
    /** null: nothing forecasts it */
    state: text('state', { enum: ['unknown', 'overdue', 'dueSoon', 'fine'] }),
    reasonCode: text('reason_code', {
      enum: ['noBaseline', 'lowerBound', 'trigger', 'asked', 'doneOnce'],
    }),
    causeCode: text('cause_code').$type<Trigger['code']>(),
    causeOn: date('cause_on'),
    /** what runs out first, as in a lane: km, hours and counts, the unit is the one that was typed */
    binding: text('binding'),
    limit: doublePrecision('limit_amount'),
    remaining: doublePrecision('remaining'),
    unit: text('unit', { enum: ['km', 'mi'] }),
    day: date('day'),
    known: boolean('known').notNull(),
    early: date('early'),
    likely: date('likely'),
    late: date('late'),
    /** the dates lie ahead and may be said; not so of what is overdue or not wholly known */
    ahead: boolean('ahead').notNull(),
    readingNeeded: boolean('reading_needed').notNull(),
    overdueSince: date('overdue_since'),
    lastDone: date('last_done'),
    leadDays: integer('lead_days').notNull(),
    orderBy: date('order_by'),
    parts: jsonb('parts').$type<OrderBy>(),
    /** the car is not in use: laid up, in pieces, away or sold */
    apart: boolean('apart').notNull(),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.carId, t.itemId] }), ofCar(t as never)],
);

/** What a forecast said of an item, at most once an ISO week; never changed. */
export const said = pgTable(
  'said',
  {
    garageId: garageId(),
    carId: uuid('car_id').notNull(),
    itemId: uuid('item_id').notNull(),
    /** Monday of the week */
    week: date('week').notNull(),
    saidOn: date('said_on').notNull(),
    /** the service it counts from; null for a label that was never renewed here */
    since: date('since'),
    early: date('early').notNull(),
    likely: date('likely').notNull(),
    /** null: beyond the three years that a forecast looks ahead */
    late: date('late'),
    binding: text('binding'),
    /** the limits it was said of, as canonical JSON */
    limits: text('limits').notNull(),
    engineVersion: integer('engine_version').notNull(),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.carId, t.itemId, t.week] }), ofCar(t as never)],
);
