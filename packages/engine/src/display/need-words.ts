import type { NeedKind } from '../log/requirements.ts';
import type { SaidIn } from '../readiness/asked.ts';
import type { Margin, Need } from '../readiness/result.ts';
import { formatNumber } from './format-number.ts';
import { formatCount, formatDistance, formatHours, formatVolume } from './format-quantity.ts';

/**
 * What is left at the end of an event and of the way home, or how much is missing.
 *
 * @param saidIn units of the car's odometer and of the garage's bottles
 * @example marginWords({ value: -0.4, unit: 'mm' }, { distance: 'km', volume: 'l' }) // "0.4 mm short"
 */
export function marginWords({ value, unit }: Margin, saidIn: SaidIn): string {
  const amount = amountWords(Math.abs(value), unit, saidIn);
  if (unit === 'dB') return value < 0 ? `${amount} too loud` : `${amount} below`;
  return value < 0 ? `${amount} short` : `${amount} left`;
}

function amountWords(amount: number, unit: Margin['unit'], saidIn: SaidIn): string {
  switch (unit) {
    case 'km':
      return formatDistance(amount, saidIn.distance);
    case 'h':
      return formatHours(amount);
    case 'L':
      return formatVolume(amount, saidIn.volume);
    case 'sessions':
      return formatCount(amount, 'session');
    case 'launches':
      return formatCount(amount, 'launch', 'launches');
    case 'days':
      return formatCount(Math.round(amount), 'day');
    case 'mm':
    case 'g':
    case 'dB':
      return `${formatNumber(amount, 1)} ${unit}`;
  }
}

/** Groups in which a car's needs are read, as one walks round it. */
export const NEED_GROUPS = ['car', 'wear', 'oil', 'wheels', 'organiser', 'people', 'log'] as const;
export type NeedGroup = (typeof NEED_GROUPS)[number];

export const NEED_GROUP_WORDS: Readonly<Record<NeedGroup, string>> = {
  car: 'The car',
  wear: 'What is watched',
  oil: 'Oil',
  wheels: 'Wheels, brakes and tyres',
  organiser: 'What the organiser asks',
  people: 'Who drives',
  log: 'What is written down',
};

const GROUP_OF: Readonly<Record<NeedKind, NeedGroup>> = {
  here: 'car',
  doNotDrive: 'car',
  incident: 'car',
  openJob: 'car',
  finding: 'car',
  limit: 'wear',
  watched: 'wear',
  oilLevel: 'oil',
  oilLasts: 'oil',
  oilLook: 'oil',
  wheels: 'wheels',
  torque: 'wheels',
  pads: 'wheels',
  padStart: 'wheels',
  bedding: 'wheels',
  tyres: 'wheels',
  tyreAge: 'wheels',
  inspection: 'organiser',
  noise: 'organiser',
  drivers: 'people',
  safetyGear: 'people',
  plannedUse: 'log',
  odometer: 'log',
  lastEvent: 'log',
};

/** The group in which a need of that kind is read. */
export const needGroup = (kind: NeedKind): NeedGroup => GROUP_OF[kind];

const TIGHT =
  'Nobody can take this upon himself: wheels that are not known to be tight come off. Torque them and write it down.';

const NOBODY_MAY: Partial<Record<NeedKind, string>> = {
  doNotDrive:
    'Nobody can take this upon himself: somebody wrote that it must not be driven. Answer the finding first.',
  incident:
    'Nobody can take this upon himself: look the car over after what happened and answer it first.',
  openJob: 'Nobody can take this upon himself: a car with a job left open is not driven.',
  wheels: TIGHT,
  torque: TIGHT,
};

/**
 * Why a need that is not met cannot be taken upon oneself; null where it can, is met, has been, or
 * does not hold the car back anyway.
 */
export function whyNotAccepted(
  need: Pick<Need, 'kind' | 'status' | 'weight' | 'mayAccept' | 'accepted'>,
): string | null {
  if (need.mayAccept || need.status === 'met' || need.accepted !== null) return null;
  const always = NOBODY_MAY[need.kind];
  if (always !== undefined) return always;
  return need.weight === 'advice'
    ? 'This is advice: it does not hold the car back, so there is nothing to take upon oneself.'
    : 'Nobody can take this upon himself.';
}
