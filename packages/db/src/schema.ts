import type { Analysis } from '@quartermark/engine';
import type { Lane } from '@quartermark/engine/display';
import type {
  CarProfile,
  EntryInput,
  EventInput,
  GearInput,
  ItemInput,
  OrderInput,
  SpecSheet,
} from '@quartermark/engine/log';
import type { CarReadiness } from '@quartermark/engine/readiness';
import {
  bigint,
  boolean,
  customType,
  date,
  foreignKey,
  index,
  integer,
  jsonb,
  pgTable,
  primaryKey,
  text,
  unique,
  uuid,
} from 'drizzle-orm/pg-core';
import { changed, garageId, instant, revision } from './columns.ts';

/**
 * Tables of the garage, as queries see them; migrations/ makes them, with the checks, grants and
 * policies that are not repeated here. Primary keys are (garage_id, id) and foreign keys composite, so that one
 * garage's ids can neither block nor reveal another's. All of the first group stand under row-level
 * security and are reachable only through `withGarage`; the second group holds ids, versions and times
 * only and is granted per role.
 */

const bytea = customType<{ data: Uint8Array; driverData: Uint8Array }>({ dataType: () => 'bytea' });

export const garage = pgTable('garage', {
  /** = organization.id */
  id: uuid('id').primaryKey(),
  name: text('name').notNull(),
  zone: text('zone').notNull(),
  hemisphere: text('hemisphere', { enum: ['N', 'S'] }),
  /** units the garage shows where a car or an entry does not say otherwise */
  distanceUnit: text('distance_unit', { enum: ['km', 'mi'] }).notNull(),
  volumeUnit: text('volume_unit', { enum: ['l', 'usQt', 'impQt'] }).notNull(),
  demo: boolean('demo').notNull().default(false),
  /** the last `recorded` ordinal given out */
  recorded: bigint('recorded', { mode: 'number' }).notNull().default(0),
  revision: revision(),
  ...changed(),
});

export const car = pgTable(
  'car',
  {
    garageId: garageId(),
    id: uuid('id').notNull(),
    name: text('name').notNull(),
    unit: text('unit', { enum: ['km', 'mi'] }).notNull(),
    odoDigits: integer('odo_digits'),
    profile: jsonb('profile').$type<CarProfile>().notNull(),
    inputVersion: bigint('input_version', { mode: 'number' }).notNull().default(1),
    revision: revision(),
    addedAt: instant('added_at').notNull(),
    ...changed(),
    removedAt: instant('removed_at'),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.id] })],
);

const ofCar = (t: { garageId: never; carId: never }) =>
  foreignKey({ columns: [t.garageId, t.carId], foreignColumns: [car.garageId, car.id] });

/** What has items or a life of its own beside a car: components, equipment, people. */
export const gear = pgTable(
  'gear',
  {
    garageId: garageId(),
    id: uuid('id').notNull(),
    kind: text('kind', { enum: ['component', 'equipment', 'person'] }).notNull(),
    body: jsonb('body').$type<GearInput>().notNull(),
    revision: revision(),
    addedAt: instant('added_at').notNull(),
    ...changed(),
    removedAt: instant('removed_at'),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.id] })],
);

const ofGear = (t: { garageId: never; gearId: never }) =>
  foreignKey({ columns: [t.garageId, t.gearId], foreignColumns: [gear.garageId, gear.id] });

export const item = pgTable(
  'item',
  {
    garageId: garageId(),
    id: uuid('id').notNull(),
    /** exactly one of the two owns it */
    carId: uuid('car_id'),
    gearId: uuid('gear_id'),
    body: jsonb('body').$type<ItemInput>().notNull(),
    /** place in the car's list, as added */
    position: integer('position').notNull(),
    revision: revision(),
    ...changed(),
    removedAt: instant('removed_at'),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.id] }), ofCar(t as never), ofGear(t as never)],
);

export const layUp = pgTable(
  'lay_up',
  {
    garageId: garageId(),
    id: uuid('id').notNull(),
    carId: uuid('car_id').notNull(),
    startOn: date('start_on').notNull(),
    endOn: date('end_on'),
    /** the `layUp` entry that opened it and the `wakeUp` entry that closed it */
    openedBy: uuid('opened_by'),
    closedBy: uuid('closed_by'),
    revision: revision(),
    removedAt: instant('removed_at'),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.id] }), ofCar(t as never)],
);

/** A lay-up that is meant to come; what happened is an entry. */
export const plannedLayUp = pgTable(
  'planned_lay_up',
  {
    garageId: garageId(),
    id: uuid('id').notNull(),
    carId: uuid('car_id').notNull(),
    startOn: date('start_on').notNull(),
    endOn: date('end_on'),
    revision: revision(),
    ...changed(),
    removedAt: instant('removed_at'),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.id] }), ofCar(t as never)],
);

/** Parts that were ordered for an item. */
export const partOrder = pgTable(
  'part_order',
  {
    garageId: garageId(),
    id: uuid('id').notNull(),
    itemId: uuid('item_id').notNull(),
    body: jsonb('body').$type<OrderInput>().notNull(),
    revision: revision(),
    ...changed(),
    removedAt: instant('removed_at'),
  },
  (t) => [
    primaryKey({ columns: [t.garageId, t.id] }),
    foreignKey({ columns: [t.garageId, t.itemId], foreignColumns: [item.garageId, item.id] }),
  ],
);

export const entry = pgTable(
  'entry',
  {
    garageId: garageId(),
    id: uuid('id').notNull(),
    /** null: an entry of the garage, not of a car */
    carId: uuid('car_id'),
    /** the component, equipment or person it is about: the body's `gear` or `component` */
    gearId: uuid('gear_id'),
    recorded: bigint('recorded', { mode: 'number' }).notNull(),
    on: date('on').notNull(),
    kind: text('kind').notNull(),
    /** as typed: numbers keep their text and unit */
    body: jsonb('body').$type<EntryInput>().notNull(),
    revision: revision(),
    recordedAt: instant('recorded_at').notNull(),
    recordedBy: uuid('recorded_by').notNull(),
    /** a tombstone: replaying the record never revives it */
    removedAt: instant('removed_at'),
  },
  (t) => [
    primaryKey({ columns: [t.garageId, t.id] }),
    ofCar(t as never),
    ofGear(t as never),
    unique().on(t.garageId, t.recorded),
    index('entry_of_car').on(t.garageId, t.carId, t.on, t.recorded),
  ],
);

/** Every body an entry ever had, the present one included, with who wrote it. */
export const entryRevision = pgTable(
  'entry_revision',
  {
    garageId: garageId(),
    entryId: uuid('entry_id').notNull(),
    revision: integer('revision').notNull(),
    /** null: this revision removed the entry */
    body: jsonb('body').$type<EntryInput>(),
    at: instant('at').notNull(),
    by: uuid('by').notNull(),
    commandId: uuid('command_id').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.garageId, t.entryId, t.revision] }),
    foreignKey({ columns: [t.garageId, t.entryId], foreignColumns: [entry.garageId, entry.id] }),
  ],
);

/** What was asked, so that asking twice is answered and not done twice. */
export const command = pgTable(
  'command',
  {
    garageId: garageId(),
    commandId: uuid('command_id').notNull(),
    verb: text('verb').notNull(),
    payloadHash: text('payload_hash').notNull(),
    result: jsonb('result').notNull(),
    at: instant('at').notNull(),
    by: uuid('by').notNull(),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.commandId] })],
);

/** Pictures of findings; already stripped of everything but the picture. */
export const photo = pgTable(
  'photo',
  {
    garageId: garageId(),
    id: uuid('id').notNull(),
    /** media type of both pictures */
    type: text('type').notNull(),
    width: integer('width').notNull(),
    height: integer('height').notNull(),
    picture: bytea('picture').notNull(),
    /** for lists */
    small: bytea('small').notNull(),
    addedAt: instant('added_at').notNull(),
    addedBy: uuid('added_by').notNull(),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.id] })],
);

/** Days on the garage's calendar. */
export const event = pgTable(
  'event',
  {
    garageId: garageId(),
    id: uuid('id').notNull(),
    startOn: date('start_on').notNull(),
    endOn: date('end_on').notNull(),
    body: jsonb('body').$type<EventInput>().notNull(),
    revision: revision(),
    ...changed(),
    removedAt: instant('removed_at'),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.id] })],
);

/** A car's spec sheet, one document that is changed as a whole. */
export const spec = pgTable(
  'spec',
  {
    garageId: garageId(),
    carId: uuid('car_id').notNull(),
    body: jsonb('body').$type<SpecSheet>().notNull(),
    revision: revision(),
    ...changed(),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.carId] }), ofCar(t as never)],
);

/** The overview's row of a car: small, typed, one page of it is one index range. */
export const snapshot = pgTable(
  'snapshot',
  {
    garageId: garageId(),
    carId: uuid('car_id').notNull(),
    inputVersion: bigint('input_version', { mode: 'number' }).notNull(),
    engineVersion: integer('engine_version').notNull(),
    snapshotSchema: integer('snapshot_schema').notNull(),
    asOf: date('as_of').notNull(),
    computedAt: instant('computed_at').notNull(),
    /** smaller is more urgent; the overview's sort key with car_id */
    urgency: integer('urgency').notNull(),
    laidUp: boolean('laid_up').notNull(),
    overdue: integer('overdue').notNull(),
    dueSoon: integer('due_soon').notNull(),
    notOnRecord: integer('not_on_record').notNull(),
    status: text('status', { enum: ['inUse', 'laidUp', 'inPieces', 'away', 'sold'] })
      .notNull()
      .default('inUse'),
    /** the worst of what forbids driving; null = nothing on record does */
    stop: text('stop', { enum: ['doNotDrive', 'incident', 'wheelsOff', 'wakeSteps', 'inPieces'] }),
    /** what the list shows of the car, at most 1 KB */
    lane: jsonb('lane').$type<Lane>().notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.garageId, t.carId] }),
    ofCar(t as never),
    index('snapshot_by_urgency').on(t.garageId, t.urgency, t.carId),
  ],
);

/** The whole analysis; never read by the overview. */
export const snapshotDetail = pgTable(
  'snapshot_detail',
  {
    garageId: garageId(),
    carId: uuid('car_id').notNull(),
    inputVersion: bigint('input_version', { mode: 'number' }).notNull(),
    detail: jsonb('detail').$type<Analysis>().notNull(),
    /** readiness for the road, on the day of the analysis; null: not in use */
    road: jsonb('road').$type<CarReadiness>(),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.carId] }), ofCar(t as never)],
);

/** A recompute that failed for good, for a person to see and retry. */
export const failure = pgTable(
  'failure',
  {
    garageId: garageId(),
    carId: uuid('car_id').notNull(),
    since: instant('since').notNull(),
    attempts: integer('attempts').notNull(),
    cause: text('cause').notNull(),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.carId] }), ofCar(t as never)],
);

// ---- without row-level security: ids, versions and times only, granted per role ----

export const outbox = pgTable('outbox', {
  id: bigint('id', { mode: 'number' }).primaryKey().generatedAlwaysAsIdentity(),
  garageId: garageId(),
  carId: uuid('car_id').notNull(),
  inputVersion: bigint('input_version', { mode: 'number' }).notNull(),
  at: instant('at').notNull().defaultNow(),
  publishedAt: instant('published_at'),
});

/** What is wanted and what is done of each car; the reconciler compares the two. */
export const carWork = pgTable(
  'car_work',
  {
    garageId: garageId(),
    carId: uuid('car_id').notNull(),
    wanted: bigint('wanted', { mode: 'number' }).notNull(),
    done: bigint('done', { mode: 'number' }).notNull().default(0),
    doneEngine: integer('done_engine').notNull().default(0),
    attempts: integer('attempts').notNull().default(0),
    nextTryAt: instant('next_try_at').notNull().defaultNow(),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.carId] })],
);

export const garageDay = pgTable('garage_day', {
  garageId: uuid('garage_id').primaryKey(),
  zone: text('zone').notNull(),
  /** the instant at which the garage's next civil day begins */
  nextDayAt: instant('next_day_at').notNull(),
  /** the latest civil date that has had its letters; null: none yet */
  letterDate: date('letter_date'),
  /** from when on the next letters may be composed */
  composeAt: instant('compose_at').notNull().default(new Date(0)),
});

/** One row: the setup token (hashed) while no owner exists, and when the owner was made. */
export const setup = pgTable('setup', {
  id: integer('id').primaryKey(),
  tokenHash: bytea('token_hash'),
  ownerAt: instant('owner_at'),
});
