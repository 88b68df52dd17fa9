import { likeliestStep, type OilEvent } from '../oil/index.ts';
import type { BookLedger } from './book-oil.ts';

/** Births of merged steps are means, so that they lie a little beside the entries. */
const NEAR = 1e-6;

/** The last entry before use likely rose; null unless an alert of it stands open. */
export function riseStart({ events, folded: { state } }: BookLedger): OilEvent | null {
  const open = state.alerts.at(-1);
  const step = likeliestStep(state.bank);
  if (open === undefined || open.closedAtEntry !== undefined || step === null) return null;
  let distance = 0;
  let before: OilEvent | null = null;
  for (const event of events) {
    if (distance >= step.born - NEAR && before !== null) break;
    distance += event.drive.road + event.drive.circuit;
    before = event;
  }
  return before;
}
