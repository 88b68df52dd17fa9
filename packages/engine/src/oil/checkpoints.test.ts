import { describe, expect, it } from 'vitest';
import { resumeLedger } from './checkpoints.ts';
import { foldLedger } from './fold.ts';
import { USUAL_PRIORS } from './hypothesis.ts';
import type { OilOperation } from './operation.ts';

/** Four hundred looks, 400 km apart, with a bottle at every fifth. */
function operations(count = 400): OilOperation[] {
  return Array.from({ length: count }, (_, at) => ({
    entry: `e${at}`,
    drive: { road: 0.4, circuit: at % 7 === 0 ? 0.12 : 0, runs: 0 },
    steps: [
      {
        does: 'observe' as const,
        levelL: -0.3 - 0.1 * (at % 5),
        sdL: 0.1,
        tag: 'read' as const,
        read: { level: 0.7 - 0.1 * (at % 5), condition: null, offProcedure: false },
      },
      ...(at % 5 === 4 ? [{ does: 'add' as const, volumeL: 0.5, sdL: 0.015 }] : []),
    ],
  }));
}

const run = (all: OilOperation[], before: Parameters<typeof resumeLedger>[3] = []) =>
  resumeLedger(1, USUAL_PRIORS, all, before);
const bits = (state: unknown) => JSON.stringify(state);

describe('resumeLedger()', () => {
  const all = operations();
  const whole = run(all);

  it('runs everything where there is no checkpoint, like the plain fold', () => {
    expect(whole.steps).toBe(400);
    expect(whole.checkpoints.map(({ count }) => count)).toEqual([64, 128, 192, 256, 320, 384]);
    expect(bits(whole.state)).toBe(bits(foldLedger(1, USUAL_PRIORS, all).state));
  });

  it('runs at most 64 operations beside an appended one, to the same bits', () => {
    const longer = operations(401);
    const resumed = run(longer, whole.checkpoints);
    expect(resumed.steps).toBe(401 - 384);
    expect(bits(resumed.state)).toBe(bits(run(longer).state));
  });

  it('begins before the entry that was amended, to the same bits', () => {
    const amended = operations();
    amended[200] = { ...(amended[200] as OilOperation), steps: [] };
    const resumed = run(amended, whole.checkpoints);
    expect(resumed.steps).toBe(400 - 192);
    expect(bits(resumed.state)).toBe(bits(run(amended).state));
    expect(bits(resumed.state)).not.toBe(bits(whole.state));
  });

  it('takes no checkpoint of another span', () => {
    expect(resumeLedger(1.2, USUAL_PRIORS, all, whole.checkpoints).steps).toBe(400);
  });

  it('leaves the checkpoints it was given as they are', () => {
    const before = bits(whole.checkpoints);
    run(operations(450), whole.checkpoints);
    expect(bits(whole.checkpoints)).toBe(before);
  });
});
