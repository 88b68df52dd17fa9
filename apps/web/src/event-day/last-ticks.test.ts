import { expect, test } from 'vitest';
import { lastTicks } from './last-ticks.ts';

test('lastTicks() lets the last tick of a line decide, whoever made it', () => {
  const tick = (line: string, done: boolean) => ({ carId: 'c', line, done });
  const last = lastTicks([tick('a', true), tick('b', true), tick('a', false)]);
  expect(last.get('a')?.done).toBe(false);
  expect(last.get('b')?.done).toBe(true);
  expect(last.get('c')).toBeUndefined();
});
