import { addDays, parseDay } from '@quartermark/engine/calendar';
import type { Lane, LaneItem } from '@quartermark/engine/display';
import type { EventInput } from '@quartermark/engine/log';

/** A stretch of days that begins today. */
export type Axis = { today: string; days: number };

/** So far ahead the season board looks: 16 weeks. */
export const BOARD_DAYS = 112;

/** Where something stands on the board. `at` is a share of the axis, 0 today and 1 at its end. */
export type Place =
  /** overdue: at the left edge, whenever it fell due */
  | { where: 'edge' }
  | { where: 'axis'; at: number }
  /** it has a date, but one that the board does not reach */
  | { where: 'later' }
  /** it has no date: it is said in words */
  | { where: 'undated' };

const shareOf = (day: string, { today, days }: Axis): number =>
  (parseDay(day) - parseDay(today)) / days;

function placeDay(day: string, axis: Axis): Place {
  const at = shareOf(day, axis);
  if (at < 0) return { where: 'edge' };
  return at > 1 ? { where: 'later' } : { where: 'axis', at };
}

/**
 * Where an item's mark stands: on the day it falls due likely, or surely. What has run out on a car that is
 * laid up waits until it wakes: it stands at the end of the lay-up if that is known.
 */
export function placeItem(item: LaneItem, laidUp: Lane['laidUp'], axis: Axis): Place {
  const { state, day, likely, reasonCode } = item;
  if (laidUp !== null && (state === 'overdue' || state === 'dueSoon')) {
    const { until } = laidUp;
    return until === null ? { where: 'undated' } : placeDay(addDays(until, 1), axis);
  }
  if (state === 'overdue') return { where: 'edge' };
  if (state === 'unknown' || reasonCode === 'doneOnce') return { where: 'undated' };
  const on = likely ?? day;
  // looked for three years ahead and not found
  if (on === null) return { where: likely === null ? 'later' : 'undated' };
  return placeDay(on, axis);
}

/**
 * The days from the one an item could be due as early as to its likely one, as far as the axis reaches;
 * null where they are the same, or not said of it now.
 */
export function placeWhisker(
  item: LaneItem,
  laidUp: Lane['laidUp'],
  axis: Axis,
): { from: number; to: number } | null {
  const { early, likely = null } = item;
  if (early == null || laidUp !== null) return null;
  const from = Math.max(0, shareOf(early, axis));
  const to = likely === null ? 1 : Math.min(1, shareOf(likely, axis));
  return to > from ? { from, to } : null;
}

/** The part of the axis that some days cover, ends included; null where they cover none of it. */
export function placeSpan(
  span: { from: string; to: string | null },
  axis: Axis,
): { from: number; to: number } | null {
  const from = Math.max(0, shareOf(span.from, axis));
  const to = span.to === null ? 1 : Math.min(1, shareOf(addDays(span.to, 1), axis));
  return to > from ? { from, to } : null;
}

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** First days of the months that begin on the axis, with their names. */
export function placeMonths(axis: Axis): { name: string; at: number }[] {
  const months: { name: string; at: number }[] = [];
  const [year = 0, month = 0] = axis.today.split('-').map(Number);
  for (let ahead = 1; ; ahead += 1) {
    const index = month - 1 + ahead;
    const number = String((index % 12) + 1).padStart(2, '0');
    const at = shareOf(`${year + Math.floor(index / 12)}-${number}-01`, axis);
    if (at > 1) return months;
    months.push({ name: MONTHS[index % 12] ?? '', at });
  }
}

type Dated = { eventId: string; event: Pick<EventInput, 'name' | 'start' | 'end' | 'cars'> };
export type PlacedEvent<E extends Dated> = E & {
  from: number;
  to: number;
  /** the line above the lanes on which its name stands, 0 nearest to them */
  row: number;
};

/** Names take some width; a board is at least so wide that a letter takes this share of its axis. */
const LETTER = 0.016;
export const LABEL_LETTERS = 26;

/**
 * Events on the axis by their day, each with a line for its name. A name stands to the right of its
 * event and above those that it would cover, so that no line runs through a name.
 */
export function placeEvents<E extends Dated>(
  events: readonly E[],
  axis: Axis,
): { placed: PlacedEvent<E>[]; rows: number } {
  const spans = events
    .flatMap((one) => {
      const { start, end = start } = one.event;
      const span = placeSpan({ from: start, to: end }, axis);
      return span ? [{ ...one, ...span }] : [];
    })
    .sort((a, b) => a.from - b.from || (a.eventId < b.eventId ? -1 : 1));
  const placed: PlacedEvent<E>[] = [];
  for (const one of spans.reverse()) {
    const ends = one.from + Math.min(one.event.name.length, LABEL_LETTERS) * LETTER + LETTER;
    const covered = placed.filter(({ from }) => from < ends).map(({ row }) => row + 1);
    placed.push({ ...one, row: Math.max(0, ...covered) });
  }
  placed.reverse();
  return { placed, rows: Math.max(0, ...placed.map(({ row }) => row + 1)) };
}

/** A car goes to an event that names it, and may go to one that names none. */
export function mayGo({ event }: Pick<Dated, 'event'>, carId: string): boolean {
  return event.cars.length === 0 || event.cars.includes(carId);
}

/**
 * The first event a car may go to by which an item is due: one that begins on or after the day it is
 * due. Null for what has no date.
 *
 * @param events by their first day
 */
export function dueBefore<E extends Dated>(
  carId: string,
  place: Place,
  events: readonly PlacedEvent<E>[],
): PlacedEvent<E> | null {
  if (place.where !== 'edge' && place.where !== 'axis') return null;
  const at = place.where === 'edge' ? 0 : place.at;
  return events.find((one) => one.from >= at && mayGo(one, carId)) ?? null;
}
