import type { History } from '../history/build-history.ts';
import type { Book } from '../log/book.ts';
import { findOpen } from './find-open.ts';
import { keptEntries } from './kept-entries.ts';
import type { Matters } from './result.ts';
import { wakeSteps } from './wake-steps.ts';
import { wheelsState } from './wheels-state.ts';

export { carStatus, stopOf } from './car-status.ts';
export { findOpen } from './find-open.ts';
export { inspectionLines } from './inspection-lines.ts';
export { keptEntries } from './kept-entries.ts';
export * from './result.ts';

/**
 * What stands in the way of using a car, beside what wears out: findings, incidents, wheels, and what
 * a lay-up left undone. Pure: shuffled entries give the same answer.
 *
 * @param history of the same book
 */
export function mattersOf(book: Book, history: History): Matters {
  const { entries, asOf } = book;
  const kept = keptEntries(entries, asOf);
  return {
    ...findOpen(entries, asOf),
    wheels: wheelsState(kept, history),
    wakeSteps: wakeSteps(kept),
  };
}
