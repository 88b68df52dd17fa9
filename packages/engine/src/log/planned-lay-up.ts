import { z } from 'zod';
import { addDays } from '../calendar/add.ts';
import type { LayUpWindow } from './book.ts';
import { civilDate } from './common.ts';

/**
 * How long a lay-up without an end is taken to last, counted from its start (common practice, no
 * source: a winter).
 */
export const OPEN_LAY_UP_DAYS = 150;

/** A lay-up that is meant to come, both ends inclusive; what happened is an entry of the log. */
export const plannedLayUp = z
  .strictObject({ start: civilDate, end: civilDate.optional() })
  .refine(({ start, end }) => end === undefined || end >= start, {
    path: ['end'],
    error: 'end: the last day is before the first; swap them or leave it empty',
  });
export type PlannedLayUp = z.infer<typeof plannedLayUp>;

/**
 * What of the planned lay-ups counts as storage on a day. A plan is no record, so it counts from the
 * next day on at the earliest: of one that should have begun, only the part that is still to come. A
 * plan during which the car was laid up and woken again, by the log, is over.
 *
 * @param plans with the ids of their own
 * @param recorded windows that the log's entries opened
 * @param asOf civil date
 * @example
 * plannedStorage([{ id: 'p', start: '2026-11-01', end: '2027-03-25' }], [], '2026-12-10')
 * // [{ id: 'p', start: '2026-12-11', end: '2027-03-25' }]
 */
export function plannedStorage(
  plans: readonly LayUpWindow[],
  recorded: readonly LayUpWindow[],
  asOf: string,
): LayUpWindow[] {
  return plans.flatMap((plan) => {
    if (plan.start > asOf) return [plan];
    const end = plan.end ?? addDays(plan.start, OPEN_LAY_UP_DAYS);
    const woken = recorded.some(
      (window) => overlaps(window, plan) && window.end !== undefined && window.end < asOf,
    );
    return woken || end <= asOf ? [] : [{ id: plan.id, start: addDays(asOf, 1), end }];
  });
}

/**
 * True for a planned lay-up that should have begun and of which nothing is on record: its owner is
 * to be asked.
 *
 * @param recorded windows that the log's entries opened
 * @param today civil date
 */
export function isUnconfirmed(
  plan: PlannedLayUp,
  recorded: readonly LayUpWindow[],
  today: string,
): boolean {
  return plan.start <= today && !recorded.some((window) => overlaps(window, plan));
}

type Days = { start: string; end?: string | undefined };

function overlaps(a: Days, b: Days): boolean {
  return (a.end === undefined || a.end >= b.start) && (b.end === undefined || b.end >= a.start);
}
