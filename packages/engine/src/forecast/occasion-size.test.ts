import { describe, expect, it } from 'vitest';
import { occasionSize } from './occasion-size.ts';

const one = () => 1;
const circuitAlone = (useClass: string) => (useClass === 'circuit' ? 3 : 0);

describe('occasionSize()', () => {
  // (3 x 0.35^2 + (1/2)^2 + (1/2)^2)/(3 + 2)
  it('is the mean of those known, with a spread shrunk to a third', () => {
    const { mean, spread2 } = occasionSize([2, 6], 'sessions', one);
    expect(mean).toBe(4);
    expect(spread2).toBeCloseTo((3 * 0.35 ** 2 + 0.5) / 5, 12);
  });

  it('spreads less, but never nothing, where they are all the same', () => {
    expect(occasionSize([5, 5, 5], 'sessions', one).spread2).toBeCloseTo(0.35 ** 2 / 2, 12);
  });

  it.each([
    ['sessions', 4],
    ['launches', 6],
    ['km', 0],
    ['hours', 0],
  ] as const)('expects %s of %d where none is known and the road counts too', (measure, amount) => {
    expect(occasionSize([], measure, one).mean).toBe(amount);
  });

  it.each([
    ['km', 480],
    ['hours', 4.8],
    ['sessions', 12],
    ['launches', 0],
  ] as const)('expects %s of %d where only the circuit counts, threefold', (measure, amount) => {
    const { mean, spread2 } = occasionSize([], measure, circuitAlone);
    expect(mean).toBeCloseTo(amount, 12);
    expect(spread2).toBeCloseTo(amount > 0 ? 0.35 ** 2 : 0, 12);
  });
});
