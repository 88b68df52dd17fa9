import { expect, test } from 'vitest';
import { limitsWords, limitWords } from './limit-words.ts';

test('limitWords() gives a limit back in the unit it was typed in', () => {
  expect(limitWords({ measure: 'km', value: 7500, unit: 'mi' })).toBe('7,500 mi');
  expect(limitWords({ measure: 'hours', value: 16 })).toBe('16 h');
  expect(limitWords({ measure: 'launches', value: 1 })).toBe('1 launch');
  expect(limitWords({ measure: 'months', value: 12 })).toBe('12 months');
  expect(limitWords({ measure: 'days', value: 1 })).toBe('1 day');
  expect(limitWords({ measure: 'date', value: '2027-06-27' })).toBe('27 June 2027 on the label');
});

test('limitsWords() says that the first to come decides, where there are several', () => {
  const sessions = { measure: 'sessions', value: 18 } as const;
  const months = { measure: 'months', value: 12 } as const;
  const km = { measure: 'km', value: 6000, unit: 'km' } as const;
  expect(limitsWords([sessions])).toBe('18 sessions');
  expect(limitsWords([km, sessions, months])).toBe(
    '6,000 km, 18 sessions or 12 months, whichever comes first',
  );
});
