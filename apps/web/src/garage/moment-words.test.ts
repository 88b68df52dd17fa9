import { expect, test } from 'vitest';
import { momentWords } from './moment-words.ts';

test('momentWords() gives the time of the zone and names the zone', () => {
  expect(momentWords('2026-11-25T23:05:00Z', 'Europe/Berlin')).toBe(
    '26 November 2026, 00:05 (Europe/Berlin)',
  );
});
