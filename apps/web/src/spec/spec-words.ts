import type { CarInput, SpecGroup, SpecSheet } from '@quartermark/engine/log';
import { SPEC_GROUPS } from '@quartermark/engine/log';
import { carLines } from '../car-form/car-lines.ts';
import type { VersionLine } from '../forms/version-rows.ts';

export const GROUP_NAME: Readonly<Record<SpecGroup, string>> = {
  fluids: 'Fluids and capacities',
  torques: 'Torques',
  pressures: 'Pressures',
  jacking: 'Jacking points',
  other: 'Other',
};

/** What stands where a value has no source. */
export const UNVERIFIED = 'unverified';

const PROFILE_LINES = [
  'Oil at MAX',
  'Oil between MIN and MAX',
  'Oil grade',
  'Oil approval',
  'The stick is read',
  'Wheels held by',
  'Lifting points',
  'Air suspension',
];

/** What the car's own page knows that belongs on its spec sheet, as words; what was not said is left out. */
export function profileLines(car: CarInput): VersionLine[] {
  const said = carLines(car).filter(({ words }) => words !== 'Not said');
  return PROFILE_LINES.flatMap((label) => said.filter((line) => line.label === label));
}

/** The first line of the sheet: how much stands on it, and how much of that has no source. */
export function specAnswer({ lines }: SpecSheet): string {
  if (lines.length === 0) return 'Nothing is written on its sheet yet.';
  const without = lines.filter(({ source }) => source === undefined).length;
  const count = lines.length === 1 ? 'One value' : `${lines.length} values`;
  if (without === 0) return `${count}, each with its source.`;
  return without === lines.length
    ? `${count}, ${lines.length === 1 ? 'unverified' : 'all of them unverified'}.`
    : `${count}, ${without} of them unverified.`;
}

/** A sheet in words, a line for each group, to be set beside another version. */
export function specVersion({ lines }: SpecSheet): VersionLine[] {
  return SPEC_GROUPS.map((group) => ({
    label: GROUP_NAME[group],
    words:
      lines
        .filter((line) => line.group === group)
        .map(({ what, value, source }) => `${what}: ${value} (${source ?? UNVERIFIED})`)
        .join('; ') || 'Nothing',
  }));
}
