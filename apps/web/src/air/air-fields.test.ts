import { expect, test } from 'vitest';
import {
  type AirFields,
  emptyAirPage,
  type Problems,
  pressureIn,
  readAir,
  readTime,
  readTyre,
} from './air-fields.ts';

const air = (temperature: string, barometer: string, humidity: string): AirFields => ({
  temperature: { text: temperature, unit: 'c' },
  barometer: { text: barometer, unit: 'hPa' },
  height: { text: '', unit: 'm' },
  humidity,
});

test('readAir() gives SI whatever units it was typed in', () => {
  const problems: Problems = {};
  const metric = readAir(air('30', '1000', '100'), 'today', problems);
  expect(metric).toMatchObject({ temperatureK: 303.15, pressurePa: 100_000 });
  expect(metric?.dewPointK).toBeCloseTo(303.15, 6);
  const american = readAir(
    {
      temperature: { text: '86', unit: 'f' },
      barometer: { text: '29.53', unit: 'inHg' },
      height: { text: '', unit: 'ft' },
      humidity: '100',
    },
    'today',
    problems,
  );
  expect(american?.temperatureK).toBeCloseTo(303.15, 9);
  expect(american?.pressurePa).toBeCloseTo(100_000, -1);
  expect(problems).toEqual({});
});

test('readAir() takes a weather report’s pressure back to the height of the place', () => {
  const reported = {
    ...air('30', '1013.25', '50'),
    height: { text: '3280.84', unit: 'ft' as const },
  };
  // U.S. Standard Atmosphere, 1976: 898.746 hPa at 1,000 m
  expect(readAir(reported, 'today', {})?.pressurePa).toBeCloseTo(89_874.6, 0);
  const wrong = { ...reported, height: { text: 'high', unit: 'ft' as const } };
  const problems: Problems = {};
  expect(readAir(wrong, 'today', problems)).toBeNull();
  expect(Object.keys(problems)).toEqual(['today.height']);
});

test('readAir() says at its field what is wrong, and knows no air until it is mended', () => {
  const problems: Problems = {};
  expect(readAir(air('30', '29.53', 'wet'), 'other', problems)).toBeNull();
  expect(Object.keys(problems)).toEqual(['other.barometer', 'other.humidity']);
  expect(problems['other.barometer']).toContain('Check the number and its unit');
  expect(readAir(air('', '', ''), 'today', {})).toBeNull();
});

test('readTime() takes what a pass can take', () => {
  const problems: Problems = {};
  expect(readTime('12,84', problems)).toBe(12.84);
  expect(readTime('128.4', problems)).toBeNull();
  expect(problems.time).toContain('3 to 60 seconds');
});

test('readTyre() gives pascals by the gauge and kelvins, and refuses hot air that is colder', () => {
  const page = emptyAirPage(false);
  const typed = {
    ...page,
    hot: { text: '2,2', unit: 'bar' as const },
    hotAir: { text: '80', unit: 'c' as const },
    coldAir: { text: '20', unit: 'c' as const },
    least: { text: '26', unit: 'psi' as const },
  };
  const { tyre, leastPa } = readTyre(typed, {});
  expect(tyre?.hotGaugePa).toBeCloseTo(220_000, 6);
  expect(tyre).toMatchObject({ hotK: 353.15, coldK: 293.15 });
  expect(leastPa).toBeCloseTo(179_263.7, 1);
  const problems: Problems = {};
  expect(readTyre({ ...typed, hotAir: { text: '15', unit: 'c' } }, problems).tyre).toBeNull();
  expect(problems.hotAir).toContain('warmer than cold air');
  expect(readTyre(page, {})).toEqual({ tyre: null, leastPa: null });
});

test.each([
  ['2.1 bar cold', { text: '2.1', unit: 'bar' }],
  ['29 PSI', { text: '29', unit: 'psi' }],
  ['210kPa, road', { text: '210', unit: 'kPa' }],
  ['ask the maker', null],
  ['front 2.1 bar', null],
])('pressureIn(%j)', (value, typed) => {
  expect(pressureIn(value)).toEqual(typed);
});
