import type { SpecLine } from '@quartermark/engine/log';
import { carId } from './record-id.ts';
import type { SeedGarage } from './seed-garage.ts';

const MANUAL = "maker's manual of this invented car";

const FIRST_CAR: SpecLine[] = [
  { group: 'fluids', what: 'Engine oil with filter', value: '9.1 L of 10W-50', source: MANUAL },
  { group: 'fluids', what: 'Oil tank alone', value: '2.1 L', source: "owner's own value" },
  { group: 'fluids', what: 'Brake fluid, whole system', value: '1.0 L', source: MANUAL },
  { group: 'torques', what: 'Centre lock, cold', value: '540 N·m', source: MANUAL },
  { group: 'torques', what: 'Sump plug', value: '32 N·m, new washer', source: MANUAL },
  { group: 'torques', what: 'Brake calliper to upright', value: '95 N·m' },
  {
    group: 'pressures',
    what: 'Circuit, cold',
    value: '1.7 bar all round',
    source: "owner's own value",
  },
  { group: 'pressures', what: 'Road, cold', value: '2.2 bar front, 2.4 bar rear', source: MANUAL },
  {
    group: 'jacking',
    what: 'Front',
    value: 'pads inboard of the sills, both sides',
    source: MANUAL,
  },
  {
    group: 'jacking',
    what: 'Rear',
    value: 'never the sump guard; pads before the arches',
    source: MANUAL,
  },
];

const TRIP_CAR: SpecLine[] = [
  { group: 'fluids', what: 'Engine oil with filter', value: '4.8 L of 5W-40', source: MANUAL },
  { group: 'torques', what: 'Wheel bolts, cold, star order', value: '120 N·m', source: MANUAL },
  {
    group: 'pressures',
    what: 'Two and luggage, cold',
    value: '2.5 bar front, 2.8 bar rear',
    source: MANUAL,
  },
];

/** Spec sheets of two of the invented cars. */
export const specSheets: SeedGarage['specs'] = [
  { carId: carId(1), sheet: { lines: FIRST_CAR } },
  { carId: carId(8), sheet: { lines: TRIP_CAR } },
];
