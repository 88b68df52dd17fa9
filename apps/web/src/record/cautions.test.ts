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

test('cautionsFor() has wheels tightened in order and the car stand on more than a jack', () => {
  const words = said('wheels', {});
  expect(words).toContain('manual’s torque');
  expect(words).toContain('a jack alone');
});

test('cautionsFor() has new pads and discs bedded within the law, and no handbrake on hot discs', () => {
  expect(said('fit', {}, ['brake pads', 'Front pads'])).toContain('No handbrake on hot discs');
  expect(said('fit', {}, ['tyres', 'Grey wheels'])).not.toContain('No handbrake on hot discs');
});

test('cautionsFor() names fuel vapour and the battery at lay-up, and the air at wake-up', () => {
  expect(said('layUp', {})).toContain('vapour');
  expect(said('layUp', {})).toContain('no spark');
  expect(said('wakeUp', {})).toContain('carbon monoxide');
});

test('cautionsFor() leaves the high voltage of a hybrid to those who are qualified', () => {
  expect(said('repair', { drive: 'hybrid' })).toContain('Orange cables');
  expect(said('repair', { drive: 'combustion' })).not.toContain('Orange cables');
});
