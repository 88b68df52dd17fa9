import { expect, test } from 'vitest';
import { coldPressure, densityAltitude, passToday } from './air-sums.ts';

const air = (celsius: number, hectopascals: number, dewC: number) => ({
  temperatureK: celsius + 273.15,
  pressurePa: hectopascals * 100,
  dewPointK: dewC + 273.15,
});

test('densityAltitude() names metres and feet, the garage’s own first', () => {
  // by the formula of the National Weather Service: 2,482.5 ft
  expect(densityAltitude(air(30, 1000, 20), 'km').words).toBe(
    'Density altitude: 757 m (2,483 ft).',
  );
  expect(densityAltitude(air(30, 1000, 20), 'mi').words).toBe(
    'Density altitude: 2,483 ft (757 m).',
  );
});

test('passToday() says which way the air moves a time, and how far it can be trusted', () => {
  const cool = air(15, 1020, 5);
  const hot = air(35, 950, 15);
  const slower = passToday(13.2, cool, hot);
  expect(slower.words).toMatch(
    /^13\.20 s of that day would be about 13\.\d\d s today, 0\.\d+ s more\.$/,
  );
  expect(passToday(13.2, hot, cool).words).toMatch(/ s less\.$/);
  expect(slower.beside.join(' ')).toContain('Not meant for engines with a turbocharger');
  expect(slower.beside.join(' ')).not.toContain('no more than a hint');
  expect(passToday(13.2, air(-5, 1020, -10), hot).beside.join(' ')).toContain(
    'no more than a hint',
  );
});

test('coldPressure() never goes below the maker’s least, and says when nobody said what it is', () => {
  // (220 + 101.325) x 293.15 / 353.15 - 101.325 = 165.4 kPa
  const tyre = { hotGaugePa: 220_000, coldK: 293.15, hotK: 353.15 };
  const free = coldPressure(tyre, null, 'bar');
  expect(free.words).toBe('Pump 1.65 bar cold for 2.2 bar hot.');
  expect(free.beside.join(' ')).toContain('minimum is not on record');
  expect(coldPressure(tyre, 160_000, 'psi').words).toBe('Pump 24 psi cold for 31.9 psi hot.');
  const held = coldPressure(tyre, 200_000, 'bar');
  // (200 + 101.325) x 353.15 / 293.15 - 101.325 = 261.7 kPa
  expect(held.words).toBe(
    'Pump 2 bar cold, the least: 1.65 bar would be below it. Hot it will be 2.62 bar.',
  );
  expect(held.beside.join(' ')).toContain('before the road');
});
