import { type DistanceUnit, KM_PER_UNIT, LITRES_PER_UNIT, type VolumeUnit } from '../log/units.ts';
import type { CarOil, OilAnswer } from '../oil/oil-answer.ts';
import { volumeSign } from './format-quantity.ts';
import { twoDigits } from './rough-number.ts';

/** In which units oil use is told. */
export type OilUnits = { distanceUnit: DistanceUnit; volumeUnit: VolumeUnit };

/** Oil use in L/1,000 km, likely and eight times in ten between the two others. */
export type OilRate = { low: number; likely: number; high: number };

/** The two that are compared by: litres, and the quarts of a maker's limit. */
export const LITRES_PER_1000_KM: OilUnits = { distanceUnit: 'km', volumeUnit: 'l' };
export const US_QUARTS_PER_1000_MI: OilUnits = { distanceUnit: 'mi', volumeUnit: 'usQt' };

/**
 * A rate in other units: x L/1,000 km * (km per unit) / (litres per unit).
 *
 * @example rateIn(0.588036458333, US_QUARTS_PER_1000_MI) // 1
 */
export function rateIn(lPer1000Km: number, { distanceUnit, volumeUnit }: OilUnits): number {
  return (lPer1000Km * KM_PER_UNIT[distanceUnit]) / LITRES_PER_UNIT[volumeUnit];
}

/** @example perWords({ distanceUnit: 'mi', volumeUnit: 'usQt' }) // "US qt per 1,000 mi" */
export function perWords({ distanceUnit, volumeUnit }: OilUnits): string {
  return `${volumeSign(volumeUnit)} per 1,000 ${distanceUnit}`;
}

/** A rate's number alone, without "about". @example rateFigure(0.333, LITRES_PER_1000_KM) // "0.33" */
export function rateFigure(lPer1000Km: number, units: OilUnits): string {
  const value = rateIn(lPer1000Km, units);
  return value < 0.01 ? 'less than 0.01' : twoDigits(value);
}

/** @example rateBand({ low: 0.2, likely: 0.33, high: 0.45 }, LITRES_PER_1000_KM) // "0.2 to 0.45" */
export function rateBand({ low, high }: OilRate, units: OilUnits): string {
  const [from, to] = [rateFigure(low, units), rateFigure(high, units)];
  return from === to ? from : `${from.replace('less than 0.01', '0')} to ${to}`;
}

/** The road rate; null where there is too little to say one. */
export function roadRateOf({ status, roadRate }: OilAnswer): OilRate | null {
  return status === 'none' ? null : oilRate(roadRate);
}

/** The rate on circuits and in autocross; null where neither was logged, or too little to say one. */
export function hardRateOf({ status, hardRate }: OilAnswer): OilRate | null {
  return status === 'none' || hardRate.fromPrior ? null : oilRate(hardRate);
}

const oilRate = ({ p10, p50, p90 }: { p10: number; p50: number; p90: number }): OilRate => ({
  low: p10,
  likely: p50,
  high: p90,
});

/**
 * How much oil a car uses, road and hard use apart. Never what was assumed before anything was logged.
 *
 * @returns null where there is too little to say
 * @example oilUseWords(oil, { distanceUnit: 'km', volumeUnit: 'l' })
 * // "about 0.33 L per 1,000 km on the road, 0.2 to 0.45; about 0.8 in hard use, 0.6 to 1.1"
 */
export function oilUseWords(oil: CarOil, units: OilUnits): string | null {
  const road = roadRateOf(oil);
  if (road === null) return null;
  const hard = hardRateOf(oil);
  const run = oil.stripPerRun;
  return [
    `${about(road.likely, units)} ${perWords(units)} on the road, ${rateBand(road, units)}`,
    ...(hard === null
      ? []
      : [`${about(hard.likely, units)} in hard use, ${rateBand(hard, units)}`]),
    ...(run === undefined || run.fromPrior ? [] : [runWords(run.p50, units)]),
  ].join('; ');
}

function about(lPer1000Km: number, units: OilUnits): string {
  const figure = rateFigure(lPer1000Km, units);
  return figure.startsWith('less') ? figure : `about ${figure}`;
}

function runWords(litresARun: number, { volumeUnit }: OilUnits): string {
  const ten = (10 * litresARun) / LITRES_PER_UNIT[volumeUnit];
  const figure = ten < 0.05 ? 'less than 0.05' : `about ${twoDigits(ten)}`;
  return `${figure} ${volumeSign(volumeUnit)} in ten runs of a drag strip`;
}
