import { z } from 'zod';
import { civilDate, recordId, shortText } from './common.ts';
import { EVENT_SORTS } from './event-sort.ts';
import { itemRole } from './item.ts';

/** What a car can be asked to be ready for: the road, today, or an event of a sort. */
export const READY_FOR = ['road', ...EVENT_SORTS] as const;
export type ReadyFor = (typeof READY_FOR)[number];

/** Needs that hold whatever a garage or an event asks, and that nobody can accept. */
export const FIXED_NEEDS = ['doNotDrive', 'incident', 'openJob', 'wheels'] as const;

/** Needs that a garage can weigh by sort of event, and an event for itself. */
export const WEIGHED_NEEDS = [
  /** the car is here and in use: not laid up, lent or sold */
  'here',
  /** what it does there is said */
  'plannedUse',
  /** the odometer was read lately */
  'odometer',
  /** events that are over are on record */
  'lastEvent',
  /** findings "before hard use" */
  'finding',
  /** limits of its items last until the event is over and the car is home; one need per item */
  'limit',
  /** what must be watched is watched: an item of that role exists; one need per role */
  'watched',
  /** the oil level is between the marks and nothing about it is odd */
  'oilLevel',
  /** begun at MAX, the oil stays above the floor until the end */
  'oilLasts',
  /** the stick was looked at within the week */
  'oilLook',
  /** torque is on record and checked again where it has to be */
  'torque',
  /** pads above the least at the end; one need per set */
  'pads',
  /** pads thick enough to start a day of hard use; one need per set */
  'padStart',
  /** pads and discs bedded; one need per part */
  'bedding',
  /** tread above the least and the law's at the end; one need per set */
  'tyres',
  /** age by the date code; one need per set */
  'tyreAge',
  /** looked over by somebody within so many days before */
  'inspection',
  /** no louder than the organiser allows */
  'noise',
  /** who drives is said */
  'drivers',
  /** dated gear and papers of those who drive; one need per person and item */
  'safetyGear',
] as const;
export type WeighedNeed = (typeof WEIGHED_NEEDS)[number];
export type NeedKind = (typeof FIXED_NEEDS)[number] | WeighedNeed;

export const NEED_WEIGHTS = ['blocking', 'advice', 'off'] as const;
export type NeedWeight = (typeof NEED_WEIGHTS)[number];

/** What is asked of a car and its drivers for a sort of event. */
export const requirements = z.strictObject({
  weights: z.record(z.enum(WEIGHED_NEEDS), z.enum(NEED_WEIGHTS)),
  /** items with these roles block by their limits; limits of others are advice */
  limitsOf: z.array(itemRole).max(7),
  /** roles that must be watched by an item */
  watched: z.array(itemRole).max(7),
  /** fraction of the way from MIN to MAX below which the oil must not fall; 0 = MIN */
  oilFloor: z
    .number('oil floor: must be a number')
    .min(0, 'oil floor: not below MIN, which is 0')
    .max(0.9, 'oil floor: at most 0.9 of the way to MAX'),
  /** an odometer read longer ago than this no longer counts */
  odometerDays: z.int().min(1, 'odometer: at least 1 day').max(366, 'odometer: at most 366 days'),
  /** looked over at most so many days before the event */
  inspectionDays: z
    .int()
    .min(1, 'inspection: at least 1 day')
    .max(730, 'inspection: at most 730 days'),
  /** the loudest allowed */
  noiseDb: z.number().min(40, 'noise: at least 40 dB').max(150, 'noise: at most 150 dB').optional(),
  /** whose rules these are, and their edition */
  rules: z.strictObject({ name: shortText, edition: civilDate }).optional(),
});
export type Requirements = z.infer<typeof requirements>;

/** A need that somebody took upon himself for one event. */
export const acceptance = z.strictObject({
  event: recordId,
  car: recordId,
  /** id of the need */
  need: z.string().min(1).max(160),
  because: shortText,
});
export type AcceptanceInput = z.infer<typeof acceptance>;
