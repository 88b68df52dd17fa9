import { z } from 'zod';
import {
  celsius,
  DEPTH_UNITS,
  DISTANCE_UNITS,
  KM_PER_UNIT,
  KPA_PER_UNIT,
  LITRES_PER_UNIT,
  MM_PER_UNIT,
  NEWTON_METRES_PER_UNIT,
  PRESSURE_UNITS,
  TEMPERATURE_UNITS,
  TORQUE_UNITS,
  VOLUME_UNITS,
} from './units.ts';

/**
 * A number as it was typed, with its unit: `{text: "38,412", unit: "mi"}`.
 *
 * The text is what comes back to the person, letter for letter; the SI value is derived on read and
 * never stored a second time.
 */
export type Quantity<U extends string> = { text: string; unit: U };

/** What a typed number is: its value, or why it is none, in words that say how to mend it. */
export type TypedNumber = { value: number } | { problem: string };

const PLAIN = /^[+-]?\d+(\.\d+)?$/;
const GROUPED = /^[+-]?\d{1,3}(,\d{3})+(\.\d+)?$/;
const DECIMAL_COMMA = /^[+-]?\d+,\d+$/;

/**
 * Reads a typed number.
 *
 * Spaces group digits ("38 412"). A comma groups thousands where `grouping` is true ("38,412" on an
 * odometer is thirty-eight thousand) and is a decimal comma otherwise ("0,5" litres). Both at once
 * ("1,234.5") is read as grouped. Nothing is guessed beyond that.
 *
 * @param text what was typed
 * @param grouping true for quantities that are whole thousands in everyday use (distances)
 * @example readNumber('38 412', true) // { value: 38412 }
 */
export function readNumber(text: string, grouping: boolean): TypedNumber {
  const compact = text.trim().replace(/[\s\u00a0\u202f\u2009']/g, '');
  if (compact === '') return { problem: 'nothing was typed; write a number such as 12.5' };
  if (PLAIN.test(compact)) return { value: Number(compact) };
  if (GROUPED.test(compact) && (grouping || compact.includes('.')))
    return { value: Number(compact.replaceAll(',', '')) };
  if (DECIMAL_COMMA.test(compact)) return { value: Number(compact.replace(',', '.')) };
  return {
    problem: `"${text}" is not a number; write digits with one decimal point, such as 12.5`,
  };
}

type Range = { min: number; max: number };

function quantity<const U extends readonly [string, ...string[]]>(
  name: string,
  units: U,
  range: Range,
  grouping = false,
) {
  return z
    .strictObject({
      text: z.string().max(40, `${name}: at most 40 characters`),
      unit: z.enum(units, { error: `${name}: the unit must be one of ${units.join(', ')}` }),
    })
    .superRefine(({ text }, ctx) => {
      const read = readNumber(text, grouping);
      if ('problem' in read) {
        ctx.addIssue({ code: 'custom', path: ['text'], message: `${name}: ${read.problem}` });
      } else if (read.value < range.min || read.value > range.max) {
        ctx.addIssue({
          code: 'custom',
          path: ['text'],
          message: `${name}: ${text} is outside ${range.min} to ${range.max}`,
        });
      }
    });
}

export const odometerReading = quantity(
  'odometer',
  DISTANCE_UNITS,
  { min: 0, max: 9_999_999 },
  true,
);
/** hours on an hour meter */
export const hourReading = quantity('hour meter', ['h'], { min: 0, max: 999_999 }, true);
export const distance = quantity('distance', DISTANCE_UNITS, { min: 0, max: 50_000 }, true);
export const volume = quantity('volume', VOLUME_UNITS, { min: 0, max: 2_000 });
export const oilVolume = quantity('oil volume', VOLUME_UNITS, { min: 0, max: 50_000 });
export const pressure = quantity('pressure', PRESSURE_UNITS, { min: 0, max: 2_000 });
export const torque = quantity('torque', TORQUE_UNITS, { min: 0, max: 2_000 });
export const depth = quantity('depth', DEPTH_UNITS, { min: 0, max: 100 });
export const temperature = quantity('temperature', TEMPERATURE_UNITS, { min: -60, max: 1_500 });

export type OdometerReading = z.infer<typeof odometerReading>;
export type HourReading = z.infer<typeof hourReading>;
export type Distance = z.infer<typeof distance>;
export type Volume = z.infer<typeof volume>;
export type Pressure = z.infer<typeof pressure>;
export type Torque = z.infer<typeof torque>;
export type Depth = z.infer<typeof depth>;
export type Temperature = z.infer<typeof temperature>;

function typedValue(typed: { text: string }, grouping: boolean): number {
  const read = readNumber(typed.text, grouping);
  if ('problem' in read)
    throw new TypeError(
      `could not read a quantity: ${read.problem} (parse it with its schema first)`,
    );
  return read.value;
}

/** Kilometres of a typed distance or odometer reading. @throws TypeError if it was never parsed. */
export function distanceKm(typed: Distance): number {
  return typedValue(typed, true) * KM_PER_UNIT[typed.unit];
}

/** Hours of a typed hour-meter reading. @throws TypeError if it was never parsed. */
export function hoursH(typed: HourReading): number {
  return typedValue(typed, true);
}

/** Litres of a typed volume. @throws TypeError if it was never parsed. */
export function volumeL(typed: Volume): number {
  return typedValue(typed, false) * LITRES_PER_UNIT[typed.unit];
}

/** Kilopascals (gauge) of a typed pressure. @throws TypeError if it was never parsed. */
export function pressureKpa(typed: Pressure): number {
  return typedValue(typed, false) * KPA_PER_UNIT[typed.unit];
}

/** Newton metres of a typed torque. @throws TypeError if it was never parsed. */
export function torqueNm(typed: Torque): number {
  return typedValue(typed, false) * NEWTON_METRES_PER_UNIT[typed.unit];
}

/** Millimetres of a typed depth. @throws TypeError if it was never parsed. */
export function depthMm(typed: Depth): number {
  return typedValue(typed, false) * MM_PER_UNIT[typed.unit];
}

/** Degrees Celsius of a typed temperature. @throws TypeError if it was never parsed. */
export function temperatureC(typed: Temperature): number {
  return celsius(typedValue(typed, false), typed.unit);
}

/** What can be poured into an engine at one stop, litres; outside it the number or its unit was mistyped. */
export const POURED_MIN_L = 0.01;
export const POURED_MAX_L = 15;

/** True of litres that can be poured in at one stop; false of what is no number. */
export function isPourable(litres: number): boolean {
  return litres >= POURED_MIN_L && litres <= POURED_MAX_L;
}
