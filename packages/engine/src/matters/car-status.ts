import type { Book } from '../log/book.ts';
import { sortEntries } from '../log/sort-entries.ts';
import type { CarStatus, Matters, Stop } from './result.ts';

const AFTER_HANDOVER = { bought: 'inUse', returned: 'inUse', lent: 'away', sold: 'sold' } as const;

/**
 * Where a car stands: the last handover decides between in use, away and sold, unless its people say
 * otherwise in the profile; then comes in pieces, then a lay-up.
 *
 * @param laidUp a storage window covers the day
 */
export function carStatus(book: Book, laidUp: boolean): CarStatus {
  const said = book.car.profile.status;
  const handovers = book.entries.filter(({ removed, on }) => !removed && on <= book.asOf);
  const last = sortEntries(handovers).findLast(({ kind }) => kind === 'handover');
  const handed = last?.kind === 'handover' ? AFTER_HANDOVER[last.what] : 'inUse';
  if (handed === 'sold' || said === 'sold') return 'sold';
  if (handed === 'away' || said === 'away') return 'away';
  if (said === 'inPieces') return 'inPieces';
  return laidUp ? 'laidUp' : 'inUse';
}

/**
 * The worst of what forbids driving a car at all. Laid up, its open wake-up steps are expected and do
 * not count; they do as soon as it is in use.
 */
export function stopOf(status: CarStatus, matters: Matters): Stop | null {
  const { findings, incidents, wheels, wakeSteps } = matters;
  if (findings.some(({ severity }) => severity === 'doNotDrive')) return 'doNotDrive';
  if (incidents.length > 0) return 'incident';
  if (wheels.state === 'off') return 'wheelsOff';
  if (status === 'inPieces') return 'inPieces';
  return status !== 'laidUp' && wakeSteps.length > 0 ? 'wakeSteps' : null;
}
