import { expect, test } from 'vitest';
import { waitAfterMs } from './wait.ts';

test('waitAfterMs() doubles from one minute and stays at one hour', () => {
  const minutes = [1, 2, 3, 6, 7, 8, 40, 5000].map((failures) => waitAfterMs(failures) / 60_000);
  expect(minutes).toEqual([1, 2, 4, 32, 60, 60, 60, 60]);
});
