import type { Draws } from './draws.ts';
import type { Habits } from './habits.ts';

/** An outing as it is meant to be, and what came of it. Days count from the first day of the car's life. */
export type Outing = {
  id: number;
  day: number;
  days: number;
  /** day it comes onto the calendar; null: never */
  toldOn: number | null;
  /** usual sessions or launches, what the calendar says; tours: 1 */
  meant: number;
  /** the same as it came, 0: called off */
  came: number;
  forgotten: boolean;
};

/** What a car truly does, day by day. */
export type Life = {
  /** kilometres of everyday use by day */
  road: Float64Array;
  outings: Outing[];
};

/** Day 0, a Saturday (Monday is 0), so that seasons and weekdays turn as they do. */
export const BIRTH = { date: '2022-01-01', weekday: 5 };

const seasonal = (habits: Habits, swing: number, day: number) =>
  1 + swing * Math.cos((2 * Math.PI * ((day % 365.25) / 30.44 - habits.peak - 0.5)) / 12);

/** True where the car sleeps, whether anybody wrote that down or not. */
export function asleep({ layUp }: Habits, day: number): boolean {
  if (layUp === null) return false;
  const since = ((day % 365) - layUp.begins + 365) % 365;
  return since < layUp.days;
}

/**
 * A level that wanders, from a day on; its logarithm falls back to 0 within some eight months.
 *
 * @returns by day from `from` to `until`
 */
export function wanderFrom(
  habits: Habits,
  at: number,
  from: number,
  until: number,
  r: Draws,
): Float64Array {
  const level = new Float64Array(until + 1);
  let log = at;
  for (let day = from; day <= until; day += 1) {
    if (day % 28 === 0) log = 0.88 * log + habits.wander * 2 * r.normal();
    level[day] = log;
  }
  return level;
}

const growth = (habits: Habits, day: number) => (1 + habits.growth) ** (day / 365.25);

/** Draws everyday use from one day to another, both ends with it. */
export function drive(
  habits: Habits,
  level: Float64Array,
  from: number,
  until: number,
  r: Draws,
): Float64Array {
  const road = new Float64Array(until + 1);
  const { weekday, weekend, km, spread, swing } = habits.everyday;
  for (let day = from; day <= until; day += 1) {
    if (asleep(habits, day) || km === 0) continue;
    const chance = (day + BIRTH.weekday) % 7 >= 5 ? weekend : weekday;
    if (!r.chance(chance)) continue;
    const usual =
      km * seasonal(habits, swing, day) * growth(habits, day) * Math.exp(level[day] as number);
    road[day] = r.lognormal(usual, spread);
  }
  return road;
}

/** Draws outings from one day to another. */
export function goOut(
  habits: Habits,
  level: Float64Array,
  from: number,
  until: number,
  r: Draws,
): Outing[] {
  const { outings } = habits;
  if (outings === null) return [];
  const made: Outing[] = [];
  for (let day = from; day <= until; day += 1) {
    if (asleep(habits, day)) continue;
    const weekend = (day + BIRTH.weekday) % 7 >= 5;
    const rate = (outings.perYear / 365.25) * (weekend ? 2.8 : 0.28);
    const now =
      seasonal(habits, outings.swing, day) * growth(habits, day) * Math.exp(level[day] as number);
    if (!r.chance(Math.min(0.9, rate * now))) continue;
    const told = r.chance(habits.plans);
    made.push(
      comeOf(
        habits,
        {
          id: day,
          day,
          days: outings.days,
          toldOn: told ? day - Math.max(1, Math.round(r.exponential(habits.leadDays))) : null,
          meant: outings.useClass === 'touring' ? 1 : outings.count,
        },
        r,
      ),
    );
  }
  return made;
}

/** What comes of an outing that is meant to be. */
export function comeOf(
  habits: Habits,
  meant: Omit<Outing, 'came' | 'forgotten'>,
  r: Draws,
): Outing {
  const spread = habits.outings?.spread ?? 0;
  const off = meant.toldOn !== null && r.chance(habits.calledOff);
  const size = r.lognormal(meant.meant, spread);
  const whole = habits.outings?.useClass === 'touring' ? size : Math.max(1, Math.round(size));
  return { ...meant, came: off ? 0 : whole, forgotten: r.chance(habits.forgotten) };
}
