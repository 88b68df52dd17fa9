import type { EntryInput, EventInput } from '@quartermark/engine/log';
import { type CarFields, noUse, type UseFields } from './debrief-fields.ts';
import { missingUse } from './expected-use.ts';

/** What a line of use holds: what was typed, else what is missing of the plan. */
export function shownUse(car: CarFields, on: string, about: Proposing): UseFields {
  const typed = car.uses[on] ?? noUse();
  const missing = missingUse(about.event, on, about.recorded);
  return {
    ...typed,
    count: typed.count ?? missing.count,
    distance: typed.distance ?? missing.distance,
  };
}

type Proposing = {
  event: EventInput;
  /** uses of the car that are on record already and belong to the event */
  recorded: readonly EntryInput[];
};
