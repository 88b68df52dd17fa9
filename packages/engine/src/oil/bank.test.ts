import { describe, expect, it } from 'vitest';
import {
  type Bank,
  copyBank,
  drive,
  heaviestOf,
  hypothesesOf,
  makeBank,
  observeAll,
  repairAll,
  STEPS_MAX,
  tidy,
} from './bank.ts';
import { ROAD, SIZE, STEP, USUAL_PRIORS } from './hypothesis.ts';

const road = (thousandKm: number) => ({ road: thousandKm, circuit: 0, runs: 0 });
const weights = (bank: Bank) => hypothesesOf(bank).map(({ logWeight }) => Math.exp(logWeight));
const whole = (bank: Bank) => weights(bank).reduce((sum, one) => sum + one, 0);
const steps = (bank: Bank) => hypothesesOf(bank).slice(1);

/** Drives so often, and looks each time: as low as given. */
function looking(times: number, byThousandKm: number, levelL = -0.4): Bank {
  const bank = makeBank(1, USUAL_PRIORS);
  for (let i = 0; i < times; i += 1) {
    drive(bank, road(byThousandKm), true);
    observeAll(bank, levelL, 0.1, 'read');
    tidy(bank);
  }
  return bank;
}

describe('drive()', () => {
  it('thinks of a step up and one down, up first, each with its share', () => {
    const bank = makeBank(1, USUAL_PRIORS);
    drive(bank, road(1), true);
    const [base, up, down] = weights(bank);
    const aside = 1 - Math.exp(-0.05);
    expect(base).toBeCloseTo(1 - aside, 12);
    expect(up).toBeCloseTo(0.6 * aside, 12);
    expect(down).toBeCloseTo(0.4 * aside, 12);
    expect(steps(bank).map(({ x, born }) => [x[STEP], born])).toEqual([
      [0.8, 0],
      [-0.8, 0],
    ]);
    expect(steps(bank).every(({ p }) => (p[STEP * SIZE + STEP] as number) === 0.35 ** 2)).toBe(
      true,
    );
  });

  it('thinks of none within 20 km, nor where nothing is going to be learnt', () => {
    const bank = makeBank(1, USUAL_PRIORS);
    drive(bank, road(0.02), true);
    expect(bank.list).toHaveLength(1);
    drive(bank, road(5), false);
    expect(bank.list).toHaveLength(1);
    // what was driven since counts the next time
    drive(bank, road(0), true);
    expect(weights(bank)[0]).toBeCloseTo(Math.exp(-0.05 * 5.02), 12);
    expect(bank.pending).toBe(0);
  });

  it('lets a step begin before the drive that comes with it', () => {
    const bank = makeBank(1, USUAL_PRIORS);
    drive(bank, road(1), false);
    drive(bank, road(0.5), true);
    expect(steps(bank).map(({ born }) => born)).toEqual([1, 1]);
    expect(bank.distance).toBe(1.5);
  });

  it('copies the heaviest, with the step it holds taken into its rate', () => {
    const bank = makeBank(1, USUAL_PRIORS);
    drive(bank, road(1), true);
    const up = steps(bank)[0];
    if (up === undefined) throw new Error('there is no step up');
    up.logWeight = 0;
    up.outlier = 0.7;
    expect(up.steps).toEqual([{ before: 0, size: 0.8 }]);
    const rate = (up.x[ROAD] as number) + (up.x[STEP] as number);
    drive(bank, road(1), true);
    const made = steps(bank)[2];
    expect(made?.x[ROAD]).toBeCloseTo(rate, 12);
    expect(made?.outlier).toBe(0.7);
    expect(made?.steps).toEqual([
      { before: 0, size: 0.8 },
      { before: 1, size: 0.8 },
    ]);
  });
});

describe('observeAll()', () => {
  it('keeps the weights a whole, whatever is read', () => {
    const bank = makeBank(1, USUAL_PRIORS);
    for (const levelL of [-0.4, -2, 3, -0.1, -0.9, 50, -0.5]) {
      drive(bank, road(0.7), true);
      observeAll(bank, levelL, 0.05, 'read');
      expect(whole(bank)).toBeCloseTo(1, 12);
      tidy(bank);
      expect(whole(bank)).toBeCloseTo(1, 12);
    }
  });

  it('gives weight to the step up where the oil is gone, to the one down where it is not', () => {
    const first = (levelL: number) => {
      const bank = makeBank(1, { ...USUAL_PRIORS, roadRate: { median: 0.25, sdLog: 0.05 } });
      observeAll(bank, -0.05, 0.02, 'read');
      drive(bank, road(2), true);
      observeAll(bank, levelL, 0.05, 'read');
      const [, up = 0, down = 0] = weights(bank);
      return up / down;
    };
    expect(first(-1.1)).toBeGreaterThan(20);
    expect(first(-0.2)).toBeLessThan(0.6);
  });

  it.each([
    ['doubtful', 1e-6],
    ['sound', 0.01],
  ])(
    'calls %s what the heaviest afterwards calls it, the other weighing %d before',
    (verdict, weight) => {
      const bank = makeBank(1, USUAL_PRIORS);
      drive(bank, road(1), true);
      const [base, up] = hypothesesOf(bank);
      if (base === undefined || up === undefined) throw new Error('two are needed');
      base.x[0] = -0.4;
      base.p[0] = 0.01;
      up.x[0] = 1.4;
      up.p[0] = 0.01;
      up.logWeight = Math.log(weight);
      bank.list.length = 2;
      expect(observeAll(bank, 1.4, 0.1, 'read')).toBe(verdict);
    },
  );

  it('believes that the level moved when it is said twice', () => {
    const bank = looking(3, 0.5);
    expect(observeAll(bank, -0.45, 0.1, 'read')).toBe('sound');
    expect(observeAll(bank, 1.4, 0.1, 'read')).toBe('doubtful');
    expect(observeAll(bank, 1.4, 0.1, 'read')).toBe('movedUp');
  });
});

describe('tidy()', () => {
  it('keeps at most six steps beside the base', () => {
    for (const times of [1, 3, 4, 5, 20]) {
      const bank = looking(times, 0.5);
      expect(steps(bank)).toHaveLength(Math.min(2 * times, STEPS_MAX));
      expect(new Set(bank.list).size).toBe(bank.list.length);
    }
  });

  it('takes a step into the base when it is older than 12,000 km', () => {
    const bank = looking(1, 0.5);
    drive(bank, road(11.5), false);
    tidy(bank);
    expect(steps(bank)).toHaveLength(2);
    drive(bank, road(0.001), false);
    tidy(bank);
    expect(steps(bank)).toHaveLength(0);
    expect(whole(bank)).toBeCloseTo(1, 12);
    expect(heaviestOf(bank).x[STEP]).toBe(0);
  });

  it('merges the lightest into the nearest of the same direction, which keeps its place', () => {
    const bank = looking(4, 0.5);
    // four looks, eight steps made, six kept: signs stay apart
    const signs = steps(bank).map(({ x }) => Math.sign(x[STEP] as number));
    expect(signs.filter((sign) => sign > 0).length).toBeGreaterThan(0);
    expect(signs.filter((sign) => sign < 0).length).toBeGreaterThan(0);
    const born = steps(bank).map((one) => one.born);
    expect(Math.max(...born)).toBeLessThanOrEqual(1.5);
    expect(Math.min(...born)).toBeGreaterThanOrEqual(0);
  });

  it('gives the weight of the only step of its direction to the base', () => {
    const bank = makeBank(1, USUAL_PRIORS);
    for (let i = 0; i < 4; i += 1) drive(bank, road(0.5), true);
    const all = steps(bank);
    for (const [at, one] of all.entries()) {
      one.x[STEP] = at === 3 ? -0.8 : 0.8;
      one.logWeight = Math.log(at === 3 ? 0.001 : 0.1);
    }
    const base = Math.exp(heaviestOf(bank).logWeight);
    const alone = all[3];
    tidy(bank);
    expect(hypothesesOf(bank)).not.toContain(alone);
    expect(Math.exp(hypothesesOf(bank)[0]?.logWeight ?? 0)).toBeCloseTo(base + 0.001, 12);
  });
});

describe('repairAll()', () => {
  it('leaves one hypothesis that knows less of the rate', () => {
    const bank = looking(6, 0.5);
    const before = Math.max(...hypothesesOf(bank).map(({ p }) => p[ROAD * SIZE + ROAD] as number));
    repairAll(bank);
    expect(hypothesesOf(bank)).toHaveLength(1);
    expect(whole(bank)).toBeCloseTo(1, 12);
    const [base] = hypothesesOf(bank);
    expect(base?.p[ROAD * SIZE + ROAD]).toBeGreaterThan(before);
    expect(base?.x[STEP]).toBe(0);
  });
});

describe('copyBank()', () => {
  it('shares nothing that changes', () => {
    const bank = looking(3, 0.5);
    const before = JSON.stringify(bank);
    const copy = copyBank(bank);
    drive(copy, road(3), true);
    observeAll(copy, -0.9, 0.1, 'read');
    tidy(copy);
    expect(JSON.stringify(bank)).toBe(before);
  });
});
