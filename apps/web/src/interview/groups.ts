import type { Proposal } from '@quartermark/engine/library';

export const GROUPS = ['oil', 'brakes', 'wheels', 'driveline', 'cooling', 'rest'] as const;
export type Group = (typeof GROUPS)[number];

export const GROUP_WORDS: Readonly<Record<Group, string>> = {
  oil: 'Oil',
  brakes: 'Brakes',
  wheels: 'Wheels and tyres',
  driveline: 'Driveline and belts',
  cooling: 'Cooling',
  rest: 'The rest',
};

/** Every key the library proposes for cars; `groups.test.ts` holds the two together. */
const GROUP_OF: Readonly<Record<string, Group>> = {
  engineOil: 'oil',
  oilFilter: 'oil',
  drySump: 'oil',
  chargerOil: 'oil',
  brakeFluid: 'brakes',
  brakeBleed: 'brakes',
  padsLook: 'brakes',
  discsLook: 'brakes',
  discsWeigh: 'brakes',
  wheelFasteners: 'wheels',
  wheelFastenersRenew: 'wheels',
  tyresLook: 'wheels',
  alignment: 'wheels',
  bearingsLook: 'wheels',
  gearboxOil: 'driveline',
  differentialOil: 'driveline',
  reductionGearOil: 'driveline',
  clutchFluid: 'driveline',
  bootsLook: 'driveline',
  mountsLook: 'driveline',
  timingBelt: 'driveline',
  accessoryBelt: 'driveline',
  chargerBelt: 'driveline',
  coolant: 'cooling',
  coolantFrost: 'cooling',
  hosesLook: 'cooling',
  batteryCoolant: 'cooling',
  glowPlugs: 'rest',
  sparkPlugs: 'rest',
  airFilter: 'rest',
  fuelFilter: 'rest',
  highVoltage: 'rest',
  battery: 'rest',
  cabinFilter: 'rest',
  airSuspension: 'rest',
  roadInspection: 'rest',
  insurance: 'rest',
};

/** Where a proposal stands in the list; an unknown one with the rest. */
export function groupOf({ key }: Pick<Proposal, 'key'>): Group {
  return GROUP_OF[key] ?? 'rest';
}

export const isGrouped = (key: string): boolean => key in GROUP_OF;
