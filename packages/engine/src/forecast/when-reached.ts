import { chanceReached, type Reach } from './chance-reached.ts';
import { HORIZON_DAYS } from './day-table.ts';
import { firstDayWith, runningChance } from './first-day.ts';

/** When something is reached, by days ahead of today. Negative days are days that have passed. */
export type WhenReached = {
  /** probability that it is reached by the end of that day, 0..1, never falling */
  by(ahead: number): number;
  /** first day on which that probability is at least p; null beyond the horizon */
  first(p: number): number | null;
};

/** Something that was reached on a day, or will be on that day for certain. */
export function reachedOnDay(ahead: number): WhenReached {
  return { by: (day) => (day >= ahead ? 1 : 0), first: () => ahead };
}

/** Both are needed: the later of the two counts. */
export function bothReached(a: WhenReached, b: WhenReached): WhenReached {
  return {
    by: (ahead) => Math.min(a.by(ahead), b.by(ahead)),
    first: (p) => {
      const [one, other] = [a.first(p), b.first(p)];
      return one === null || other === null ? null : Math.max(one, other);
    },
  };
}

/**
 * When so much more of a weighted measure has been used.
 *
 * @param amount what is left, in the measure's unit
 */
export function amountReached(reach: Reach, amount: number): WhenReached {
  const known = new Map<number, number>();
  const chance = (ahead: number) => {
    const found = known.get(ahead);
    if (found !== undefined) return found;
    const made = chanceReached(reach, amount, ahead);
    known.set(ahead, made);
    return made;
  };
  const of = { chance, checkpoints: checkpointsOf(reach) };
  return {
    by: (ahead) => runningChance(of, Math.min(ahead, HORIZON_DAYS)),
    first: (p) => firstDayWith(of, p),
  };
}

/** Today, each planned event's eve and days, and the horizon. */
function checkpointsOf({ fit, attended }: Reach): number[] {
  const days = new Set([0, HORIZON_DAYS]);
  for (const { event } of fit.planned) {
    if (event.attend <= 0 && event.id !== attended) continue;
    days.add(event.startAhead - 1);
    for (let day = event.startAhead; day <= event.endAhead; day += 1) days.add(day);
  }
  return [...days].filter((day) => day >= 0 && day <= HORIZON_DAYS).sort((a, b) => a - b);
}
