import type { UseFormReturn } from 'react-hook-form';
import type { About } from './about.ts';
import type { RecordFields } from './record-fields.ts';

/** What every part of a form is given. */
export type PartProps = {
  form: UseFormReturn<RecordFields>;
  /** what is wrong, by the path in the entry */
  errors: Readonly<Record<string, string>>;
};

export type AboutProps = PartProps & { about: About };

/** What is wrong with a quantity: with its number, its unit, or the whole. */
export function errorAt(errors: PartProps['errors'], path: string): string | undefined {
  const at = `entry.${path}`;
  return errors[`${at}.text`] ?? errors[`${at}.unit`] ?? errors[at];
}

/** What is wrong anywhere beneath one of the paths; undefined where nothing is. */
export function errorWithin(
  errors: PartProps['errors'],
  ...paths: readonly string[]
): string | undefined {
  const beneath = (found: string) =>
    paths.some((path) => found === `entry.${path}` || found.startsWith(`entry.${path}.`));
  return Object.entries(errors).find(([found]) => beneath(found))?.[1];
}

/** Attributes of a field for a plain number. */
export const NUMBER = { figures: true, inputMode: 'decimal', autoComplete: 'off' } as const;

export const DISTANCE_UNITS = [
  { value: 'km', words: 'km' },
  { value: 'mi', words: 'miles' },
] as const;
export const VOLUME_UNITS = [
  { value: 'l', words: 'L' },
  { value: 'ml', words: 'ml' },
  { value: 'usQt', words: 'US qt' },
  { value: 'usGal', words: 'US gal' },
  { value: 'impQt', words: 'imp qt' },
  { value: 'impGal', words: 'imp gal' },
] as const;
export const TEMPERATURE_UNITS = [
  { value: 'c', words: '°C' },
  { value: 'f', words: '°F' },
] as const;
export const PRESSURE_UNITS = [
  { value: 'bar', words: 'bar' },
  { value: 'psi', words: 'psi' },
  { value: 'kPa', words: 'kPa' },
] as const;
export const TORQUE_UNITS = [
  { value: 'nm', words: 'Nm' },
  { value: 'lbfFt', words: 'lbf·ft' },
] as const;
export const DEPTH_UNITS = [
  { value: 'mm', words: 'mm' },
  { value: 'in32', words: '1/32 in' },
] as const;
export const HOUR_UNITS = [{ value: 'h', words: 'h' }] as const;
