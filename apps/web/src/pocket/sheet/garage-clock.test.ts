import { expect, test } from 'vitest';
import { clockAhead, clockWords, momentIn } from './garage-clock.ts';

test('momentIn() tells the garage’s day and minute, whatever zone the phone is in', () => {
  const justAfterMidnight = Date.UTC(2026, 5, 14, 23, 5);
  expect(momentIn(justAfterMidnight, 'Europe/London')).toEqual({ on: '2026-06-15', time: '00:05' });
  expect(momentIn(justAfterMidnight, 'America/New_York')).toEqual({
    on: '2026-06-14',
    time: '19:05',
  });
});

test('clockAhead() takes the answer for made half way', () => {
  const at = '2026-06-15T10:00:00.000Z';
  const now = Date.parse(at);
  expect(clockAhead(at, now - 100, now + 100)).toBe(0);
  // half a millisecond is no instant
  expect(Number.isInteger(clockAhead(at, now, now + 1))).toBe(true);
  expect(clockAhead(at, now + 86_400_000, now + 86_400_000)).toBe(-86_400_000);
});

test.each([
  [0, null],
  [9 * 60_000, null],
  [-12 * 60_000, 'This phone’s clock is 12 minutes ahead'],
  [3_600_000, 'This phone’s clock is an hour behind'],
  [-5 * 3_600_000, 'This phone’s clock is 5 hours ahead'],
  [-86_400_000, 'This phone’s clock is a day ahead'],
  [3 * 86_400_000, 'This phone’s clock is 3 days behind'],
])('clockWords() says of a garage %i ms ahead: %s', (ahead, words) => {
  if (words === null) expect(clockWords(ahead)).toBeNull();
  else expect(clockWords(ahead)).toContain(words);
});
