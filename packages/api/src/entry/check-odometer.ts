import { type EntryInput, odometerProblem, readingsAround } from '@quartermark/engine/log';
import { refuse } from '../refused.ts';

/**
 * An odometer only counts up. A reading that does not fit between its neighbours is asked about once;
 * confirmed, it is saved as it stands and the history marks it.
 *
 * @param near the readings of the log around the entry's day
 * @param setAside ids of entries whose reading the history has rejected: they prove nothing
 * @throws Refused `odometerBackwards`
 */
export function checkOdometer(
  entry: EntryInput,
  near: readonly (EntryInput & { recorded: number })[],
  setAside: ReadonlySet<string>,
): void {
  if (!entry.odometer || entry.kind === 'meterReplaced') return;
  // the odometer of a journey stands at its end
  const on = entry.kind === 'drive' ? (entry.until ?? entry.on) : entry.on;
  const around = readingsAround(near, entry, setAside);
  const problem = odometerProblem(around, { ...entry.odometer, on });
  if (problem) throw refuse('odometerBackwards', `entry.${problem.field}`, problem.message);
}
