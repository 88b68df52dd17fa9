import { expect, test } from 'vitest';
import { planQuestion, planWhenWords, planWords } from './plan-words.ts';

const winter = { start: '2026-11-01', end: '2027-03-25' };
const open = { start: '2026-11-01' };

test('planWords() says its days, and that no end is said', () => {
  expect(planWords(winter)).toBe('from 1 November 2026 to 25 March 2027');
  expect(planWords(open)).toBe('from 1 November 2026, no end said');
  expect(planWords({ start: '2026-11-01', end: '2026-11-01' })).toBe('on 1 November 2026');
});

test('planWhenWords() counts to the first day, then tells how far the plan has come', () => {
  expect(planWhenWords(winter, '2026-10-30')).toBe('in 2 days');
  expect(planWhenWords(open, '2026-11-01')).toBe('begins today, by the plan');
  expect(planWhenWords(open, '2027-11-01')).toBe('began 365 days ago, by the plan');
  expect(planWhenWords(winter, '2027-03-27')).toBe('ended 2 days ago, by the plan');
});

test('planQuestion() asks once the first day has come, and no more once a lay-up is on record', () => {
  expect(planQuestion(winter, [], '2026-10-31')).toBeNull();
  expect(planQuestion(winter, [], '2026-11-01')?.question).toBe(
    'Planned to be laid up from today on: is it?',
  );
  expect(planQuestion(winter, [], '2026-12-01')?.question).toBe(
    'Planned to be laid up since 1 November 2026: is it?',
  );
  expect(planQuestion(winter, [{ id: 'e', start: '2026-11-20' }], '2026-12-01')).toBeNull();
});

test('planQuestion() never claims that days of which nothing is on record count as storage', () => {
  expect(planQuestion(open, [], '2026-12-01')?.meanwhile).toContain('in use up to today');
  const over = planQuestion(winter, [], '2027-04-01');
  expect(over?.question).toBe(
    'It was planned to be laid up from 1 November 2026 to 25 March 2027: was it?',
  );
  expect(over?.meanwhile).toContain('count as days in use');
});
