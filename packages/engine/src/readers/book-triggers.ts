import type { CaseTrigger } from '../history/case.ts';
import type { Entry } from '../log/entry.ts';
import type { Item } from '../log/item.ts';
import { temperatureC } from '../log/quantity.ts';
import { sortEntries } from '../log/sort-entries.ts';
import { markOf } from '../matters/mark-of.ts';
import { wheelCorners } from '../matters/wheel-corners.ts';

const at = (entry: Entry, code: CaseTrigger['code']): CaseTrigger => ({
  entry: entry.id,
  mark: markOf(entry),
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

/** The last time a wheel came off that was not tightened to torque since. */
function wheelsStillOff(entries: readonly Entry[]): CaseTrigger[] {
  const off = wheelCorners(sortEntries(entries)).filter(({ change }) => change === 'off');
  return [...new Set(off.map(({ entry }) => entry))].map((entry) => at(entry, 'wheelsOff'));
}
