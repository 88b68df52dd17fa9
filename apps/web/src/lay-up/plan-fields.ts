import type { PlannedLayUp } from '@quartermark/engine/log';
import type { VersionLine } from '../forms/version-rows.ts';
import type { Problems } from '../items/limit-fields.ts';
import { planWords } from './plan-words.ts';

/** What the form of a planned lay-up holds: everything as typed. */
export type PlanFields = {
  /** revision the fields were taken from; 0 for a new one */
  baseRevision: number;
  carId: string;
  start: string;
  end: string;
};

/** @param carId empty: to be chosen */
export function emptyPlan(carId: string): PlanFields {
  return { baseRevision: 0, carId, start: '', end: '' };
}

export function planFields(layUp: PlannedLayUp, carId: string, revision: number): PlanFields {
  const { start, end = '' } = layUp;
  return { baseRevision: revision, carId, start, end };
}

type ReadPlan = { carId: string; layUp: PlannedLayUp } | { problems: Problems };

/** What is wrong with the form's fields, by the path the server would name. */
export function readPlan({ carId, start, end }: PlanFields): ReadPlan {
  const problems: Problems = {};
  if (carId === '') problems.carId = 'Choose the car.';
  if (start === '') problems['layUp.start'] = 'Choose the first day of the lay-up.';
  if (start !== '' && end !== '' && end < start)
    problems['layUp.end'] = 'The last day is before the first; swap them or leave it empty.';
  if (Object.keys(problems).length > 0) return { problems };
  return { carId, layUp: { start, ...(end === '' ? {} : { end }) } };
}

/** A planned lay-up in words, to be set beside another version. */
export function planLines(layUp: PlannedLayUp): VersionLine[] {
  return [{ label: 'Days', words: planWords(layUp) }];
}
