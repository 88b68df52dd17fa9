import { laneItemWords } from '@quartermark/engine/display';
import { type CarTonight, isInUse, runsOutStanding } from '../facts/car-tonight.ts';
import type { EventDays } from '../facts/fact.ts';
import type { LinkOf } from '../letter/letter.ts';
import { NAME_MOST, plain } from '../letter/plain.ts';
import type { FeedEntry } from './feed-entry.ts';

/** What a member's calendar is made of. */
export type FeedOf = {
  garage: string;
  cars: readonly FeedCar[];
  /** of the garage's calendar, with the cars that go; none named: whichever is ready */
  events: readonly (EventDays & { cars: readonly string[] })[];
  /** cars the member may see */
  member: { cars: 'all' | readonly string[] };
};

export type FeedCar = Pick<CarTonight, 'id' | 'name' | 'unit' | 'known'> & {
  /** what was and what is planned; `until` null: nobody knows yet */
  layUps: readonly { id: string; since: string; until: string | null }[];
};

/**
 * The days of a garage that a member may see: what falls due, looks at the oil, events, lay-ups. What is overdue
 * stays on its day. Of cars that are not in use only papers and battery fall due; of sold cars nothing stands.
 *
 * A UID is made of what the entry is about and never of what it says, so that the entry moves when its day does.
 */
export function feedEntries(of: FeedOf, linkOf: LinkOf): FeedEntry[] {
  const { garage, member } = of;
  const may = (car: string) => member.cars === 'all' || member.cars.includes(car);
  const cars = of.cars.filter(({ id, known }) => may(id) && known?.lane.status !== 'sold');
  const seen = new Set(cars.map(({ id }) => id));
  const events = of.events.filter(
    (event) => event.cars.length === 0 || event.cars.some((car) => seen.has(car)),
  );
  const uid = (kind: string, ...ids: string[]) => `${kind}.${ids.join('.')}@${garage}.quartermark`;
  return [
    ...cars.flatMap((car) => dueEntries(car, uid, linkOf)),
    ...cars.flatMap((car) => lookEntries(car, uid, linkOf)),
    ...events.map(
      ({ id, name, start, end }): FeedEntry => ({
        uid: uid('event', id),
        start,
        end,
        summary: plain(name, NAME_MOST),
        description: '',
        url: linkOf({ to: 'event', event: id }),
        category: 'Event',
      }),
    ),
    ...cars.flatMap((car) => layUpEntries(car, uid, linkOf)),
  ].sort((a, b) => (a.uid < b.uid ? -1 : a.uid > b.uid ? 1 : 0));
}

type Uid = (kind: string, ...ids: string[]) => string;

function dueEntries({ id, name, unit, known }: FeedCar, uid: Uid, linkOf: LinkOf): FeedEntry[] {
  if (known === null) return [];
  const { lines, lane } = known;
  const spoken = isInUse(lane.status) ? lines : lines.filter(runsOutStanding);
  return spoken.flatMap((line): FeedEntry[] => {
    const over = line.state === 'overdue';
    const dated = line.state === 'dueSoon' || line.state === 'fine';
    const day = over ? line.overdueSince : dated ? (line.dates.likely ?? null) : null;
    if (day === null || line.reasonCode === 'doneOnce') return [];
    const words = laneItemWords(line, { unit, laidUp: false, asOf: known.asOf });
    const what = `${plain(line.name, NAME_MOST)}, ${plain(name, NAME_MOST)}`;
    return [
      {
        uid: uid('due', id, line.id),
        start: day,
        end: day,
        summary: `${over ? 'Overdue' : 'Likely due'}: ${what}`,
        description: words.detail,
        url: linkOf({ to: 'serviceForm', car: id, items: [line.id] }),
        category: 'Due',
      },
    ];
  });
}

function lookEntries({ id, name, known }: FeedCar, uid: Uid, linkOf: LinkOf): FeedEntry[] {
  const by = known?.oil?.nextLook.by ?? null;
  if (by === null || !isInUse(known?.lane.status ?? 'away')) return [];
  const summary = `Look at the oil: ${plain(name, NAME_MOST)}`;
  const url = linkOf({ to: 'oilCheckForm', car: id });
  return [
    { uid: uid('look', id), start: by, end: by, summary, description: '', url, category: 'Look' },
  ];
}

/** Without an end a lay-up is an entry of its first day. */
function layUpEntries({ id, name, layUps }: FeedCar, uid: Uid, linkOf: LinkOf): FeedEntry[] {
  return layUps.map(({ id: layUp, since, until }) => ({
    uid: uid('layup', id, layUp),
    start: since,
    end: until ?? since,
    summary: `${until === null ? 'Laid up from today on' : 'Laid up'}: ${plain(name, NAME_MOST)}`,
    description: '',
    url: linkOf({ to: 'car', car: id }),
    category: 'Lay-up' as const,
  }));
}
