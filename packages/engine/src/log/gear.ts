import { z } from 'zod';
import { civilDate, recordId, shortText } from './common.ts';
import { depth } from './quantity.ts';

export const COMPONENT_SORTS = [
  'tyreSet',
  'wheelSet',
  'pads',
  'discs',
  'clutch',
  'engine',
  'gearbox',
  'other',
] as const;
export type ComponentSort = (typeof COMPONENT_SORTS)[number];

export const EQUIPMENT_SORTS = [
  'lift',
  'jack',
  'stands',
  'torqueWrench',
  'extinguisher',
  'trailer',
  'other',
] as const;
export type EquipmentSort = (typeof EQUIPMENT_SORTS)[number];

export const ROAD_LAWS = ['eu', 'us', 'none'] as const;
export type RoadLaw = (typeof ROAD_LAWS)[number];

const gearCommon = { name: shortText, remarks: z.string().trim().max(2000).optional() } as const;

/** A part with a life of its own: `fit` entries say on which car it was from when to when. */
export const component = z.strictObject({
  kind: z.literal('component'),
  ...gearCommon,
  sort: z.enum(COMPONENT_SORTS),
  /** as it came; what a used one did before is not known */
  condition: z.enum(['new', 'used']),
  since: civilDate.optional(),
  /** on a tyre's wall: week and year of manufacture */
  dateCode: shortText.optional(),
  /** the owner's own least tread or pad; legal floors stand beside it */
  leastDepth: depth.optional(),
  /** what tread, pad or disc measures new */
  newDepth: depth.optional(),
  /** pads: what a circuit day should begin with, at least */
  startDepth: depth.optional(),
  /** tyres: whose law of the road says how thin a tread may be; none: never on a public road */
  roadLaw: z.enum(ROAD_LAWS).optional(),
});

export const equipment = z.strictObject({
  kind: z.literal('equipment'),
  ...gearCommon,
  sort: z.enum(EQUIPMENT_SORTS),
});

/** Somebody who drives or helps; helmet, harness, licence and papers are their items. */
export const person = z.strictObject({ kind: z.literal('person'), ...gearCommon });

/** What can own service items beside a car. */
export const gearInput = z.discriminatedUnion('kind', [component, equipment, person]);
export type GearInput = z.infer<typeof gearInput>;
export type GearDraft = z.input<typeof gearInput>;
export type GearKind = GearInput['kind'];
export type GearOf<K extends GearKind> = Extract<GearInput, { kind: K }>;

export const gear = z.strictObject({ id: recordId, gear: gearInput });
export type Gear = z.infer<typeof gear>;
