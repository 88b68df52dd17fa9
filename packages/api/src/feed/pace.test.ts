import { expect, test } from 'vitest';
import { feedPace } from './pace.ts';

const at = (minute: number) => new Date(Date.UTC(2026, 5, 15, 10, minute));

test('mayAsk() lets each calendar ask 60 times within an hour, and says when it may again', () => {
  const pace = feedPace();
  for (let time = 0; time < 60; time++) expect(pace.mayAsk('f1', at(0))).toBeNull();
  expect(pace.mayAsk('f1', at(15))).toBe(45 * 60);
  expect(pace.mayAsk('f2', at(15))).toBeNull();
  expect(pace.mayAsk('f1', at(60))).toBeNull();
});

test('inTurn() works for two at once, has twenty wait in the order they came, and sends the rest away', async () => {
  const pace = feedPace();
  const ends: (() => void)[] = [];
  const began: number[] = [];
  const work = (n: number) =>
    pace.inTurn(() => {
      began.push(n);
      return new Promise<number>((resolve) => ends.push(() => resolve(n)));
    });
  const asked = Array.from({ length: 23 }, (_, n) => work(n));
  expect(await asked[22]).toBeNull();
  expect(began).toEqual([0, 1]);
  for (let n = 0; n < 22; n++) {
    ends[n]?.();
    expect(await asked[n]).toBe(n);
    expect(began).toHaveLength(Math.min(n + 3, 22));
  }
  expect(began).toEqual(Array.from({ length: 22 }, (_, n) => n));
});

test('inTurn() hands on the place of one whose work failed', async () => {
  const pace = feedPace();
  for (let n = 0; n < 3; n++)
    await expect(pace.inTurn(() => Promise.reject(new Error('no')))).rejects.toThrow('no');
  expect(await pace.inTurn(() => Promise.resolve('done'))).toBe('done');
});
