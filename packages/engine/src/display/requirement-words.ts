import type { FIXED_NEEDS, NeedWeight, ReadyFor, WeighedNeed } from '../log/requirements.ts';

/** What is asked, in a few words, and what it takes to meet it. */
export type RequirementWords = { name: string; means: string };

export const REQUIREMENT_WORDS: Readonly<Record<WeighedNeed, RequirementWords>> = {
  here: { name: 'Here and in use', means: 'Not laid up, lent or sold.' },
  plannedUse: {
    name: 'What it does there is said',
    means: 'Without it nobody can tell what lasts until the end.',
  },
  odometer: { name: 'Odometer read lately', means: 'Within the days given below.' },
  lastEvent: {
    name: 'Past events on record',
    means: 'Of each event that is over it is known what the car did, or that it stayed at home.',
  },
  finding: {
    name: 'No finding “before hard use”',
    means: 'Those that forbid driving always count.',
  },
  limit: {
    name: 'Limits last until it is home',
    means: 'For the items chosen below; limits of others are advice.',
  },
  watched: {
    name: 'What must be watched is watched',
    means: 'The car has an item for each of those chosen below.',
  },
  oilLevel: { name: 'Oil between the marks', means: 'And nothing about its level is odd.' },
  oilLasts: {
    name: 'Oil lasts until the end',
    means: 'Begun at MAX, it stays above the mark chosen below.',
  },
  oilLook: { name: 'Stick looked at', means: 'Within the week before.' },
  torque: {
    name: 'Wheels torqued',
    means: 'On record since they were off, and checked again where it has to be.',
  },
  pads: { name: 'Pads last until the end', means: 'Still above their least when it is over.' },
  padStart: {
    name: 'Pads thick enough to begin with',
    means: 'What a day of hard use should start with.',
  },
  bedding: { name: 'Pads and discs bedded', means: 'Before they are used hard.' },
  tyres: {
    name: 'Tread lasts until the end',
    means: 'Above your least, and the law’s where the tyre goes on a road.',
  },
  tyreAge: { name: 'Age of the tyres', means: 'By their date code.' },
  inspection: { name: 'Looked over by somebody', means: 'Within the days given below.' },
  noise: { name: 'Noise measured', means: 'No louder than given below.' },
  drivers: { name: 'Who drives is said', means: 'So that their gear can be looked at.' },
  safetyGear: {
    name: 'Gear and papers of the drivers',
    means: 'Helmet, harness, licence: none runs out before the end.',
  },
};

/** What nobody can put aside, after "no". */
export const FIXED_NEED_WORDS: Readonly<Record<(typeof FIXED_NEEDS)[number], string>> = {
  doNotDrive: 'finding “do not drive”',
  incident: 'incident that nobody has answered',
  openJob: 'job that stands open',
  wheels: 'wheel that was off and has no torque on record since',
};

export const WEIGHT_WORDS: Readonly<Record<NeedWeight, string>> = {
  blocking: 'Blocking',
  advice: 'Advice',
  off: 'Not asked',
};

/** The needs as somebody looks a car over, and the heading of each group. */
export const REQUIREMENT_GROUPS: readonly { name: string; needs: readonly WeighedNeed[] }[] = [
  {
    name: 'The car',
    needs: ['here', 'plannedUse', 'odometer', 'lastEvent', 'finding', 'inspection', 'noise'],
  },
  { name: 'Items and their limits', needs: ['limit', 'watched'] },
  { name: 'Oil', needs: ['oilLevel', 'oilLasts', 'oilLook'] },
  {
    name: 'Wheels, brakes, tyres',
    needs: ['torque', 'pads', 'padStart', 'bedding', 'tyres', 'tyreAge'],
  },
  { name: 'Who drives', needs: ['drivers', 'safetyGear'] },
];

/** For what, after "for". @example READY_FOR_WORDS.circuit // "a circuit day" */
export const READY_FOR_WORDS: Readonly<Record<ReadyFor, string>> = {
  road: 'the road',
  meet: 'a meet',
  roadTrip: 'a road trip',
  circuit: 'a circuit day',
  dragStrip: 'a drag-strip day',
  autocross: 'an autocross',
};
