import { parseDay } from '../calendar/day-number.ts';
import type { CarCase } from '../history/case.ts';

/** How far ahead occasions of this car come onto the calendar. */
export type PlanningHabit = {
  /** share of occasions that were planned, 0..1 */
  share: number;
  /** mean lead in days, > 0 */
  leadDays: number;
};

const PRIOR_WEIGHT = 2;
const PRIOR_LEAD_DAYS = 60;
const PRIOR_SHARE = { plans: 0.7, never: 0.2 } as const;
/** A full calendar is itself evidence of a busier car, so only half of what is planned is taken off. */
const TAKEN_OFF = 0.5;

/**
 * How often, and how long before, this car's occasions were planned. Shrunk to a prior that depends on
 * whether anything was ever planned.
 *
 * Source: own method; constants chosen by simulation, where 0, 0.5 and 1 taken off differ by under 1 %.
 */
export function planningHabit({ entries, planned, asOf }: CarCase): PlanningHabit {
  const occasions = entries.filter(
    (it) => it.type === 'use' && it.useClass !== 'road' && it.date <= asOf,
  );
  let leads = 0;
  let withPlan = 0;
  for (const it of occasions) {
    if (it.type !== 'use' || it.plannedOn === null) continue;
    withPlan += 1;
    leads += Math.max(0, parseDay(it.date) - parseDay(it.plannedOn));
  }
  const prior = withPlan > 0 || planned.length > 0 ? PRIOR_SHARE.plans : PRIOR_SHARE.never;
  return {
    share: (withPlan + PRIOR_WEIGHT * prior) / (occasions.length + PRIOR_WEIGHT),
    leadDays: (leads + PRIOR_WEIGHT * PRIOR_LEAD_DAYS) / (withPlan + PRIOR_WEIGHT),
  };
}

/** Share of the occasions so many days ahead that are not on the calendar already. */
export function notYetPlanned({ share, leadDays }: PlanningHabit, ahead: number): number {
  return 1 - TAKEN_OFF * share * Math.exp(-ahead / leadDays);
}
