import { expect, test } from 'vitest';
import { cautionsFor } from './cautions.ts';

const said = (...lists: Parameters<typeof cautionsFor>) => cautionsFor(...lists).join(' ');

test('cautionsFor() has a dry sump read hot and idling, never cold, and names the air', () => {
  const words = said('oilCheck', { sump: 'dry' });
  expect(words).toContain('hot and idling');
  expect(words).toContain('never add oil on one');
  expect(words).toContain('carbon monoxide');
});

test('cautionsFor() follows the car’s own procedure before the kind of its sump', () => {
  const dipstick = { state: 'hotStopped', minutesAfterStop: 5 } as const;
  const words = said('oilCheck', { sump: 'dry', dipstick });
  expect(words).toContain('5 minutes after stopping');
  expect(words).not.toContain('idling');
});

test('cautionsFor() says nothing of a stick whose procedure nobody gave', () => {
  expect(cautionsFor('oilCheck', { sump: 'wet' })).toEqual([]);
});

test('cautionsFor() warns of overfilling wherever oil goes in', () => {
  expect(said('oilTopUp', {})).toContain('Never above MAX');
  expect(said('oilChange', {})).toContain('Never above MAX');
});

test.each([
  ['Brake fluid, flush', 'Pump the pedal'],
  ['Front brake pads', 'Pump the pedal'],
  ['Wheel bearings', 'torque'],
  ['Fuel filter', 'vapour'],
  ['Coolant', 'scalds'],
  ['Gearbox oil', 'Hot oil burns'],
])('cautionsFor() says of the service of %s what can hurt', (name, words) => {
  expect(said('service', {}, [name])).toContain(words);
  expect(said('service', {}, ['Cabin filter'])).not.toContain(words);
});

test('cautionsFor() speaks of lifting before any service', () => {
  expect(said('service', {})).toContain('a jack alone');
});
