import { describe, expect, it } from 'vitest';
import { logNormalDensity } from '../probability/normal.ts';
import {
  emptyHypothesis,
  type Hypothesis,
  ROAD,
  SIZE,
  startAt,
  USUAL_PRIORS,
} from './hypothesis.ts';
import { add, type LevelTag, type Observed, observe, reset } from './observe.ts';

const SPAN_L = 1;
const SD_L = 0.1;

/** Well known: 0.4 L below MAX give or take 0.1, and hanging together with the rate. */
function known(): Hypothesis {
  const h = emptyHypothesis();
  startAt(h, SPAN_L, USUAL_PRIORS);
  h.x[0] = -0.4;
  h.p[0] = 0.01;
  h.p[ROAD] = -0.02;
  h.p[ROAD * SIZE] = -0.02;
  return h;
}

function look(h: Hypothesis, levelL: number, tag: LevelTag = 'read', sdL = SD_L): Observed {
  const out: Observed = { verdict: 'sound', logLikelihood: 0, weight: 1, variance: 1 };
  observe(h, levelL, sdL, tag, SPAN_L, { gain: new Float64Array(SIZE) }, out);
  return out;
}

describe('observe() of a reading near what is expected', () => {
  it('takes it as sound, and lies between the two afterwards', () => {
    const h = known();
    const { verdict, weight } = look(h, -0.5);
    expect(verdict).toBe('sound');
    expect(weight).toBeGreaterThan(0.95);
    expect(h.x[0]).toBeGreaterThan(-0.5);
    expect(h.x[0]).toBeLessThan(-0.4);
    expect(h.p[0]).toBeLessThan(0.01);
  });

  it('raises the rate where less oil is left than expected', () => {
    const h = known();
    const before = h.x[ROAD] as number;
    look(h, -0.55);
    expect(h.x[ROAD]).toBeGreaterThan(before);
  });

  it('is as likely as the mixture of a sound reading and a gross error says', () => {
    const f = 0.01 + SD_L ** 2;
    const likelihood =
      0.94 * Math.exp(logNormalDensity(-0.1, f)) +
      0.06 * Math.exp(logNormalDensity(-0.1, f + 0.36));
    expect(look(known(), -0.5).logLikelihood).toBeCloseTo(Math.log(likelihood), 12);
  });
});

describe('observe() of a reading far from what is expected', () => {
  it('doubts it, hardly moves, and remembers by how much it was off', () => {
    const h = known();
    expect(look(h, 0.5).verdict).toBe('doubtful');
    expect(Math.abs((h.x[0] as number) + 0.4)).toBeLessThan(0.1);
    expect(h.outlier).toBeCloseTo(0.9, 12);
  });

  it.each([
    [0.5, 'movedUp'],
    [-1.3, 'movedDown'],
  ])('believes it the second time: %d is %s', (levelL, verdict) => {
    const h = known();
    look(h, levelL);
    expect(look(h, levelL).verdict).toBe(verdict);
    expect(Math.abs((h.x[0] as number) - levelL)).toBeLessThan(0.05);
    expect(h.p[ROAD]).toBe(0);
    expect(h.outlier).toBeNaN();
  });

  it('doubts the second one, too, where it is off to the other side', () => {
    const h = known();
    look(h, 0.5);
    expect(look(h, -1.3).verdict).toBe('doubtful');
    expect(h.outlier).toBeLessThan(0);
  });

  it('doubts the second one, too, where the two do not agree within three standard deviations', () => {
    const h = known();
    look(h, 0.3);
    expect(look(h, 0.9).verdict).toBe('doubtful');
  });

  it('forgets it where a sound reading comes between', () => {
    const h = known();
    look(h, 0.5);
    look(h, -0.4);
    expect(h.outlier).toBeNaN();
    expect(look(h, 0.5).verdict).toBe('doubtful');
  });

  it('neither reads nor writes the memory with a level read off the procedure', () => {
    const h = known();
    expect(look(h, 1.5, 'off').verdict).toBe('doubtful');
    expect(h.outlier).toBeNaN();
    look(h, 0.5);
    const before = h.outlier;
    look(h, -0.4, 'off');
    expect(look(h, 0.5, 'off').verdict).toBe('doubtful');
    expect(h.outlier).toBe(before);
  });

  it('never doubts "filled to MAX", and takes what is inferred as it is', () => {
    const [full, weak] = [known(), known()];
    expect(look(full, 1.5, 'full').verdict).toBe('sound');
    const { verdict, weight } = look(weak, 1.5, 'weak');
    expect([verdict, weight]).toEqual(['sound', 1]);
    expect(weak.x[0]).toBeCloseTo((-0.4 + 1.5) / 2, 12);
  });

  it('stays a number however far off it is', () => {
    const h = known();
    const { logLikelihood, weight } = look(h, 1e6);
    expect(weight).toBe(0);
    expect(Number.isFinite(logLikelihood)).toBe(true);
    expect([...h.x, ...h.p].every(Number.isFinite)).toBe(true);
  });
});

describe('add() and reset()', () => {
  it('pours in a volume with its own uncertainty, and leaves the rate alone', () => {
    const h = known();
    add(h, 0.5, 0.02);
    expect(h.x[0]).toBeCloseTo(0.1, 12);
    expect(h.p[0]).toBeCloseTo(0.0104, 12);
    expect(h.p[ROAD]).toBe(-0.02);
  });

  it('sets a level of which the past says nothing more', () => {
    const h = known();
    look(h, 0.5);
    reset(h, -0.05, 0.12);
    expect([h.x[0], h.p[0], h.p[ROAD], h.p[ROAD * SIZE]]).toEqual([-0.05, 0.12 ** 2, 0, 0]);
    expect(h.outlier).toBeNaN();
  });
});
