import { formatVolume } from '@quartermark/engine/display';
import { distanceKm, temperatureC, volumeL } from '@quartermark/engine/log';
import {
  celsius,
  KM_PER_UNIT,
  KPA_PER_UNIT,
  LITRES_PER_UNIT,
  MM_PER_UNIT,
  NEWTON_METRES_PER_UNIT,
} from '@quartermark/engine/units';
import { expect, test } from 'vitest';
import units from './data/units.json' with { type: 'json' };

/** Sources stand in the data file beside the figures. */
const ours: Record<keyof typeof units.exact, number> = {
  'km per mile': KM_PER_UNIT.mi,
  'L per US liquid quart': LITRES_PER_UNIT.usQt,
  'L per US gallon': LITRES_PER_UNIT.usGal,
  'L per imperial quart': LITRES_PER_UNIT.impQt,
  'L per imperial gallon': LITRES_PER_UNIT.impGal,
  'kPa per psi': KPA_PER_UNIT.psi,
  'N m per lbf ft': NEWTON_METRES_PER_UNIT.lbfFt,
  'mm per 1/32 in': MM_PER_UNIT.in32,
};

test.each(Object.entries(units.exact))(
  'units: %s is the exact ratio',
  (name, [numerator, denominator]) => {
    const exact = Number(numerator) / Number(denominator);
    const found = ours[name as keyof typeof ours];
    // the nearest double, or its neighbour
    expect(Math.abs(found / exact - 1)).toBeLessThanOrEqual(2 ** -52);
  },
);

const { note: _, ...printed } = units.printedSevenDigits;
test.each(Object.entries(printed))('units: %s is as printed to seven digits', (name, figure) => {
  expect(Math.abs(ours[name as keyof typeof ours] / figure - 1)).toBeLessThan(1e-7);
});

test('units: the small ones are powers of ten of the base', () => {
  expect(LITRES_PER_UNIT).toMatchObject({ l: 1, ml: 0.001 });
  expect(KPA_PER_UNIT).toMatchObject({ kPa: 1, bar: 100 });
});

test.each(units.celsiusOfFahrenheit)('celsius() makes %d F into %d C', (fahrenheit, degrees) => {
  expect(celsius(Number(fahrenheit), 'f')).toBeCloseTo(Number(degrees), 12);
});

test('distanceKm(), volumeL() and temperatureC() apply them to what was typed', () => {
  expect(distanceKm({ text: '7,500', unit: 'mi' })).toBe(12070.08);
  expect(volumeL({ text: '1', unit: 'usQt' })).toBe(0.946352946);
  expect(temperatureC({ text: '212', unit: 'f' })).toBeCloseTo(100, 12);
});

test('formatVolume() undoes them', () => {
  expect(formatVolume(0.946352946, 'usQt')).toBe('1 US qt');
  expect(formatVolume(1.1365225, 'impQt')).toBe('1 imp qt');
});
