import type { EntryKind } from '@quartermark/engine/log';

export const KIND_GROUPS = [
  'driving',
  'readings',
  'oilAndFluids',
  'work',
  'partsAndWheels',
  'trouble',
  'restAndHands',
] as const;
export type KindGroup = (typeof KIND_GROUPS)[number];

export const GROUP_WORDS: Readonly<Record<KindGroup, string>> = {
  driving: 'Driving',
  readings: 'Readings and fuel',
  oilAndFluids: 'Oil and fluids',
  work: 'Work done',
  partsAndWheels: 'Parts and wheels',
  trouble: 'Findings and incidents',
  restAndHands: 'Lay-up, handover, notes',
};

/** Every kind of entry stands in one group. */
export const GROUP_OF: Readonly<Record<EntryKind, KindGroup>> = {
  drive: 'driving',
  session: 'driving',
  strip: 'driving',
  odometer: 'readings',
  meterReplaced: 'readings',
  fuel: 'readings',
  oilCheck: 'oilAndFluids',
  oilTopUp: 'oilAndFluids',
  oilChange: 'oilAndFluids',
  fluid: 'oilAndFluids',
  labReport: 'oilAndFluids',
  service: 'work',
  repair: 'work',
  inspection: 'work',
  fit: 'partsAndWheels',
  measure: 'partsAndWheels',
  wheels: 'partsAndWheels',
  finding: 'trouble',
  incident: 'trouble',
  answer: 'trouble',
  layUp: 'restAndHands',
  wakeUp: 'restAndHands',
  handover: 'restAndHands',
  note: 'restAndHands',
};
