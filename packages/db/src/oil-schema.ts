import {
  date,
  doublePrecision,
  foreignKey,
  pgTable,
  primaryKey,
  text,
  uuid,
} from 'drizzle-orm/pg-core';
import { car } from './schema.ts';

const number = (name: string) => doublePrecision(name);

/** What a car's oil is compared with others by; written by the worker with the snapshot. L/1,000 km. */
export const oilLine = pgTable(
  'oil_line',
  {
    garageId: uuid('garage_id').notNull(),
    carId: uuid('car_id').notNull(),
    /** none: too few readings, then all rates are null */
    status: text('status', { enum: ['ok', 'weak', 'none'] }).notNull(),
    stop: text('stop', { enum: ['none', 'low', 'over', 'look'] }),
    /** fraction of the way from MIN to MAX */
    levelLow: number('level_low'),
    levelLikely: number('level_likely'),
    levelHigh: number('level_high'),
    roadLow: number('road_low'),
    roadLikely: number('road_likely'),
    roadHigh: number('road_high'),
    hardLow: number('hard_low'),
    hardLikely: number('hard_likely'),
    hardHigh: number('hard_high'),
    /** the same civil date a year before; null: nothing on record from then */
    agoOn: date('ago_on'),
    agoRoadLow: number('ago_road_low'),
    agoRoadLikely: number('ago_road_likely'),
    agoRoadHigh: number('ago_road_high'),
    agoHardLow: number('ago_hard_low'),
    agoHardLikely: number('ago_hard_likely'),
    agoHardHigh: number('ago_hard_high'),
    /** the road rate as a multiple of that a year before */
    changeLow: number('change_low'),
    changeLikely: number('change_likely'),
    changeHigh: number('change_high'),
    rise: text('rise', { enum: ['risen', 'watch'] }),
  },
  (t) => [
    primaryKey({ columns: [t.garageId, t.carId] }),
    foreignKey({ columns: [t.garageId, t.carId], foreignColumns: [car.garageId, car.id] }),
  ],
);
