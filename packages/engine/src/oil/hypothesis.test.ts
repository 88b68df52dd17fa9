import { describe, expect, it } from 'vitest';
import {
  absorb,
  CIRCUIT,
  copyInto,
  emptyHypothesis,
  type Hypothesis,
  mergeInto,
  ROAD,
  SIZE,
  STEP,
  startAt,
  USUAL_PRIORS,
} from './hypothesis.ts';

function made(seed: number, logWeight: number, outlier = Number.NaN): Hypothesis {
  const h = emptyHypothesis();
  const factor = Array.from({ length: SIZE * SIZE }, (_, at) => Math.sin(seed * (at + 1)));
  for (let i = 0; i < SIZE; i += 1) {
    h.x[i] = Math.cos(seed * (i + 1));
    for (let j = 0; j < SIZE; j += 1)
      for (let k = 0; k < SIZE; k += 1)
        h.p[i * SIZE + j] =
          (h.p[i * SIZE + j] as number) +
          (factor[i * SIZE + k] as number) * (factor[j * SIZE + k] as number);
  }
  h.logWeight = logWeight;
  h.outlier = outlier;
  return h;
}

describe('startAt()', () => {
  it('knows a third of the span down and what is usual, and of a step nothing', () => {
    const h = emptyHypothesis();
    startAt(h, 2, USUAL_PRIORS);
    expect(h.x[0]).toBe(-0.7);
    expect(Math.exp(h.x[ROAD] as number)).toBeCloseTo(0.25, 12);
    expect(Math.exp(h.x[CIRCUIT] as number)).toBeCloseTo(3.3, 12);
    expect([h.p[0], h.p[STEP * SIZE + STEP], h.logWeight]).toEqual([0.36, 0, 0]);
  });
});

describe('absorb()', () => {
  it('takes the step into the rate: what the rate was with it, it is without', () => {
    const [h, before] = [made(0.7, 0), made(0.7, 0)];
    absorb(h);
    const at = (one: Hypothesis, i: number, j: number) => one.p[i * SIZE + j] as number;
    expect(h.x[ROAD]).toBeCloseTo((before.x[ROAD] as number) + (before.x[STEP] as number), 12);
    expect(h.x[STEP]).toBe(0);
    expect(at(h, ROAD, ROAD)).toBeCloseTo(
      at(before, ROAD, ROAD) + 2 * at(before, ROAD, STEP) + at(before, STEP, STEP),
      12,
    );
    expect(at(h, 0, ROAD)).toBeCloseTo(at(before, 0, ROAD) + at(before, 0, STEP), 12);
    for (let j = 0; j < SIZE; j += 1) {
      expect([at(h, STEP, j), at(h, j, STEP)]).toEqual([0, 0]);
      expect(at(h, ROAD, j)).toBeCloseTo(at(h, j, ROAD), 12);
    }
  });
});

describe('mergeInto()', () => {
  it('has the mean and the covariance of the two together', () => {
    const [to, from] = [made(0.4, Math.log(0.3)), made(1.3, Math.log(0.1))];
    const merged = emptyHypothesis();
    copyInto(merged, to);
    mergeInto(merged, from);
    const [keep, share] = [0.75, 0.25];
    const both = (of: (h: Hypothesis) => number) => keep * of(to) + share * of(from);
    for (let i = 0; i < SIZE; i += 1) {
      expect(merged.x[i]).toBeCloseTo(
        both(({ x }) => x[i] as number),
        12,
      );
      for (let j = 0; j < SIZE; j += 1) {
        const second = both(
          ({ x, p }) => (p[i * SIZE + j] as number) + (x[i] as number) * (x[j] as number),
        );
        const product = (merged.x[i] as number) * (merged.x[j] as number);
        expect(merged.p[i * SIZE + j]).toBeCloseTo(second - product, 12);
      }
    }
    expect(Math.exp(merged.logWeight)).toBeCloseTo(0.4, 12);
  });

  it.each([
    ['what the heavier one does', Math.log(0.1), Math.log(0.2), 9],
    ['what the receiving one does where it is heavier', Math.log(0.3), Math.log(0.2), 4],
    ['what the receiving one does where both are equal', -1, -1, 4],
  ])('remembers %s', (_, toWeight, fromWeight, outlier) => {
    const to = made(0.4, toWeight, 4);
    const from = made(1.3, fromWeight, 9);
    from.steps = [{ before: 3, size: 0.8 }];
    mergeInto(to, from);
    expect(to.outlier).toBe(outlier);
    expect(to.steps).toHaveLength(outlier === 9 ? 1 : 0);
  });

  it('does nothing where neither weighs anything', () => {
    const to = made(0.4, Number.NEGATIVE_INFINITY);
    mergeInto(to, made(1.3, Number.NEGATIVE_INFINITY));
    expect(to).toEqual(made(0.4, Number.NEGATIVE_INFINITY));
  });
});
