import fc from 'fast-check';
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
/** What is written for scratch is no part of what was learnt. */
const bits = (state: unknown) =>
  JSON.stringify(state, (name, value) => (name === 'room' ? null : value));

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

  type Change = { does: 'append' | 'amend' | 'remove' | 'insert'; at: number };
  const changes = fc.array(
    fc.record<Change>({
      does: fc.constantFrom('append', 'amend', 'remove', 'insert'),
      at: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
    }),
    { minLength: 1, maxLength: 3 },
  );

  /** The log after a change, and how many of its first operations are as they were. */
  function changed(log: OilOperation[], { does, at }: Change): [OilOperation[], number] {
    const from = Math.floor(at * log.length);
    const one: OilOperation = {
      entry: `${does}${from}`,
      drive: { road: 0.123, circuit: 0, runs: 2 },
      steps: [{ does: 'add', volumeL: 0.2, sdL: 0.01 }],
    };
    switch (does) {
      case 'append':
        return [[...log, one], log.length];
      case 'amend':
        return [log.with(from, one), from];
      case 'remove':
        return [log.toSpliced(from, 1), from];
      case 'insert':
        return [log.toSpliced(from, 0, one), from];
    }
  }

  it('comes to the same bits after any change, and runs at most 64 operations before it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), changes, (count, them) => {
        let log = operations(count);
        let { checkpoints } = run(log);
        for (const change of them) {
          const [next, same] = changed(log, change);
          const resumed = run(next, checkpoints);
          const whole = run(next);
          expect(bits(resumed.state)).toBe(bits(whole.state));
          expect(bits(resumed.checkpoints)).toBe(bits(whole.checkpoints));
          expect(resumed.steps).toBeLessThanOrEqual(next.length - same + 64);
          ({ checkpoints } = resumed);
          log = next;
          if (log.length === 0) return;
        }
      }),
      { numRuns: 60 },
    );
  });
});
