import type { EntryInput, EntryKind } from '@quartermark/engine/log';
import { refuse } from '../refused.ts';

const USES: readonly EntryKind[] = ['drive', 'session', 'strip'];
const WORK: readonly EntryKind[] = ['service', 'oilChange', 'fluid'];

const untimed = (entry: EntryInput) => entry.time === undefined && entry.dayOrder === undefined;

/** The kinds whose order against this entry matters when they share a day with it. */
export function otherSide(entry: EntryInput): readonly EntryKind[] {
  if (USES.includes(entry.kind)) return WORK;
  return WORK.includes(entry.kind) ? USES : [];
}

/**
 * Work and driving on one day, neither with a time: which came first decides whether that driving counts
 * against the new fluid.
 *
 * @param sameDay other entries of the car on that day
 * @throws Refused `orderUnclear`
 */
export function checkOrder(entry: EntryInput, sameDay: readonly EntryInput[]): void {
  if (!untimed(entry)) return;
  const kinds = otherSide(entry);
  const clash = sameDay.find(
    (other) => other.id !== entry.id && kinds.includes(other.kind) && untimed(other),
  );
  if (!clash) return;
  throw refuse(
    'orderUnclear',
    'entry.dayOrder',
    `The car was both driven and worked on on ${entry.on}, and neither has a time. Say whether this was before or after that day's driving, or give a time.`,
  );
}
