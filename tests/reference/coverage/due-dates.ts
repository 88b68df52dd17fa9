import { draws } from './draws.ts';
import type { Kind } from './habits.ts';
import { drawLeft, targetsOf } from './targets.ts';
import { ask, CAP_DAYS, drawTrial, type Target, type Trial, trueDay, trueUse } from './trial.ts';

/** One due date foreseen, and when it came. Days ahead, capped at two years. */
export type DueDate = {
  car: number;
  kind: Kind;
  measure: Target['measure'];
  /** likely day of somebody who knows the driver: the median over his futures */
  about: number;
  early: number;
  likely: number;
  late: number;
  came: number;
  /** the same interval as wide as that knowledge makes it */
  floor: { early: number; likely: number; late: number };
};

/** Futures that say how far off a due date is; the true one is none of them. */
const FUTURES = 40;

/**
 * Due dates of so many cars, each car's limits on a day of its own.
 *
 * @param each how many limits of a car are asked about: one, so that cars do not weigh by their limits, or all
 */
export function foreseeDueDates(cars: number, each: 'one' | 'all', firstSeed = 1): DueDate[] {
  const found: DueDate[] = [];
  for (let seed = firstSeed; seed < firstSeed + cars; seed += 1) {
    const trial = drawTrial(seed);
    const r = draws(seed + 500_009);
    const all = targetsOf(trial.habits);
    const one = r.oneOf(all);
    for (const target of all) {
      const left = drawLeft(target, r);
      if (each === 'all' || target === one) found.push(foresee(trial, target, left));
    }
  }
  return found;
}

function foresee(trial: Trial, target: Target, left: number): DueDate {
  const said = ask(trial, target, left);
  const cap = (day: number) => Math.min(CAP_DAYS, day);
  const dayOf = (number: number) =>
    cap(trueDay(trial, trueUse(trial, target, trial.future(number)), said.limit));
  const others = Array.from({ length: FUTURES }, (_, at) => dayOf(at + 1)).sort((a, b) => a - b);
  const quantile = (p: number) => others[Math.min(FUTURES - 1, Math.floor(p * FUTURES))] as number;
  return {
    car: trial.seed,
    kind: trial.kind,
    measure: target.measure,
    about: quantile(0.5),
    early: cap(said.early),
    likely: cap(said.likely),
    late: cap(said.late),
    came: dayOf(0),
    floor: { early: quantile(0.1), likely: quantile(0.5), late: quantile(0.9) },
  };
}

/** What is due within two years at all, as far as anybody can know. */
export const inSight = ({ about }: DueDate) => about < CAP_DAYS;

export type Band = Pick<DueDate, 'early' | 'late' | 'came'>;
export const isCovered = ({ early, late, came }: Band) => early <= came && came <= late;
export const isBefore = ({ early, came }: Band) => came < early;
export const isAfter = ({ late, came }: Band) => came > late;

/** The same with its band so many times as wide about the likely day. */
export function widened(date: DueDate, times: number): DueDate {
  const { likely, early, late } = date;
  return {
    ...date,
    early: Math.ceil(likely - times * (likely - early)),
    late: Math.floor(likely + times * (late - likely)),
  };
}
