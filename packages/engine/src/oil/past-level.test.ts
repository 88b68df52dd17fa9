import { describe, expect, it } from 'vitest';
import { foldLedger } from './fold.ts';
import { USUAL_PRIORS } from './hypothesis.ts';
import type { OilOperation } from './operation.ts';
import { pastLevels } from './past-level.ts';

const look = (entry: string, levelL: number, road = 0.8): OilOperation => ({
  entry,
  drive: { road, circuit: 0, runs: 0 },
  steps: [{ does: 'observe', levelL, sdL: 0.1, tag: 'read', read: null }],
});

describe('pastLevels()', () => {
  const all: OilOperation[] = [
    {
      entry: 'change',
      drive: { road: 0, circuit: 0, runs: 0 },
      steps: [{ does: 'reset', levelL: -0.05, sdL: 0.12, change: true }],
    },
    look('a', -0.3),
    look('b', -0.5),
    look('c', -0.75),
    {
      entry: 'bottle',
      drive: { road: 0, circuit: 0, runs: 0 },
      steps: [{ does: 'add', volumeL: 0.5, sdL: 0.015 }],
    },
    look('d', -0.5),
  ];
  const { state } = foldLedger(1, USUAL_PRIORS, all);
  const past = pastLevels(1, USUAL_PRIORS, all, state.bank);

  it('gives each entry its level before and after what happened there', () => {
    expect(past.map(({ entry }) => entry)).toEqual(all.map(({ entry }) => entry));
    const bottle = past[4];
    expect((bottle?.after.mean ?? 0) - (bottle?.before.mean ?? 0)).toBeCloseTo(0.5, 2);
  });

  it('falls from look to look, and lies near what was read', () => {
    const means = past.slice(1, 4).map(({ after }) => after.mean);
    expect(means.every((mean, at) => at === 0 || mean < (means[at - 1] as number))).toBe(true);
    [-0.3, -0.5, -0.75].forEach((read, at) => {
      expect(Math.abs((means[at] as number) - read)).toBeLessThan(0.1);
    });
  });

  it('knows more of the past than a single reading does', () => {
    for (const { entry, after } of past) {
      expect(after.sd).toBeGreaterThan(0);
      expect(after.sd).toBeLessThan(entry === 'change' ? 0.12 : 0.1);
    }
  });
});
