import type { SpecSheet } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { emptyRow, readSpec, specFields } from './spec-fields.ts';

const sheet: SpecSheet = {
  lines: [
    { group: 'fluids', what: 'Engine oil with filter', value: '5.5 L', source: 'manual, page 12' },
    { group: 'torques', what: 'Wheel bolts', value: '120 N·m, star order' },
    { group: 'torques', what: 'Sump plug', value: '32 N·m, new washer' },
    { group: 'jacking', what: 'Front', value: 'behind the sill’s notch' },
  ],
};

test('readSpec() gives back what specFields() was made of, letter for letter and in order', () => {
  expect(readSpec(specFields(sheet, 4))).toEqual({ sheet });
});

test('readSpec() leaves a bare line out and faults a half one where it stands', () => {
  const fields = { ...specFields(sheet, 4), other: [emptyRow(), { ...emptyRow(), what: 'Fuse' }] };
  expect(readSpec(fields)).toEqual({
    problems: { 'other.1.value': 'Write the value with its unit, or take the line away.' },
  });
  expect(readSpec({ ...fields, other: [emptyRow()] })).toEqual({ sheet });
});

test('readSpec() says what is too long or too much', () => {
  const long = { what: 'x', value: 'y'.repeat(201), source: '' };
  expect(readSpec({ ...specFields(sheet, 1), other: [long] })).toHaveProperty([
    'problems',
    'other.0.value',
  ]);
  const many = Array.from({ length: 197 }, () => ({ what: 'x', value: 'y', source: '' }));
  expect(readSpec({ ...specFields(sheet, 1), other: many })).toEqual({
    problems: { lines: 'A sheet holds 200 lines; take away 1.' },
  });
});
