import { describe, expect, it } from 'vitest';
import { heaviestOf, hypothesesOf } from './bank.ts';
import { foldLedger } from './fold.ts';
import { USUAL_PRIORS } from './hypothesis.ts';
import type { OilOperation } from './operation.ts';
import { pastLevels } from './past-level.ts';

const look = (entry: string, levelL: number, road = 0.8): OilOperation => ({
  entry,
  drive: { road, circuit: 0, runs: 0 },
  steps: [{ does: 'observe', levelL, sdL: 0.1, tag: 'read', read: null }],
});

const pour = (volumeL: number) => ({ does: 'add' as const, volumeL, sdL: 0.03 * volumeL });

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

  it('knows as much as the ledger at the end, and more than it knew before that', () => {
    const known = all.map((_, at) => {
      const { bank } = foldLedger(1, USUAL_PRIORS, all.slice(0, at + 1)).state;
      const [base] = hypothesesOf(bank);
      return Math.sqrt(base?.p[0] ?? Number.NaN);
    });
    past.slice(0, -1).forEach(({ after }, at) => {
      expect(after.sd).toBeLessThan(known[at] as number);
    });
    expect(past.at(-1)?.after.sd).toBeCloseTo(known.at(-1) as number, 2);
  });

  it('lies between what was read before and after, where nothing was read', () => {
    const drive = { entry: 'drive', drive: { road: 0.8, circuit: 0, runs: 0 }, steps: [] };
    const log = [...all.slice(0, 3), drive, look('later', -0.9)];
    const levels = pastLevels(1, USUAL_PRIORS, log, foldLedger(1, USUAL_PRIORS, log).state.bank);
    const [b, between, later] = levels.slice(2);
    expect(between?.after.mean).toBeLessThan(b?.after.mean ?? Number.NaN);
    expect(between?.after.mean).toBeGreaterThan(later?.after.mean ?? Number.NaN);
    expect(between?.after.mean).toBeLessThan(-0.5);
    expect(between?.after.mean).toBeGreaterThan(-0.9);
  });

  it('lets nothing before an oil change say anything of what came after it', () => {
    const change = { ...(all[0] as OilOperation), drive: { road: 0.8, circuit: 0, runs: 0 } };
    const level = (before: number) => {
      const log = [look('x', before, 0), change];
      return pastLevels(1, USUAL_PRIORS, log, foldLedger(1, USUAL_PRIORS, log).state.bank)[1];
    };
    expect(level(-0.2)?.after).toEqual(level(-0.9)?.after);
    expect(level(-0.2)?.before).not.toEqual(level(-0.9)?.before);
  });

  it('begins the step of the account that explains the log best where it was born', () => {
    const log = Array.from({ length: 14 }, (_, at) => [
      look(`r${at}`, at < 8 ? -0.15 : -0.75, 0.7),
      { ...(all[4] as OilOperation), entry: `b${at}`, steps: [pour(at < 8 ? 0.1 : 0.7)] },
    ]).flat();
    const { bank } = foldLedger(1, USUAL_PRIORS, log).state;
    expect(heaviestOf(bank).steps).toEqual([{ before: 16, size: 0.8 }]);
    const drawn = pastLevels(1, USUAL_PRIORS, log, bank);
    for (const [at, { entry, after }] of drawn.entries()) {
      if (!String(entry).startsWith('r')) continue;
      expect(Math.abs(after.mean - (at < 16 ? -0.15 : -0.75))).toBeLessThan(0.15);
    }
  });

  it('keeps to the readings long after a step that has been taken into the rate', () => {
    const log = Array.from({ length: 60 }, (_, at) => [
      look(`r${at}`, at < 20 ? -0.15 : -0.75, 0.7),
      { ...(all[4] as OilOperation), entry: `b${at}`, steps: [pour(at < 20 ? 0.1 : 0.7)] },
    ]).flat();
    const { bank } = foldLedger(1, USUAL_PRIORS, log).state;
    expect(heaviestOf(bank)).toBe(bank.slots[0]);
    for (const { entry, after } of pastLevels(1, USUAL_PRIORS, log, bank)) {
      const at = Number(String(entry).slice(1));
      if (!String(entry).startsWith('r')) continue;
      expect(Math.abs(after.mean - (at < 20 ? -0.15 : -0.75))).toBeLessThan(0.2);
    }
  });
});
