import type { Forecasts } from '../src/forecast/forecasts.ts';
import { forecastsOf } from '../src/forecast/forecasts.ts';
import type { MeasureFit } from '../src/forecast/measure-fit.ts';
import { type Season, seasonOf } from '../src/forecast/season.ts';
import { buildHistory } from '../src/history/build-history.ts';
import type { CarCase } from '../src/history/case.ts';
import type { AmountMeasure, UseClass } from '../src/log/item.ts';

/** What the forecasts of a case share. */
export function seasonOfCase(car: CarCase): Season {
  return seasonOf(car, buildHistory(car));
}

export function forecastsOfCase(car: CarCase): Forecasts {
  return forecastsOf(seasonOfCase(car));
}

/** What is expected of one measure of a case. */
export function fitOfCase(
  car: CarCase,
  measure: AmountMeasure,
  weights: Partial<Record<UseClass, number>> = {},
): MeasureFit {
  return forecastsOfCase(car).fitOf({ measure, weights });
}
