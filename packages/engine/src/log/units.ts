/**
 * Unit factors. Every factor is exact by definition unless its comment says otherwise.
 *
 * Sources: international yard and pound agreement of 1959 (mile, inch, pound-force by way of
 * standard gravity 9.80665 m/s2, CGPM 1901); NIST Handbook 44, appendix C (US liquid measures,
 * 1 US gal = 231 in3); UK Units of Measurement Regulations 1995 (1 imperial gal = 4.54609 L).
 */
export const KM_PER_UNIT = { km: 1, mi: 1.609344 } as const;
export const LITRES_PER_UNIT = {
  l: 1,
  ml: 0.001,
  usQt: 0.946352946,
  usGal: 3.785411784,
  impQt: 1.1365225,
  impGal: 4.54609,
} as const;
export const KPA_PER_UNIT = { kPa: 1, bar: 100, psi: 6.894757293168361 } as const;
// published as 1.3558179483314004; this is the nearest double
export const NEWTON_METRES_PER_UNIT = { nm: 1, lbfFt: 1.3558179483314003 } as const;
export const MM_PER_UNIT = { mm: 1, in32: 25.4 / 32 } as const;
export const KG_PER_UNIT = { kg: 1, g: 0.001 } as const;

export type DistanceUnit = keyof typeof KM_PER_UNIT;
export type VolumeUnit = keyof typeof LITRES_PER_UNIT;
export type PressureUnit = keyof typeof KPA_PER_UNIT;
export type TorqueUnit = keyof typeof NEWTON_METRES_PER_UNIT;
export type DepthUnit = keyof typeof MM_PER_UNIT;
export type TemperatureUnit = 'c' | 'f';

export const DISTANCE_UNITS = ['km', 'mi'] as const satisfies readonly DistanceUnit[];
export const VOLUME_UNITS = [
  'l',
  'ml',
  'usQt',
  'usGal',
  'impQt',
  'impGal',
] as const satisfies readonly VolumeUnit[];
export const PRESSURE_UNITS = ['kPa', 'bar', 'psi'] as const satisfies readonly PressureUnit[];
export const TORQUE_UNITS = ['nm', 'lbfFt'] as const satisfies readonly TorqueUnit[];
export const DEPTH_UNITS = ['mm', 'in32'] as const satisfies readonly DepthUnit[];
export const TEMPERATURE_UNITS = ['c', 'f'] as const satisfies readonly TemperatureUnit[];

/** Degrees Celsius of a temperature: C = (F - 32) / 1.8, exact. */
export function celsius(value: number, unit: TemperatureUnit): number {
  return unit === 'c' ? value : (value - 32) / 1.8;
}
