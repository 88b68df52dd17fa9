import type {
  ComponentSort,
  EquipmentSort,
  GearInput,
  GearKind,
  RoadLaw,
} from '@quartermark/engine/log';

export const GROUP_NAME: Readonly<Record<GearKind, string>> = {
  component: 'Sets and parts',
  equipment: 'Equipment',
  person: 'People',
};

export const COMPONENT_NAME: Readonly<Record<ComponentSort, string>> = {
  tyreSet: 'Tyre set',
  wheelSet: 'Wheel set',
  pads: 'Brake pads',
  discs: 'Brake discs',
  clutch: 'Clutch',
  engine: 'Engine',
  gearbox: 'Gearbox',
  other: 'Another part',
};

export const EQUIPMENT_NAME: Readonly<Record<EquipmentSort, string>> = {
  lift: 'Lift',
  jack: 'Jack',
  stands: 'Stands',
  torqueWrench: 'Torque wrench',
  extinguisher: 'Extinguisher',
  trailer: 'Trailer',
  other: 'Another tool',
};

export const ROAD_LAW_NAME: Readonly<Record<RoadLaw, string>> = {
  eu: 'EU, 1.6 mm',
  us: 'US, 2/32 in',
  none: 'Never on a public road',
};

/** What it is, in one or two words. */
export function sortName(gear: GearInput): string {
  if (gear.kind === 'person') return 'Person';
  return gear.kind === 'component' ? COMPONENT_NAME[gear.sort] : EQUIPMENT_NAME[gear.sort];
}
