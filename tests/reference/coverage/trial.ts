import { daysBetween } from '@quartermark/engine/calendar';
import type { CarCase, CaseLimit } from '@quartermark/engine/history';
import { type AtEvent, analyseCase, type DueDates, isAmountLimit } from '@quartermark/engine/wear';
import { countsOf, type Diary, keepDiary } from './diary.ts';
import { type Draws, draws } from './draws.ts';
import { drawHabits, type Habits, type Kind } from './habits.ts';
import { comeOf, drive, goOut, type Life, type Outing, wanderFrom } from './life.ts';

export type Target = Extract<CaseLimit, { weights: unknown }>;
/** Days ahead beyond which nothing is compared: two years. */
export const CAP_DAYS = 730;

/** A car on a day: what its log says, and how it goes on. */
export type Trial = {
  seed: number;
  kind: Kind;
  habits: Habits;
  first: number;
  asOf: number;
  past: Life;
  diary: Diary;
  /** one way in which it goes on, the same for the same number; an outing may be made sure of */
  future(number: number, attended?: number): Life;
};

/** Draws a car, lets it live for 35 days to four years, and hands over its log. */
export function drawTrial(seed: number): Trial {
  const r = draws(seed);
  const { kind, ...habits } = drawHabits(r);
  const first = r.whole(0, 364);
  const asOf = first + Math.round(35 * (1461 / 35) ** r.even());
  const level = wanderFrom(habits, 0, first, asOf + CAP_DAYS, r);
  const road = drive(habits, level, first, asOf, r);
  const all = goOut(habits, level, first, asOf + CAP_DAYS, r);
  const isTold = ({ toldOn }: Outing) => toldOn !== null && toldOn <= asOf;
  const outings = all.filter((it) => it.day <= asOf || isTold(it));
  const diary = keepDiary(habits, { road, outings }, first, asOf, r);
  return {
    seed,
    kind,
    habits,
    first,
    asOf,
    past: { road, outings: outings.filter(({ day }) => day <= asOf) },
    diary,
    future(number, attended) {
      const own = draws(seed * 1009 + number * 7919 + 13);
      const last = asOf + CAP_DAYS;
      const on = wanderFrom(habits, level[asOf] as number, asOf + 1, last, own);
      const told = outings
        .filter(({ day }) => day > asOf)
        .map((it) => ({ it, came: comeOf(habits, it, own) }))
        .map(({ it, came }) => (it.id === attended ? sureOf(habits, it, own) : came));
      const others = goOut(habits, on, asOf + 1, last, own).filter((it) => !isTold(it));
      return { road: drive(habits, on, asOf + 1, last, own), outings: [...told, ...others] };
    },
  };
}

function sureOf(habits: Habits, meant: Outing, r: Draws): Outing {
  return comeOf({ ...habits, calledOff: 0 }, meant, r);
}

/** What one day of a target counts, from the service on. */
export function trueUse(
  { habits, past, asOf }: Trial,
  { measure, weights }: Target,
  future: Life,
): Float64Array {
  const use = new Float64Array(asOf + CAP_DAYS + 4);
  const weightOf = (useClass: keyof typeof weights) => weights[useClass] ?? 1;
  const perKm = measure === 'km' ? 1 : measure === 'hours' ? 1 / 45 : 0;
  for (const { road } of [past, future])
    for (let day = 0; day < road.length; day += 1)
      use[day] = (use[day] as number) + (road[day] as number) * perKm * weightOf('road');
  for (const { day, days, came } of [...past.outings, ...future.outings]) {
    const counts = countsOf(habits, came);
    const amount = measure === 'km' ? counts.distanceKm : (counts[measure] ?? 0);
    for (let at = day; at < day + days; at += 1)
      use[at] = (use[at] as number) + (amount * weightOf(counts.useClass)) / days;
  }
  return use;
}

/** Days ahead on which the true use since the service reaches an amount; never before today. */
export function trueDay({ asOf, diary }: Trial, use: Float64Array, amount: number): number {
  let sum = 0;
  for (let day = diary.serviceDay + 1; day <= asOf + CAP_DAYS; day += 1) {
    sum += use[day] as number;
    if (sum >= amount) return Math.max(0, day - asOf);
  }
  return CAP_DAYS + 1;
}

/** What the forecast says of one limit: days ahead of its likely, early and late day. */
export type Said = {
  early: number;
  likely: number;
  late: number;
  limit: number;
  atEvent: AtEvent[];
};

/**
 * Asks the engine about a limit of which so much is left by the log.
 *
 * @param left in the measure's unit, drawn without a look at the car
 */
export function ask(trial: Trial, target: Target, left: number, toEvents = false): Said {
  const { diary } = trial;
  const carWith = (value: number): CarCase => ({
    ...diary.car,
    items: [
      {
        id: 'it',
        warnDays: 14,
        leadDays: 0,
        limits: [{ ...target, value }],
        severe: null,
        baseline: null,
      },
    ],
  });
  const [before] = analyseCase(carWith(1e9)).items[0]?.limits ?? [];
  if (before === undefined || !isAmountLimit(before)) throw new Error('the limit is missing');
  const limit = before.accrued + left;
  const item = analyseCase(carWith(limit), { toEvents }).items[0];
  const due = item?.dueDate;
  if (due === undefined) throw new Error('nothing was foreseen');
  const days = (name: keyof DueDates) => {
    const date = due[name];
    return date === null ? CAP_DAYS + 1 : Math.max(0, daysBetween(diary.car.asOf, date));
  };
  return {
    early: days('p10'),
    likely: days('p50'),
    late: days('p90'),
    limit,
    atEvent: item?.atEvent ?? [],
  };
}
