import { dewPointOf, type MoistAir, stationPressurePa } from '@quartermark/engine/air';
import { readNumber } from '@quartermark/engine/log';
import {
  celsius,
  KPA_PER_UNIT,
  type PressureUnit,
  type TemperatureUnit,
} from '@quartermark/engine/units';

export type Typed<U extends string> = { text: string; unit: U };
export type BarometerUnit = 'hPa' | 'inHg';
export type HeightUnit = 'm' | 'ft';

/** The air of a day, as typed. */
export type AirFields = {
  temperature: Typed<TemperatureUnit>;
  barometer: Typed<BarometerUnit>;
  /** where the barometer's figure comes from a weather report: above the sea; '' where it is the place's own */
  height: Typed<HeightUnit>;
  /** relative humidity, percent */
  humidity: string;
};

/** Everything the page holds, as typed. */
export type AirPageFields = {
  today: AirFields;
  /** the air of another day, and the time that was driven in it, s */
  other: AirFields;
  time: string;
  /** '' while no car is chosen */
  carId: string;
  hot: Typed<PressureUnit>;
  hotAir: Typed<TemperatureUnit>;
  coldAir: Typed<TemperatureUnit>;
  /** the least the maker allows, cold */
  least: Typed<PressureUnit>;
};

export type Problems = Record<string, string>;

/** 1 inHg at 0 °C, conventional (NIST SP 811, appendix B.8). */
const PA_PER_UNIT = { hPa: 100, inHg: 3386.389 } as const;
const METRES_PER_UNIT = { m: 1, ft: 0.3048 } as const;
/** 0 °C in K. */
const ZERO_K = 273.15;
/** What a day at a strip or a circuit can be; beyond it a number or its unit was mistyped. */
const TEMPERATURE_C = { min: -40, max: 55 };
const BAROMETER_PA = { min: 50_000, max: 109_000 };
/** A weather report's, as if at sea level. */
const REPORTED_PA = { min: 87_000, max: 109_000 };
const HEIGHT_M = { min: -430, max: 5_000 };
/** Air in a tyre that is driven hard. */
const TYRE_AIR_C = { min: -40, max: 145 };
const TYRE_KPA = { min: 50, max: 700 };
const TIME_S = { min: 3, max: 60 };

export function emptyAirPage(miles: boolean): AirPageFields {
  const temperature = (): Typed<TemperatureUnit> => ({ text: '', unit: miles ? 'f' : 'c' });
  const pressure = (): Typed<PressureUnit> => ({ text: '', unit: miles ? 'psi' : 'bar' });
  const air = (): AirFields => ({
    temperature: temperature(),
    barometer: { text: '', unit: miles ? 'inHg' : 'hPa' },
    height: { text: '', unit: miles ? 'ft' : 'm' },
    humidity: '',
  });
  return {
    today: air(),
    other: air(),
    time: '',
    carId: '',
    hot: pressure(),
    hotAir: temperature(),
    coldAir: temperature(),
    least: pressure(),
  };
}

/** Reads one number; null while it is empty or wrong, and what is wrong goes into `problems`. */
function readOne(
  typed: string,
  at: string,
  problems: Problems,
  toSi: (value: number) => number,
  { min, max }: { min: number; max: number },
  check: string,
): number | null {
  if (typed.trim() === '') return null;
  const read = readNumber(typed, false);
  if ('problem' in read) {
    problems[at] = `${read.problem.charAt(0).toUpperCase()}${read.problem.slice(1)}.`;
    return null;
  }
  const value = toSi(read.value);
  if (value >= min && value <= max) return value;
  problems[at] = check;
  return null;
}

/** A day's air; null until all that is needed is there and right. @param at name of the part, for `problems` */
export function readAir(
  fields: AirFields,
  at: 'today' | 'other',
  problems: Problems,
): MoistAir | null {
  const { barometer, height } = fields;
  const celsiusHere = readTemperature(
    fields.temperature,
    `${at}.temperature`,
    problems,
    TEMPERATURE_C,
  );
  const heightM = readOne(
    height.text,
    `${at}.height`,
    problems,
    (value) => value * METRES_PER_UNIT[height.unit],
    HEIGHT_M,
    'The place must lie 430 m below to 5,000 m above the sea. Check the number and its unit.',
  );
  const reported = height.text.trim() !== '';
  const barometerPa = readOne(
    barometer.text,
    `${at}.barometer`,
    problems,
    (value) => value * PA_PER_UNIT[barometer.unit],
    reported ? REPORTED_PA : BAROMETER_PA,
    'That is no air pressure; it is some 1,013 hPa (29.9 inHg) at sea level and less higher up. Check the number and its unit.',
  );
  const humidity = readOne(
    fields.humidity,
    `${at}.humidity`,
    problems,
    (value) => value / 100,
    { min: 0.01, max: 1 },
    'Humidity is 1 to 100 %.',
  );
  if (celsiusHere === null || barometerPa === null || humidity === null) return null;
  if (reported && heightM === null) return null;
  const temperatureK = celsiusHere + ZERO_K;
  return {
    temperatureK,
    pressurePa: heightM === null ? barometerPa : stationPressurePa(barometerPa, heightM),
    dewPointK: dewPointOf(temperatureK, humidity),
  };
}

/** Seconds of a pass. */
export const readTime = (typed: string, problems: Problems): number | null =>
  readOne(
    typed,
    'time',
    problems,
    (value) => value,
    TIME_S,
    'A pass takes 3 to 60 seconds; check the number.',
  );

/** What the tyre is to be hot, and the air in it: Pa by the gauge, K. */
export type Tyre = { hotGaugePa: number; hotK: number; coldK: number };

/** `tyre` null until all three are there and right; `leastPa` by the gauge, null while it is empty. */
export function readTyre(
  { hot, hotAir, coldAir, least }: AirPageFields,
  problems: Problems,
): { tyre: Tyre | null; leastPa: number | null } {
  const hotPa = readPressure(hot, 'hot', problems);
  const hotC = readTemperature(hotAir, 'hotAir', problems, TYRE_AIR_C);
  const coldC = readTemperature(coldAir, 'coldAir', problems, TEMPERATURE_C);
  const leastPa = readPressure(least, 'least', problems);
  if (hotC !== null && coldC !== null && hotC <= coldC)
    problems.hotAir = 'Hot air is warmer than cold air; check which is which.';
  if (hotPa === null || hotC === null || coldC === null || 'hotAir' in problems)
    return { tyre: null, leastPa };
  return { tyre: { hotGaugePa: hotPa, hotK: hotC + ZERO_K, coldK: coldC + ZERO_K }, leastPa };
}

function readTemperature(
  { text, unit }: Typed<TemperatureUnit>,
  at: string,
  problems: Problems,
  range: { min: number; max: number },
): number | null {
  const check = `It must be ${range.min} to ${range.max} °C. Check the number and its unit.`;
  return readOne(text, at, problems, (value) => celsius(value, unit), range, check);
}

/** Pa by the gauge. */
function readPressure(
  { text, unit }: Typed<PressureUnit>,
  at: string,
  problems: Problems,
): number | null {
  const check = 'A tyre holds 0.5 to 7 bar (7 to 100 psi). Check the number and its unit.';
  const pa = readOne(text, at, problems, (value) => value * KPA_PER_UNIT[unit], TYRE_KPA, check);
  return pa && pa * 1000;
}

/**
 * A pressure out of a line of a spec sheet, which is free text; null where it begins with none.
 *
 * @example pressureIn('2.1 bar cold, road') // { text: '2.1', unit: 'bar' }
 */
export function pressureIn(value: string): Typed<PressureUnit> | null {
  const found = /^\s*(\d+(?:[.,]\d+)?)\s*(bar|psi|kPa)\b/i.exec(value);
  const unit = (['bar', 'psi', 'kPa'] as const).find(
    (one) => one.toLowerCase() === found?.[2]?.toLowerCase(),
  );
  return found?.[1] === undefined || unit === undefined ? null : { text: found[1], unit };
}
