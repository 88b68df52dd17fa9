import type { Entry, EntryOf } from '../log/entry.ts';
import type { Corner } from './result.ts';

const CORNERS: readonly Corner[] = ['frontLeft', 'frontRight', 'rearLeft', 'rearRight'];

export type WheelsEntry = EntryOf<'wheels'> & Entry;

/** What was last done to one wheel. */
export type WheelOnRecord = { corner: Corner; change: WheelsEntry['change']; entry: WheelsEntry };

/**
 * What is on record of each wheel. An entry that names no wheel is about all four. A re-check of a
 * wheel that is off, or was never torqued on record, is its first torque: it is to be checked again.
 *
 * @param kept entries of one car without tombstones, in the order of the log
 * @returns wheels that are on record, front left to rear right
 */
export function wheelCorners(kept: readonly Entry[]): WheelOnRecord[] {
  const wheels = new Map<Corner, WheelOnRecord>();
  for (const entry of kept) {
    if (entry.kind !== 'wheels') continue;
    const concerned = entry.which === undefined || entry.which.length === 0 ? CORNERS : entry.which;
    for (const corner of concerned)
      wheels.set(corner, { corner, change: changeOf(wheels.get(corner), entry), entry });
  }
  return CORNERS.flatMap((corner) => wheels.get(corner) ?? []);
}

function changeOf(before: WheelOnRecord | undefined, { change }: WheelsEntry) {
  const torqued = before !== undefined && before.change !== 'off';
  return change === 'rechecked' && !torqued ? 'torqued' : change;
}
