import type { CaseTrigger } from '../history/case.ts';
import type { Entry, EntryOf } from '../log/entry.ts';
import type { Item } from '../log/item.ts';
import { temperatureC } from '../log/quantity.ts';
import { minuteOfDay, sortEntries } from '../log/sort-entries.ts';

type Corner = NonNullable<EntryOf<'wheels'>['which']>[number];
const CORNERS: readonly Corner[] = ['frontLeft', 'frontRight', 'rearLeft', 'rearRight'];

const at = (entry: Entry, code: CaseTrigger['code']): CaseTrigger => ({
  entry: entry.id,
  date: entry.on,
  minute: minuteOfDay(entry),
  code,
});

/**
 * What happened in a log that makes an item due at once: incidents of the sorts it names, sessions whose
 * oil was hotter than it allows, wheels that were off and whose torque is not on record since.
 *
 * @param entries tombstones left out
 */
export function itemTriggers({ triggers }: Item, entries: readonly Entry[]): CaseTrigger[] {
  if (triggers === undefined) return [];
  const { incidents = [], oilHotterThanC: hot, wheelsOff } = triggers;
  return [
    ...entries.flatMap((entry) => {
      if (entry.kind === 'incident' && incidents.includes(entry.what)) return at(entry, entry.what);
      if (entry.kind !== 'session' || hot === undefined || entry.oilTempPeak === undefined)
        return [];
      return temperatureC(entry.oilTempPeak) > hot ? at(entry, 'oilHot') : [];
    }),
    ...(wheelsOff ? wheelsStillOff(entries) : []),
  ];
}

/** The last time a wheel came off that was not tightened to torque since; none named: all four. */
function wheelsStillOff(entries: readonly Entry[]): CaseTrigger[] {
  const off = new Map<Corner, Entry>();
  for (const entry of sortEntries(entries)) {
    if (entry.kind !== 'wheels') continue;
    for (const corner of entry.which?.length ? entry.which : CORNERS)
      if (entry.change === 'off') off.set(corner, entry);
      else off.delete(corner);
  }
  return [...new Set(off.values())].map((entry) => at(entry, 'wheelsOff'));
}
