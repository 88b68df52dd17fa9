import type { CarProfile } from '../log/book.ts';
import type { Entry } from '../log/entry.ts';
import type { CarStatus, Matters, Stop } from './result.ts';

/**
 * Where a car stands: sold or lent by its last handover; else sold by its profile; else laid up while a
 * storage window covers the day; else what the profile says. A handover that brought the car here
 * outdates "away" and "sold" of the profile, not "in pieces", which no handover changes.
 *
 * @param kept entries of the car without tombstones, in the order of the log
 * @param laidUp a storage window covers the day
 */
export function carStatus(
  kept: readonly Entry[],
  profile: Pick<CarProfile, 'status'>,
  laidUp: boolean,
): CarStatus {
  const last = kept.findLast(({ kind }) => kind === 'handover');
  const handed = last?.kind === 'handover' ? last.what : null;
  if (handed === 'sold') return 'sold';
  if (handed === 'lent') return 'away';
  const said = profile.status ?? 'inUse';
  const current = handed !== null && said !== 'inPieces' ? 'inUse' : said;
  return laidUp && current !== 'sold' ? 'laidUp' : current;
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
  if (status !== 'laidUp' && wakeSteps.length > 0) return 'wakeSteps';
  return status === 'inPieces' ? 'inPieces' : null;
}
