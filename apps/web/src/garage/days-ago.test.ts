import { expect, test } from 'vitest';
import { daysAgo } from './days-ago.ts';

test.each([
  ['2026-05-04', '2026-05-04', 'today'],
  ['2026-05-03', '2026-05-04', 'yesterday'],
  ['2026-05-05', '2026-05-04', 'tomorrow'],
  ['2026-02-27', '2026-03-01', '2 days ago'],
  ['2024-02-28', '2024-03-01', '2 days ago'],
  ['2025-11-25', '2026-11-25', '365 days ago'],
])('daysAgo() says of %s on %s: %s', (on, today, words) => {
  expect(daysAgo(on, today)).toBe(words);
});
