import type { DueLine, Lane, UrgentFact } from '@quartermark/engine/display';
import type { CarStatus } from '@quartermark/engine/matters';
import type { CarOil } from '@quartermark/engine/oil';
import type { CarReadiness } from '@quartermark/engine/readiness';
import type { DistanceUnit } from '@quartermark/engine/units';
import type { EventDays, PutOff } from './fact.ts';

/** What the garage stores of one car, as far as a letter needs it. */
export type CarTonight = {
  id: string;
  name: string;
  /** of its odometer */
  unit: DistanceUnit;
  /** null: nothing stored of it can be read */
  known: {
    /** civil date it was worked out for */
    asOf: string;
    lane: Pick<Lane, 'status'>;
    lines: readonly DueLine[];
    /** by `urgentOf()` of its analysis */
    urgent: UrgentFact | null;
    /** null: it has no engine oil (electric) */
    oil: Pick<CarOil, 'lastLook' | 'nextLook' | 'notices'> | null;
  } | null;
  /** of the events it goes to */
  events: readonly { event: EventDays; readiness: CarReadiness }[];
  /** the civil date since which it could not be worked out; null: it could */
  failedSince: string | null;
  putOffs: readonly PutOff[];
};

/** Whether somebody hears of its use, its oil and its wear: of others only what runs out standing still. */
export function isInUse(status: CarStatus): boolean {
  return status === 'inUse';
}

/**
 * What runs out while a car stands: papers and labels, which carry a day, and the battery, by its name.
 *
 * @example runsOutStanding({ name: 'Insurance', binding: 'date' }) // true
 */
export function runsOutStanding({ name, binding }: Pick<DueLine, 'name' | 'binding'>): boolean {
  return binding === 'date' || /\bbatter(y|ies)\b(?!.*\bcoolant\b)/i.test(name);
}
