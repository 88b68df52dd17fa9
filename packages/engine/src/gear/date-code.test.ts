import { describe, expect, it, test } from 'vitest';
import { ageDays, madeFrom, readDateCode } from './date-code.ts';

describe('readDateCode()', () => {
  it.each(['0120', ' 01 20 ', 'DOT AB12 CDEF 0120', 'ab12cdef0120', 'DOT AB12-CDEF-0120'])(
    'reads "%s"',
    (text) => expect(readDateCode(text)).toEqual({ week: 1, year: 2020 }),
  );

  it.each(['', '01', 'DOT', '50107', '012 0 1', 'week 3'])(
    'has a way to write for "%s"',
    (text) => {
      expect(readDateCode(text)).toEqual({
        problem: `"${text}" is not a date code; write the last four digits on the tyre: week and year, such as 0120`,
      });
    },
  );

  it.each(['129', 'DOT AB12 CDEF 129'])(
    'refuses three digits, "%s", and says how old that is',
    (text) => {
      expect(readDateCode(text)).toEqual({
        problem: expect.stringMatching(/before 2000.*out by age/),
      });
    },
  );
});

test('madeFrom() is the Sunday that begins the week', () => {
  // 2023 begins with a Sunday, 2022 with a Saturday, 2024 with a Monday
  expect(madeFrom({ year: 2023, week: 1 })).toBe('2023-01-01');
  expect(madeFrom({ year: 2022, week: 1 })).toBe('2022-01-02');
  expect(madeFrom({ year: 2024, week: 1 })).toBe('2024-01-07');
  expect(madeFrom({ year: 2023, week: 10 })).toBe('2023-03-05');
});

test('ageDays() counts from there, below zero where the code lies ahead', () => {
  expect(ageDays({ year: 2023, week: 1 }, '2024-01-01')).toBe(365);
  expect(ageDays({ year: 2023, week: 10 }, '2023-03-04')).toBe(-1);
});
