import type { ServiceEntry } from '../history/case.ts';
import type { Placed } from '../history/placed.ts';

/** When an item was last done: a service that names it, or its starting point. */
export type LastService = { position: number; day: number; entry: ServiceEntry };

/** The last service of every item, by order: one walk over the timeline. */
export function lastServices(timeline: readonly Placed[]): Map<string, LastService> {
  const last = new Map<string, LastService>();
  timeline.forEach(({ entry, day }, position) => {
    if (entry.type !== 'service') return;
    for (const item of entry.items) last.set(item, { position, day, entry });
  });
  return last;
}
