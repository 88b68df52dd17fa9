import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { longestRun } from './longest-run.ts';

const run = (values: number[]) => longestRun(values).map((index) => values[index]);

describe('longestRun()', () => {
  it('keeps everything that never falls, equal values among it', () => {
    expect(run([100, 100, 250, 250, 300])).toEqual([100, 100, 250, 250, 300]);
  });

  it('drops one high value in the middle', () => {
    expect(run([100, 250, 200, 300])).toEqual([100, 200, 300]);
  });

  it('lets the later of two readings win a tie', () => {
    expect(run([500, 490])).toEqual([490]);
    expect(run([100, 200, 150])).toEqual([100, 150]);
  });

  it('is empty for nothing', () => {
    expect(longestRun([])).toEqual([]);
  });

  it('is as long as a search over all pairs finds it, never falls and keeps the order', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 30 }), { maxLength: 40 }), (values) => {
        const longest: number[] = [];
        values.forEach((value, at) => {
          const before = values
            .slice(0, at)
            .map((earlier, index) => (earlier <= value ? (longest[index] ?? 0) : 0));
          longest.push(1 + Math.max(0, ...before));
        });
        const indices = longestRun(values);
        const kept = run(values);
        expect(indices).toHaveLength(Math.max(0, ...longest));
        expect(indices).toEqual([...indices].sort((a, b) => a - b));
        expect(kept).toEqual([...kept].sort((a, b) => (a ?? 0) - (b ?? 0)));
      }),
    );
  });
});
