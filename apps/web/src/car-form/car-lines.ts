import type { CarInput } from '@quartermark/engine/log';
import {
  DIPSTICK_OPTIONS,
  DISC_OPTIONS,
  DRIVE_OPTIONS,
  FUEL_OPTIONS,
  INDUCTION_OPTIONS,
  STATUS_OPTIONS,
  SUMP_OPTIONS,
  WHEEL_OPTIONS,
} from '../forms/car-options.ts';
import type { VersionLine } from '../forms/version-rows.ts';

type Chosen = readonly { value: string; words: string }[];

function chosen(options: Chosen, value: string | undefined): string {
  return options.find((option) => option.value === (value ?? ''))?.words ?? 'Not said';
}

function typed(value: string | number | undefined, unit = ''): string {
  return value === undefined ? 'Not said' : `${value}${unit}`;
}

function dipstick({ dipstick: procedure }: CarInput['profile']): string {
  const words = chosen(DIPSTICK_OPTIONS, procedure?.state);
  const minutes = procedure?.minutesAfterStop;
  return minutes === undefined ? words : `${words} (${minutes} minutes)`;
}

/** A car in words, a line for each thing its form can change. */
export function carLines({ name, unit, odoDigits, profile }: CarInput): VersionLine[] {
  const air = profile.airSuspension;
  return [
    { label: 'Name', words: name },
    { label: 'The odometer counts', words: unit === 'km' ? 'km' : 'miles' },
    { label: 'Its digits', words: typed(odoDigits) },
    { label: 'Where it stands', words: chosen(STATUS_OPTIONS, profile.status) },
    { label: 'Sump', words: chosen(SUMP_OPTIONS, profile.sump) },
    { label: 'Induction', words: chosen(INDUCTION_OPTIONS, profile.induction) },
    { label: 'Driven by', words: chosen(DRIVE_OPTIONS, profile.drive) },
    { label: 'Fuel', words: chosen(FUEL_OPTIONS, profile.fuel) },
    { label: 'Octane', words: typed(profile.octane) },
    { label: 'Oil between MIN and MAX', words: typed(profile.oilSpanL, ' L') },
    { label: 'Oil at MAX', words: typed(profile.oilCapacityL, ' L') },
    { label: 'The stick is read', words: dipstick(profile) },
    { label: 'Oil grade', words: typed(profile.oilGrade) },
    { label: 'Oil approval', words: typed(profile.oilApproval) },
    {
      label: 'Your limit of oil use',
      words: typed(profile.oilLimitLPer1000Km, ' L per 1,000 km'),
    },
    { label: 'Gearbox', words: typed(profile.gearbox) },
    { label: 'Wheels held by', words: chosen(WHEEL_OPTIONS, profile.wheelFixing) },
    { label: 'Brake discs', words: chosen(DISC_OPTIONS, profile.discMaterial) },
    { label: 'Air suspension', words: air === undefined ? 'Not said' : air ? 'Yes' : 'No' },
    { label: 'Lifting points', words: typed(profile.liftPoints) },
    { label: 'Noise', words: typed(profile.noiseDb, ' dB') },
  ];
}
