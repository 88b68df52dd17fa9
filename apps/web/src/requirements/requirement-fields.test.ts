import { requirements, WEIGHED_NEEDS } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { formErrors, readRequirements, requirementFields } from './requirement-fields.ts';
import { requirementLines } from './requirement-lines.ts';
import { whoseWords } from './whose-words.ts';

const full = requirements.parse({
  weights: Object.fromEntries(
    WEIGHED_NEEDS.map((need) => [need, need === 'noise' ? 'off' : 'blocking']),
  ),
  limitsOf: ['engineOil', 'brakeFluid'],
  watched: ['brakeFluid'],
  oilFloor: 0.35,
  odometerDays: 30,
  inspectionDays: 365,
  noiseDb: 98,
  rules: { name: 'Club rules', edition: '2026-01-01' },
});

test('readRequirements() gives back what requirementFields() was made of', () => {
  const problems = {};
  expect(readRequirements(requirementFields(full), 'requirements', problems)).toEqual(full);
  expect(problems).toEqual({});
});

test('readRequirements() leaves out noise and rules that were not given', () => {
  const fields = { ...requirementFields(full), noiseDb: ' ', rulesName: '', rulesEdition: '' };
  const { noiseDb: _noise, rules: _rules, ...rest } = full;
  expect(readRequirements(fields, 'requirements', {})).toEqual(rest);
});

test('readRequirements() says beside which field what is wrong', () => {
  const problems = {};
  const fields = {
    ...requirementFields(full),
    odometerDays: 'soon',
    inspectionDays: '2.5',
    noiseDb: '400',
    rulesEdition: '',
  };
  expect(readRequirements(fields, 'event.requirements', problems)).toBeNull();
  expect(problems).toEqual({
    'event.requirements.odometerDays':
      '"soon" is not a number; write digits with one decimal point, such as 12.5',
    'event.requirements.inspectionDays': 'Write a whole number of days.',
    'event.requirements.noiseDb': 'Noise: at most 150 dB',
    'event.requirements.rulesEdition': 'Give the day of their edition, or clear the name.',
  });
});

test('formErrors() puts what the server says of a rule set at the fields of the form', () => {
  const wrong = { 'event.requirements.rules.edition': 'No', 'event.name': 'No' };
  expect(formErrors(wrong)).toEqual({
    'event.requirements.rulesEdition': 'No',
    'event.name': 'No',
  });
});

test('requirementLines() says each thing in words', () => {
  const lines = Object.fromEntries(
    requirementLines(full).map(({ label, words }) => [label, words]),
  );
  expect(lines).toMatchObject({
    Advice: 'nothing',
    'Not asked': 'Noise measured',
    'Limits that block': 'the engine oil, the brake fluid',
    'Oil stays above': '35 % of the way to MAX',
    'Odometer read within': '30 days',
    'Loudest allowed': '98 dB',
    'Rule set': 'Club rules, edition of 1 January 2026',
  });
});

test('whoseWords() tells the event’s own, the garage’s and the usual ones apart', () => {
  const { rules: _rules, ...plain } = full;
  const row = { use: 'circuit', requirements: plain, usual: true } as const;
  expect(whoseWords(null, row)).toBe('the usual for a circuit day; common practice, no source');
  expect(whoseWords(null, { ...row, usual: false })).toBe('this garage’s for a circuit day');
  expect(whoseWords(full, row)).toBe('this event’s own; Club rules, edition of 1 January 2026');
});
