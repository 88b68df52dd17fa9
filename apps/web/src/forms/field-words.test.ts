import { expect, test } from 'vitest';
import { fieldWords, namedMessage } from './field-words.ts';

test.each([
  ['entry.odometer.text', 'Odometer'],
  ['email', 'Email'],
  ['garageName', 'Garage name'],
  ['item.limits.0.value', 'Limit 1'],
  ['item.limits.1.weights.circuit', 'Limit 2, circuit'],
  ['item.severe.limits.0.value', 'Hard use, limit 1'],
  ['item.baseline.on', 'Last done'],
  ['item.limits', 'Limits'],
  ['text', 'Text'],
  ['event.travel.distance.text', 'The way there'],
  ['event.requirements.noiseDb', 'Loudest allowed'],
  ['requirements.rulesEdition', 'Edition of the rule set'],
  ['mail.host', 'Server'],
])('fieldWords() reads %s as %s', (path, words) => {
  expect(fieldWords(path)).toBe(words);
});

test('namedMessage() names the field once', () => {
  expect(namedMessage('email', 'Must be an address')).toBe('Email: must be an address');
  expect(namedMessage('entry.odometer.text', 'Odometer: "x" is no number')).toBe(
    'Odometer: "x" is no number',
  );
});
