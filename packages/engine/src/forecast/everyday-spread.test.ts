import { describe, expect, it } from 'vitest';
import { dispersionOf } from './everyday-spread.ts';
import type { Fit } from './fit-stream.ts';
import type { MeterDays } from './season.ts';

const FIRST = 20_000;
/** Ten a day, every day as good as any other. */
const fit = { longRun: 10, seasonalDays: (after: number, last: number) => last - after } as Fit;

function dispersion(
  use: readonly number[],
  readings: readonly number[] | null,
  blanks: MeterDays['blanks'] = [],
) {
  const until = use.length - 1;
  const meter = readings && { readings: readings.map((day) => FIRST + day), blanks };
  const stream = { use: Float64Array.from(use), from: 0, until, blank: null };
  return dispersionOf(stream, fit, meter, FIRST);
}

const steady = (days: number, amount = 10) => Array<number>(days).fill(amount);
/** Four blocks of 28 days with a squared relative spread of 0.49, per unit of the mean. */
const PRIOR = 4 * 0.49 * 28 * 10;

describe('dispersionOf()', () => {
  it('is the prior without a block', () => {
    expect(dispersion(steady(20), null)).toBeCloseTo(PRIOR / 4, 9);
    expect(dispersion(steady(20), [0, 19])).toBeCloseTo(PRIOR / 4, 9);
  });

  it('shrinks with every block that is as expected', () => {
    expect(dispersion(steady(85), null)).toBeCloseTo(PRIOR / 7, 9);
  });

  // 140 more than 280 in the one block: 140^2/280 = 70
  it('grows with what a block is off, by hand', () => {
    expect(dispersion([...steady(15), ...steady(14, 20)], null)).toBeCloseTo((PRIOR + 70) / 5, 9);
  });

  it('closes blocks of 28 days and more at readings alone', () => {
    // 0..10..27..40 is one block of 40 days, 40..80 another; the last five days are none
    expect(dispersion(steady(86), [0, 10, 27, 40, 80, 85])).toBeCloseTo(PRIOR / 6, 9);
  });

  it('does not depend on how close together the readings are', () => {
    const use = Array.from({ length: 113 }, (_, day) => (day % 2 === 0 ? 20 : 0));
    const daily = Array.from({ length: 113 }, (_, day) => day);
    expect(dispersion(use, daily)).toBeCloseTo(dispersion(use, [0, 28, 56, 84, 112]), 9);
  });

  it('is nothing where nothing is expected', () => {
    const none = { longRun: 0, seasonalDays: () => 30 } as unknown as Fit;
    const stream = { use: new Float64Array(90), from: 0, until: 89, blank: null };
    expect(dispersionOf(stream, none, null, FIRST)).toBe(0);
  });
});
