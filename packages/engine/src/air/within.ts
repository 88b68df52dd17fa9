/** What a value may be: its name, its unit, its ends, and what to give. */
export type Allowed = { what: string; unit: string; from: number; to: number; give: string };

/** Air anybody races or drives in, the hottest and the coldest ever measured among it. */
export const AIR_TEMPERATURE: Allowed = {
  what: 'air temperature',
  unit: 'K',
  from: 180,
  to: 335,
  give: 'the temperature in the shade, 0 °C is 273.15 K',
};

/** From 7 km up to the highest ever measured at sea level. */
export const STATION_PRESSURE: Allowed = {
  what: 'air pressure',
  unit: 'Pa',
  from: 40_000,
  to: 110_000,
  give: 'the pressure of the place itself, not the one reduced to sea level',
};

export const DEW_POINT: Allowed = {
  ...AIR_TEMPERATURE,
  what: 'dew point',
  give: 'the dew point, which is at most the air temperature',
};

/** @throws RangeError that says what is wrong, where and how to mend it */
export function within(value: number, { what, unit, from, to, give }: Allowed): number {
  if (value >= from && value <= to) return value;
  throw new RangeError(
    `could not reckon with the ${what} of ${value} ${unit}: it should be ${from} to ${to} ${unit}; give ${give}`,
  );
}
