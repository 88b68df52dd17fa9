import { clubCalendar, clubWinter } from './calendar.ts';
import { autocrossHatch } from './cars/autocross-hatch.ts';
import { boughtUsed } from './cars/bought-used.ts';
import { circuitCar } from './cars/circuit-car.ts';
import { laidUpClassic } from './cars/laid-up-classic.ts';
import { roadStripCar } from './cars/road-strip-car.ts';
import { roadTripCar } from './cars/road-trip-car.ts';
import { secondCircuitCar } from './cars/second-circuit-car.ts';
import { towCar } from './cars/tow-car.ts';
import { CLUB } from './club.ts';
import { clubGear } from './gear.ts';
import { gearLog } from './gear-log.ts';
import { clubOrders } from './orders.ts';
import type { SeedGarage } from './seed-garage.ts';
import { specSheets } from './spec-sheets.ts';

/**
 * The garage of an invented club on one day: eight cars of invented makes, each with the last 24 months
 * of its book as its people would have typed it, what the club owns beside them, and its calendar.
 *
 * The same day always gives the same garage; no entry is dated after it. Ids do not depend on the day.
 * Makes, models, people and places are inventions; limits are these owners' own values, not advice.
 *
 * @param day civil date `YYYY-MM-DD`, today in the garage's zone
 * @example demoGarage('2026-06-15').cars.length // 8
 */
export function demoGarage(day: string): SeedGarage {
  return {
    garage: {
      name: CLUB.name,
      zone: CLUB.zone,
      distanceUnit: 'km',
      volumeUnit: 'l',
      hemisphere: 'N',
    },
    cars: [
      circuitCar,
      roadStripCar,
      towCar,
      autocrossHatch,
      laidUpClassic,
      boughtUsed,
      secondCircuitCar,
      roadTripCar,
    ].map((car) => car(day)),
    gear: clubGear(day),
    gearEntries: gearLog(day),
    events: clubCalendar(day),
    plannedLayUps: clubWinter(day),
    orders: clubOrders(day),
    specs: specSheets,
  };
}
