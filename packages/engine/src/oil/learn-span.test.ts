import { describe, expect, it } from 'vitest';
import { seededNumbers } from '../../test/seeded-numbers.ts';
import { learnSpan } from './learn-span.ts';

describe('learnSpan()', () => {
  it('divides what was poured by how far it rose', () => {
    const learnt = learnSpan({ before: [0.2, 0.2], after: [0.7, 0.7], pouredL: 0.5 });
    expect(learnt?.likelyL).toBeCloseTo(1, 12);
    // two readings that agree: sqrt(4 * 0.09^2 / 6); the rise as far, and 3 % of the bottle
    expect(learnt?.readingSd).toBeCloseTo(0.0734847, 6);
    const relative = Math.hypot(0.0734847 / 0.5, 0.03);
    expect(learnt?.lowL).toBeCloseTo(1 / (1 + 1.2815516 * relative), 6);
    expect(learnt?.highL).toBeCloseTo(1 / (1 - 1.2815516 * relative), 6);
    expect(learnt?.finding).toBe('fine');
  });

  it('is less sure where repeats lie apart, and where it rose little', () => {
    const apart = learnSpan({ before: [0.1, 0.3], after: [0.6, 0.8], pouredL: 0.5 });
    const close = learnSpan({ before: [0.2, 0.2], after: [0.7, 0.7], pouredL: 0.5 });
    expect(apart?.likelyL).toBeCloseTo(close?.likelyL ?? 0, 12);
    expect(apart?.readingSd).toBeGreaterThan(close?.readingSd ?? 9);
    const little = learnSpan({ before: [0.5], after: [0.6], pouredL: 0.1 });
    expect(little).toMatchObject({ finding: 'tooLittle', highL: null });
    expect(learnSpan({ before: [0.3], after: [0.7], pouredL: 0.4 })?.finding).toBe('rough');
  });

  it('says nothing where the level did not rise', () => {
    expect(learnSpan({ before: [0.5], after: [0.5], pouredL: 0.5 })).toBeNull();
    expect(learnSpan({ before: [0.6], after: [0.5], pouredL: 0.5 })).toBeNull();
    expect(learnSpan({ before: [0.5], after: [0.6], pouredL: 0 })).toBeNull();
  });

  it('holds the true span eight times in ten', () => {
    const next = seededNumbers(11);
    const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
    let inside = 0;
    for (let n = 0; n < 4000; n += 1) {
      const read = (level: number) => level + 0.09 * normal();
      const pouredL = 0.6 * (1 + 0.03 * normal());
      const rise = pouredL / 1.2;
      const learnt = learnSpan({
        before: [read(0.2), read(0.2)],
        after: [read(0.2 + rise), read(0.2 + rise)],
        pouredL: 0.6,
      });
      if (learnt && learnt.lowL <= 1.2 && 1.2 <= (learnt.highL ?? Number.POSITIVE_INFINITY))
        inside += 1;
    }
    expect(inside / 4000).toBeGreaterThan(0.76);
    expect(inside / 4000).toBeLessThan(0.84);
  });
});
