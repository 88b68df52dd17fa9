import { KIND_WORDS } from '@quartermark/engine/display';
import type { RecordAt } from '@quartermark/engine/readiness';

export type Door = { href: string; words: string };

type Where = {
  garageId: string;
  /** null: the road, today */
  eventId: string | null;
  carId: string;
  /** names of sets, tools and people, by id */
  names: Readonly<Record<string, string>>;
};

const PAST = 'lastEvent:';

/** What an event that is over asks is said in its debrief: what the cars did there, or that they did not go. */
export function debriefOf(needs: readonly string[], { garageId }: Pick<Where, 'garageId'>) {
  const past = needs.find((id) => id.startsWith(PAST));
  if (past === undefined) return null;
  return {
    href: `/g/${garageId}/events/${past.slice(PAST.length)}/debrief`,
    words: 'Say how it went',
  } satisfies Door;
}

/** Where what was done is written down, as a link and its words. */
export function doorOf(record: RecordAt, { garageId, eventId, carId, names }: Where): Door {
  const garage = `/g/${garageId}`;
  switch (record.at) {
    case 'entry': {
      const { kind, item, component, notice } = record;
      const query = new URLSearchParams(
        Object.entries({ item, component, notice }).flatMap(([name, id]) =>
          id === undefined ? [] : [[name, id]],
        ),
      ).toString();
      return {
        href: `${garage}/record/${carId}/${kind}${query === '' ? '' : `?${query}`}`,
        words: `Record it: ${KIND_WORDS[kind].toLowerCase()}`,
      };
    }
    case 'event':
      return eventId === null
        ? { href: `${garage}/events`, words: 'Say it on the event' }
        : { href: `${garage}/events/${eventId}/change`, words: 'Say it on the event' };
    case 'item':
      return { href: `${garage}/car/${carId}/item/add`, words: 'Add the item' };
    case 'gear':
      return {
        href: `${garage}/gear/${record.gear}`,
        words: `Open ${names[record.gear] ?? 'it'}`,
      };
  }
}
