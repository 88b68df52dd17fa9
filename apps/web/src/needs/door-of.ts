import type { RecordAt } from '@quartermark/engine/readiness';
import type { Route } from 'next';

/** Where a need is mended. */
export type Door = { href: Route; words: string };

export type DoorsAt = {
  garageId: string;
  carId: string /** null: the road, today */;
  eventId: string | null;
};

/**
 * Where what was done about a need is written down; null where there is no such place.
 *
 * @example doorOf({ at: 'entry', kind: 'odometer' }, at) // { href: '/g/…/record/…/odometer', words: 'Write it down' }
 */
export function doorOf(record: RecordAt | null, at: DoorsAt): Door | null {
  if (record === null) return null;
  const garage = `/g/${at.garageId}`;
  const door = (path: string, words: string): Door => ({
    href: `${garage}/${path}` as Route,
    words,
  });
  switch (record.at) {
    case 'entry': {
      const { kind, item, component, notice } = record;
      const query = new URLSearchParams();
      if (item !== undefined) query.set('item', item);
      if (component !== undefined) query.set('component', component);
      if (notice !== undefined) query.set('notice', notice);
      const more = query.size === 0 ? '' : `?${query.toString()}`;
      return door(
        `record/${at.carId}/${kind}${more}`,
        kind === 'answer' ? 'Answer it' : 'Write it down',
      );
    }
    case 'event':
      return at.eventId === null ? null : door(`events/${at.eventId}/change`, 'Change the event');
    case 'item':
      return door(`car/${at.carId}/item/add`, 'Add the item');
    case 'gear':
      return door(`gear/${record.gear}`, 'Open it');
  }
}
