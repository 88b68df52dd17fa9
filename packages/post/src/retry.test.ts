import { describe, expect, test } from 'vitest';
import type { Outcome } from './outcome.ts';
import { afterTry, MOST_TRIES, waitAfter } from './retry.ts';

const later: Outcome = { is: 'tryAgain', by: 'server', said: '451 busy', answerLost: false };

test.each([
  [1, 60],
  [2, 300],
  [3, 900],
  [4, 3600],
  [5, 7200],
  [6, 14_400],
  [7, 28_800],
])('waitAfter(%i) is %i s, a fifth more or less', (tries, waitS) => {
  expect(waitAfter(tries, 0.5)).toBe(waitS);
  expect(waitAfter(tries, 0)).toBe(0.8 * waitS);
  expect(waitAfter(tries, 0.999_999)).toBe(Math.round(1.2 * waitS));
});

test('waitAfter() the last try is none, and all waits end before the next night', () => {
  expect(waitAfter(MOST_TRIES, 0.5)).toBeNull();
  let sumS = 0;
  for (let tries = 1; tries < MOST_TRIES; tries += 1) sumS += waitAfter(tries, 0.999_999) ?? 0;
  expect(sumS / 3600).toBeLessThan(20);
});

test.each([
  [0, 0.5],
  [1.5, 0.5],
  [1, 1],
  [1, -0.1],
  [1, Number.NaN],
])('waitAfter(%d, %d) is refused', (tries, jitter) => {
  expect(() => waitAfter(tries, jitter)).toThrow(RangeError);
});

describe('afterTry()', () => {
  test('is delivered where it was accepted, at the last try too', () => {
    const accepted: Outcome = { is: 'accepted', said: '250 ok' };
    expect(afterTry(accepted, MOST_TRIES, 0)).toEqual({
      is: 'delivered',
      tries: MOST_TRIES,
      said: '250 ok',
    });
  });

  test('gives up at once what was refused, with the words', () => {
    const refused: Outcome = { is: 'refused', by: 'server', said: '550 no such box' };
    expect(afterTry(refused, 1, 0)).toEqual({
      is: 'givenUp',
      tries: 1,
      because: 'refused',
      said: '550 no such box',
    });
  });

  test('waits, and gives up after the last try, with the words', () => {
    expect(afterTry(later, 1, 0.5)).toEqual({
      is: 'waiting',
      tries: 1,
      waitS: 60,
      said: '451 busy',
    });
    expect(afterTry(later, MOST_TRIES, 0.5)).toEqual({
      is: 'givenUp',
      tries: MOST_TRIES,
      because: 'triesUsedUp',
      said: '451 busy',
    });
  });

  test.each([
    [10, 60],
    [600, 600],
    [999_999_999, 28_800],
  ])('waits for the %i s that a server asks for, within reason: %i s', (notBeforeS, waitS) => {
    expect(afterTry({ ...later, notBeforeS }, 1, 0.5)).toMatchObject({ waitS });
  });
});
