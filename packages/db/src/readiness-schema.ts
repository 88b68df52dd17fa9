import { READY_FOR, type Requirements } from '@quartermark/engine/log';
import {
  boolean,
  foreignKey,
  index,
  jsonb,
  pgTable,
  primaryKey,
  text,
  uuid,
} from 'drizzle-orm/pg-core';
import { changed, garageId, instant, revision } from './columns.ts';
import { car, event } from './schema.ts';

/** Tables of what is asked of a car, what somebody took upon himself, and what was ticked off. */
const ofCar = (t: { garageId: never; carId: never }) =>
  foreignKey({ columns: [t.garageId, t.carId], foreignColumns: [car.garageId, car.id] });
const ofEvent = (t: { garageId: never; eventId: never }) =>
  foreignKey({ columns: [t.garageId, t.eventId], foreignColumns: [event.garageId, event.id] });

/** What a garage asks of a car for a use, in place of the usual. */
export const requirementSet = pgTable(
  'requirement_set',
  {
    garageId: garageId(),
    use: text('use', { enum: READY_FOR }).notNull(),
    /** null: the usual ones again */
    body: jsonb('body').$type<Requirements>(),
    revision: revision(),
    ...changed(),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.use] })],
);

/** A need that somebody took upon himself for one event; withdrawn, never deleted. */
export const acceptance = pgTable(
  'acceptance',
  {
    garageId: garageId(),
    id: uuid('id').notNull(),
    eventId: uuid('event_id').notNull(),
    carId: uuid('car_id').notNull(),
    need: text('need').notNull(),
    because: text('because').notNull(),
    acceptedAt: instant('accepted_at').notNull(),
    acceptedBy: uuid('accepted_by').notNull(),
    withdrawnAt: instant('withdrawn_at'),
    withdrawnBy: uuid('withdrawn_by'),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.id] }), ofEvent(t as never), ofCar(t as never)],
);

/** Somebody said that a line of an event's work is done, or that it is not; never changed. */
export const workTick = pgTable(
  'work_tick',
  {
    garageId: garageId(),
    id: uuid('id').notNull(),
    eventId: uuid('event_id').notNull(),
    carId: uuid('car_id'),
    line: text('line').notNull(),
    done: boolean('done').notNull(),
    /** by the device's clock; it may have waited for a signal */
    madeAt: instant('made_at').notNull(),
    at: instant('at').notNull(),
    by: uuid('by').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.garageId, t.id] }),
    ofEvent(t as never),
    ofCar(t as never),
    index('work_tick_of_event').on(t.garageId, t.eventId, t.at),
  ],
);
