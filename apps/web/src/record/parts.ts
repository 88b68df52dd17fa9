import type { UseFormReturn } from 'react-hook-form';
import type { RecordFields } from './record-fields.ts';

/** What every part of a form is given. */
export type PartProps = {
  form: UseFormReturn<RecordFields>;
  /** what is wrong, by the path in the entry */
  errors: Readonly<Record<string, string>>;
};

/** What is wrong with a quantity: with its number, its unit, or the whole. */
export function errorAt(errors: PartProps['errors'], path: string): string | undefined {
  const at = `entry.${path}`;
  return errors[`${at}.text`] ?? errors[`${at}.unit`] ?? errors[at];
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
