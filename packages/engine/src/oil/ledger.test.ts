import { describe, expect, it } from 'vitest';
import { riseProbability } from './answers.ts';
import { makeBank } from './bank.ts';
import { STEP, USUAL_PRIORS } from './hypothesis.ts';
import { apply, type LedgerState, startLedger, watchRise } from './ledger.ts';
import { answerOil, type OilAnswer } from './oil-answer.ts';
import type { OilStep, RawLevel } from './operation.ts';

const SPAN_L = 1;

/** A level by procedure, as it is read. */
const look = (level: RawLevel, offProcedure = false): OilStep => ({
  does: 'observe',
  levelL: level === 'none' ? -1.1 : level - 1,
  sdL: 0.1,
  tag: offProcedure ? 'off' : 'read',
  read: { level, condition: null, offProcedure },
});
const pour: OilStep = { does: 'add', volumeL: 0.5, sdL: 0.015 };
const change: OilStep = { does: 'reset', levelL: -0.05, sdL: 0.12, change: true };
const filled: OilStep = { does: 'reset', levelL: -0.02, sdL: 0.1, change: false };
const full: OilStep = { does: 'observe', levelL: -0.02, sdL: 0.1, tag: 'full', read: null };

/** One entry each, 100 km apart. */
function after(...steps: OilStep[]): LedgerState {
  const state = startLedger(SPAN_L, USUAL_PRIORS);
  steps.forEach((step, at) => {
    apply(state, { entry: at, drive: { road: 0.1, circuit: 0, runs: 0 }, steps: [step] });
  });
  return state;
}

const answer = (...steps: OilStep[]): OilAnswer =>
  answerOil(after(...steps), null, { circuit: false, strip: false });

describe('the oil is low', () => {
  it.each<[string, OilStep[], boolean]>([
    ['read below MIN just now', [look(0.9), look(-0.1)], true],
    ['read at MIN', [look(0.9), look(0)], true],
    [
      'nothing on the stick, though doubtful',
      [look(0.9), look(0.9), look(0.9), look('none')],
      true,
    ],
    ['read above MIN', [look(0.9), look(0.8)], false],
    ['read above MIN after that', [look(0.9), look('none'), look(0.9)], false],
    ['poured in since', [look(0.9), look(0), pour, pour], false],
    ['filled since', [look(0.9), look(0), full], false],
    ['filled by nobody knows how much since', [look(0.9), look(0), filled], false],
    ['changed since', [look(0.9), look('none'), change], false],
  ])('%s', (_, steps, low) => {
    expect(answer(...steps).lowNow).toBe(low);
  });

  it('is said by an empty stick wherever its level is corrected to, and above MIN by no level', () => {
    expect(after({ ...look('none'), levelL: -0.8 } as OilStep).lowRead).toBe(true);
    expect(after(look(0.01)).lowRead).toBe(false);
  });

  it('is not said by a level that cannot be compared', () => {
    expect(after(look(0.9), look('none', true)).lowRead).toBe(false);
  });

  it('is said from the chance alone, without any reading', () => {
    const state = after(change);
    apply(state, { entry: 'on', drive: { road: 8, circuit: 0, runs: 0 }, steps: [] });
    const { lowNow, pBelowMin } = answerOil(state, null, { circuit: false, strip: false });
    expect(state.lowRead).toBe(false);
    expect([lowNow, pBelowMin >= 0.05]).toEqual([true, true]);
  });
});

describe('the oil is over', () => {
  it.each<[string, OilStep[], boolean]>([
    ['read a quarter over MAX', [look(1), look(1.25)], true],
    ['read a little over MAX', [look(1), look(1.24)], false],
    ['poured over MAX', [look(1), pour], true],
    ['read lower since', [look(1), look(1.25), look(0.9)], false],
    ['poured in since', [look(0.5), look(1.3), { ...pour, volumeL: 0.01 }], true],
    ['changed since', [look(1), look(1.25), change], false],
    ['filled by nobody knows how much since', [look(1), look(1.25), filled], false],
  ])('%s', (_, steps, over) => {
    expect(answer(...steps).overNow).toBe(over);
  });
});

describe('more oil than there can be', () => {
  const high = [look(0.4), look(0.35), look(1.1), look(1.05)];

  it('is said when two readings agree, with both of them and how much it is', () => {
    const { unexplainedRise, moved, doubtful } = answer(...high);
    expect(unexplainedRise).toMatchObject({ entry: 3, firstEntry: 2 });
    expect(unexplainedRise?.litres).toBeGreaterThan(0.6);
    expect(unexplainedRise?.litres).toBeLessThan(0.85);
    expect(moved).toEqual([{ entry: 3, direction: 'up' }]);
    expect(doubtful).toEqual([2]);
  });

  it.each<[string, OilStep[]]>([
    ['one reading', high.slice(0, 3)],
    ['readings that do not agree', [...high.slice(0, 3), look(0.75)]],
    ['a rise of less than 0.4 of the span', [look(0.4), look(0.35), look(0.65), look(0.6)]],
    ['a rise that only one of them shows', [look(0.4), look(0.35), look(0.85), look(0.66)]],
    ['oil poured in between', [look(0.4), look(0.35), look(1.1), pour, look(1.1)]],
    ['a change between', [look(0.4), look(0.35), look(1.1), change, look(1.05)]],
    ['the first readings of a log', [look(1.2), look(1.2)]],
    ['levels that cannot be compared', [look(0.4), look(0.35), look(1.1, true), look(1.05, true)]],
  ])('is not said by %s', (_, steps) => {
    expect(answer(...steps).unexplainedRise).toBeNull();
  });

  it('is said of readings that the rate is learnt from, too', () => {
    const rough = (level: number) => ({ ...look(level), sdL: 0.2 }) as OilStep;
    const { unexplainedRise, moved, doubtful } = answer(rough(0.4), rough(0.95), rough(0.95));
    expect(unexplainedRise).toMatchObject({ entry: 2, firstEntry: 1 });
    expect([moved, doubtful]).toEqual([[{ entry: 2, direction: 'up' }], []]);
  });

  it('stays until the next oil change, whatever is poured or read', () => {
    const told = { entry: 3, firstEntry: 2 };
    expect(answer(...high, pour, look(0.9), filled).unexplainedRise).toMatchObject(told);
    expect(answer(...high, look(1.6), look(1.6)).unexplainedRise).toMatchObject(told);
    expect(answer(...high, change).unexplainedRise).toBeNull();
  });
});

describe('watchRise()', () => {
  /** A ledger whose only step weighs just so much that this is the chance of a rise. */
  function withChance(chance: number, from: LedgerState | null): LedgerState {
    const state = from ?? startLedger(SPAN_L, USUAL_PRIORS);
    state.bank = makeBank(SPAN_L, USUAL_PRIORS);
    const [base, step] = state.bank.slots;
    if (base === undefined || step === undefined) throw new Error('two are needed');
    state.bank.list.push(1);
    step.x[STEP] = 20;
    base.logWeight = Math.log1p(-chance);
    step.logWeight = Math.log(chance);
    return state;
  }

  function alertsOf(chances: number[]) {
    let state: LedgerState | null = null;
    for (const [at, chance] of chances.entries()) {
      state = withChance(chance, state);
      expect(watchRise(state, at)).toBeCloseTo(chance, 12);
    }
    return state?.alerts;
  }

  it.each([
    [[0.69], []],
    [[0.7000001], [{ openedAtEntry: 0 }]],
    [[0.2, 0.71, 0.5, 0.9, 0.43], [{ openedAtEntry: 1 }]],
    [[0.71, 0.419], [{ openedAtEntry: 0, closedAtEntry: 1 }]],
    [[0.71, 0.4, 0.6, 0.41], [{ openedAtEntry: 0, closedAtEntry: 1 }]],
    [
      [0.71, 0.4, 0.72],
      [{ openedAtEntry: 0, closedAtEntry: 1 }, { openedAtEntry: 2 }],
    ],
  ])('opens at 0.70 and closes below 0.42: %j', (chances, alerts) => {
    expect(alertsOf(chances)).toEqual(alerts);
  });

  it('counts only steps of a quarter or more', () => {
    const state = withChance(0.8, null);
    const [, step] = state.bank.slots;
    if (step === undefined) throw new Error('a step is needed');
    step.x[STEP] = Math.log(1.25);
    step.p[STEP * 5 + STEP] = 0.1;
    expect(riseProbability(state.bank)).toBeCloseTo(0.4, 12);
  });
});

describe('answerOil()', () => {
  it('drives a copy to today: the ledger is as it was', () => {
    const state = after(look(0.9), look(0.8));
    const before = JSON.stringify(state);
    const today = {
      drive: { road: 3, circuit: 0.5, runs: 0 },
      distanceVarianceKm2: 400,
      inUse: true,
    };
    const { level } = answerOil(state, today, { circuit: false, strip: false });
    expect(JSON.stringify(state)).toBe(before);
    expect(level.p50).toBeLessThan(answer(look(0.9), look(0.8)).level.p50);
  });

  it('is less sure where only the expected distance is known', () => {
    const state = after(look(0.9), look(0.8));
    const sd = (distanceVarianceKm2: number) =>
      answerOil(
        state,
        { drive: { road: 1, circuit: 0, runs: 0 }, distanceVarianceKm2, inUse: true },
        { circuit: false, strip: false },
      ).level.sd;
    expect(sd(250_000)).toBeGreaterThan(1.001 * sd(0));
  });

  it('asks for a look in a week, but not of a car that is laid up', () => {
    const state = after(look(0.9), look(0.8));
    const days = (inUse: boolean) =>
      answerOil(
        state,
        { drive: { road: 0, circuit: 0, runs: 0 }, distanceVarianceKm2: 0, inUse },
        { circuit: false, strip: false },
      ).checkBy.days;
    expect([days(true), days(false)]).toEqual([7, null]);
  });

  it('has not enough without any information of the level, and says which rates were never logged', () => {
    const none = answer();
    expect([none.status, none.hardRate.fromPrior, none.stripPerRun]).toEqual([
      'none',
      true,
      undefined,
    ]);
    const logged = answerOil(after(look(0.9)), null, { circuit: true, strip: true });
    expect([logged.hardRate.fromPrior, logged.stripPerRun?.fromPrior]).toEqual([false, false]);
  });

  it.each([
    [0.3, 'ok'],
    [0.5, 'weak'],
    [0.9, 'none'],
  ])('is as sure as the spread of the road rate: sd of its ln %d is %s', (sdLog, status) => {
    const state = startLedger(SPAN_L, { ...USUAL_PRIORS, roadRate: { median: 0.2, sdLog } });
    apply(state, { entry: 0, drive: { road: 0, circuit: 0, runs: 0 }, steps: [look(0.9)] });
    expect(answerOil(state, null, { circuit: false, strip: false }).status).toBe(status);
  });
});
