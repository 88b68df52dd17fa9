import { type Drive, type DriveRoom, driveBy, driveRoom } from './drive.ts';
import {
  absorb,
  copyInto,
  emptyHypothesis,
  type Hypothesis,
  mergeInto,
  type OilPriors,
  ROAD,
  SIZE,
  STEP,
  startAt,
} from './hypothesis.ts';
import { add, type LevelTag, type Observed, observe, reset, type Verdict } from './observe.ts';

/** Steps kept side by side, beside the base. */
export const STEPS_MAX = 6;
/** Base, the steps kept, and the two that are just made. */
const SLOTS = STEPS_MAX + 3;
/** Expected steps of the rate per 1,000 km. */
const HAZARD = 0.05;
const SPAWN_AFTER = 0.02;
/** A step up or down: ln of its size, its spread, and its share of what is put aside for steps. */
export const STEP_UP = { size: 0.8, share: 0.6 };
export const STEP_DOWN = { size: -0.8, share: 0.4 };
export const STEP_VARIANCE = 0.35 ** 2;
export const REPAIR_VARIANCE = 0.6 ** 2;
/** Thousands of km after which a step is taken into the base. */
const STEP_LASTS = 12;
const LEAST_LOG_LIKELIHOOD = Math.log(1e-26);

/**
 * A few hypotheses side by side: the base, and "the rate stepped then", each weighted by how well it explains
 * the readings. `list` holds the slots in order of creation, the base first.
 */
export type Bank = {
  spanL: number;
  slots: Hypothesis[];
  list: number[];
  /** operations so far */
  count: number;
  /** thousands of km driven in all, and since steps were last thought of */
  distance: number;
  pending: number;
  room: DriveRoom & { gain: Float64Array; observed: Observed };
};

export function makeBank(spanL: number, priors: OilPriors): Bank {
  const slots = Array.from({ length: SLOTS }, emptyHypothesis);
  startAt(slots[0] as Hypothesis, spanL, priors);
  return {
    spanL,
    slots,
    list: [0],
    count: 0,
    distance: 0,
    pending: 0,
    room: {
      ...driveRoom(),
      gain: new Float64Array(SIZE),
      observed: { verdict: 'sound', logLikelihood: 0, weight: 1, variance: 1 },
    },
  };
}

export function copyBank(bank: Bank): Bank {
  const slots = bank.slots.map((slot) => {
    const copy = emptyHypothesis();
    copyInto(copy, slot);
    return copy;
  });
  return {
    ...bank,
    slots,
    list: [...bank.list],
    room: { ...driveRoom(), gain: new Float64Array(SIZE), observed: { ...bank.room.observed } },
  };
}

/** The hypotheses in order, the base first. */
export function hypothesesOf({ slots, list }: Bank): Hypothesis[] {
  return list.map((slot) => slots[slot] as Hypothesis);
}

/** The first of the heaviest. */
export function heaviestOf({ slots, list }: Bank): Hypothesis {
  let best = slots[0] as Hypothesis;
  for (const slot of list) {
    const one = slots[slot] as Hypothesis;
    if (one.logWeight > best.logWeight) best = one;
  }
  return best;
}

/** The likeliest of the steps up; null while none is thought of. */
export function likeliestStep({ slots, list }: Bank): Hypothesis | null {
  let best: Hypothesis | null = null;
  for (const slot of list.slice(1)) {
    const one = slots[slot] as Hypothesis;
    if ((one.x[STEP] as number) > 0 && one.logWeight > (best?.logWeight ?? -Infinity)) best = one;
  }
  return best;
}

/** Assumes that the rate may have stepped before this drive; only where something is going to be learnt. */
export function drive(bank: Bank, by: Drive, learns: boolean): void {
  const before = bank.distance;
  const distance = by.road + by.circuit;
  bank.pending += distance;
  if (learns && bank.pending > SPAWN_AFTER) {
    spawn(bank, before);
    bank.pending = 0;
  }
  bank.count += 1;
  bank.distance += distance;
  for (const slot of bank.list) driveBy(bank.slots[slot] as Hypothesis, by, bank.room);
}

function spawn(bank: Bank, born: number): void {
  const aside = -Math.expm1(-HAZARD * bank.pending);
  const parent = heaviestOf(bank);
  const free = bank.slots.findIndex((_, slot) => !bank.list.includes(slot));
  const next = bank.slots.findIndex((_, slot) => slot > free && !bank.list.includes(slot));
  for (const [slot, step] of [
    [free, STEP_UP],
    [next, STEP_DOWN],
  ] as const) {
    const made = bank.slots[slot] as Hypothesis;
    copyInto(made, parent);
    absorb(made);
    made.x[STEP] = step.size;
    made.p[STEP * SIZE + STEP] = STEP_VARIANCE;
    made.logWeight = Math.log(aside * step.share);
    made.born = born;
    made.steps = [...parent.steps, { before: bank.count, size: step.size }];
  }
  const rest = Math.log1p(-aside);
  for (const slot of bank.list) (bank.slots[slot] as Hypothesis).logWeight += rest;
  bank.list.push(free, next);
}

/** Observes a level with every hypothesis and weighs them; the verdict is that of the heaviest after it. */
export function observeAll(bank: Bank, levelL: number, sdL: number, tag: LevelTag): Verdict {
  const { slots, list, spanL, room } = bank;
  let best = Number.NEGATIVE_INFINITY;
  let verdict: Verdict = 'sound';
  for (const slot of list) {
    const one = slots[slot] as Hypothesis;
    observe(one, levelL, sdL, tag, spanL, room, room.observed);
    one.logWeight += Math.max(room.observed.logLikelihood, LEAST_LOG_LIKELIHOOD);
    if (one.logWeight > best) {
      best = one.logWeight;
      verdict = room.observed.verdict;
    }
  }
  normalise(bank);
  return verdict;
}

function normalise({ slots, list }: Bank): void {
  let most = Number.NEGATIVE_INFINITY;
  for (const slot of list) most = Math.max(most, (slots[slot] as Hypothesis).logWeight);
  let sum = 0;
  for (const slot of list) sum += Math.exp((slots[slot] as Hypothesis).logWeight - most);
  const total = most + Math.log(sum);
  for (const slot of list) (slots[slot] as Hypothesis).logWeight -= total;
}

export function addToAll({ slots, list }: Bank, volumeL: number, sdL: number): void {
  for (const slot of list) add(slots[slot] as Hypothesis, volumeL, sdL);
}

export function resetAll({ slots, list }: Bank, levelL: number, sdL: number): void {
  for (const slot of list) reset(slots[slot] as Hypothesis, levelL, sdL);
}

/** After a repair the rates may be others: everything is taken into the base, which knows less. */
export function repairAll(bank: Bank): void {
  const { slots, list } = bank;
  for (const slot of list) {
    const one = slots[slot] as Hypothesis;
    absorb(one);
    one.p[ROAD * SIZE + ROAD] = (one.p[ROAD * SIZE + ROAD] as number) + REPAIR_VARIANCE;
  }
  while (list.length > 1) takeIntoBase(bank, 1);
}

/** Takes old steps into the base, and merges what is beyond the number kept. */
export function tidy(bank: Bank): void {
  const { slots, list } = bank;
  for (let at = 1; at < list.length; ) {
    const one = slots[list[at] as number] as Hypothesis;
    if (bank.distance - one.born > STEP_LASTS) {
      absorb(one);
      takeIntoBase(bank, at);
    } else at += 1;
  }
  while (list.length > STEPS_MAX + 1) mergeLightest(bank);
}

function takeIntoBase({ slots, list }: Bank, at: number): void {
  mergeInto(slots[0] as Hypothesis, slots[list[at] as number] as Hypothesis);
  list.splice(at, 1);
}

/** Births are compared on a grid of metres: equal ones occur, and rounding must not decide. */
const grid = (thousandKm: number) => Math.floor(thousandKm * 1e6 + 0.5);

function mergeLightest(bank: Bank): void {
  const { slots, list } = bank;
  const of = (at: number) => slots[list[at] as number] as Hypothesis;
  let lightest = 1;
  for (let at = 2; at < list.length; at += 1) {
    const [one, best] = [of(at), of(lightest)];
    const lighter = one.logWeight < best.logWeight;
    const older = one.logWeight === best.logWeight && grid(one.born) < grid(best.born);
    if (lighter || older) lightest = at;
  }
  const from = of(lightest);
  const up = (from.x[STEP] as number) > 0;
  let nearest = -1;
  for (let at = 1; at < list.length; at += 1) {
    if (at === lightest || (of(at).x[STEP] as number) > 0 !== up) continue;
    if (nearest < 0 || isNearer(of(at), of(nearest), from)) nearest = at;
  }
  if (nearest < 0) {
    giveWeight(slots[0] as Hypothesis, from);
  } else {
    const to = of(nearest);
    const [a, b] = [Math.exp(to.logWeight), Math.exp(from.logWeight)];
    if (a + b > 0) to.born = (a * to.born + b * from.born) / (a + b);
    mergeInto(to, from);
  }
  list.splice(lightest, 1);
}

function isNearer(one: Hypothesis, best: Hypothesis, from: Hypothesis): boolean {
  const [own, least] = [
    grid(Math.abs(one.born - from.born)),
    grid(Math.abs(best.born - from.born)),
  ];
  return own < least || (own === least && grid(one.born) < grid(best.born));
}

function giveWeight(base: Hypothesis, from: Hypothesis): void {
  const most = Math.max(base.logWeight, from.logWeight);
  if (most === Number.NEGATIVE_INFINITY) return;
  base.logWeight =
    most + Math.log(Math.exp(base.logWeight - most) + Math.exp(from.logWeight - most));
}
