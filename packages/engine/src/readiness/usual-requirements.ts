import {
  type NeedWeight,
  type ReadyFor,
  type Requirements,
  WEIGHED_NEEDS,
  type WeighedNeed,
} from '../log/requirements.ts';

/** What an event of a sort does to a car: hard use, or driving on roads. */
export function isHardUse(use: ReadyFor): boolean {
  return use === 'circuit' || use === 'dragStrip' || use === 'autocross';
}

/** A week of looks at the stick is nobody's limit, and who drives may be said on the day. */
const ALWAYS_ADVICE: readonly WeighedNeed[] = ['oilLook', 'tyreAge', 'drivers'];

const OFF: Readonly<Record<ReadyFor, readonly WeighedNeed[]>> = {
  road: ['plannedUse', 'oilLasts', 'padStart', 'inspection', 'noise', 'drivers', 'safetyGear'],
  meet: ['plannedUse', 'oilLasts', 'padStart', 'inspection', 'noise', 'drivers', 'safetyGear'],
  roadTrip: ['padStart', 'inspection', 'noise', 'safetyGear'],
  circuit: [],
  dragStrip: ['padStart'],
  autocross: ['padStart'],
};

const ADVICE: Readonly<Record<ReadyFor, readonly WeighedNeed[]>> = {
  road: ['finding', 'watched', 'torque', 'pads', 'bedding'],
  meet: ['finding', 'watched', 'torque', 'pads', 'bedding'],
  roadTrip: ['finding', 'oilLasts', 'bedding'],
  circuit: ['padStart', 'inspection'],
  dragStrip: ['pads', 'inspection'],
  autocross: ['inspection'],
};

/** Fraction of the way from MIN to MAX: a wet sump starves in long bends well above MIN. */
const OIL_FLOOR: Readonly<Record<ReadyFor, number>> = {
  road: 0,
  meet: 0,
  roadTrip: 0,
  circuit: 0.5,
  dragStrip: 0.25,
  autocross: 0.5,
};

/**
 * What is asked of a car for a use where its garage and the event say nothing else.
 *
 * Source: common practice, no published source; the organiser's rules and the maker's manual decide.
 * @example usualRequirements('circuit').weights.bedding // 'blocking'
 */
export function usualRequirements(use: ReadyFor): Requirements {
  const hard = isHardUse(use);
  const allLimits = hard || use === 'roadTrip';
  return {
    weights: Object.fromEntries(WEIGHED_NEEDS.map((need) => [need, weightOf(use, need)])) as Record<
      WeighedNeed,
      NeedWeight
    >,
    limitsOf: [
      'engineOil',
      'oilFilter',
      'brakeFluid',
      'pads',
      'tyres',
      'wheelFasteners',
      ...(allLimits ? (['other'] as const) : []),
    ],
    watched: ['engineOil', 'brakeFluid'],
    oilFloor: OIL_FLOOR[use],
    odometerDays: 30,
    inspectionDays: 30,
  };
}

function weightOf(use: ReadyFor, need: WeighedNeed): NeedWeight {
  if (OFF[use].includes(need)) return 'off';
  return ADVICE[use].includes(need) || ALWAYS_ADVICE.includes(need) ? 'advice' : 'blocking';
}
