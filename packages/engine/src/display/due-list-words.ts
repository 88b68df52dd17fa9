import { addDays, weekday } from '../calendar/add.ts';
import type { DistanceUnit } from '../log/units.ts';
import type { CarStatus } from '../matters/result.ts';
import type { DueLine } from './due-line.ts';
import { dayAhead, horizonMonth, nearWords, type Spoken, weekdayAhead } from './due-words.ts';
import { formatDay } from './format-day.ts';
import { capital, countWord } from './grammar.ts';
import type { ItemWords } from './item-words.ts';
import { STATUS_WORDS } from './matter-words.ts';
import { partsWords } from './order-words.ts';
import { sideWords } from './what-if-words.ts';

/** A line of the garage's list as the words need it. */
export type DueListLine = DueLine & {
  carId: string;
  carName: string;
  carUnit: DistanceUnit;
  status: CarStatus;
  laidUp: boolean;
  /** civil date the line speaks of */
  asOf: string;
};

/** By what the list is sorted, and so grouped. */
export type DueOrder = 'likely' | 'early' | 'car';

export type DueGroup = { key: string; title: string };

/** Cars that are not in use: what has run out waits, and is asked for then. */
const APART: Readonly<Record<Exclude<CarStatus, 'inUse'>, string>> = {
  laidUp: 'Before it wakes: laid-up cars',
  inPieces: 'Before its next drive: cars in pieces',
  away: 'Before its next drive: cars that are away',
  sold: 'Cars that are sold',
};

/**
 * Under which heading a line stands.
 *
 * @example dueGroup(line, 'likely', { asOf: '2026-06-05' }) // { key: '2026-06-08', title: 'Week of Mon 8 June' }
 */
export function dueGroup(line: DueListLine, order: DueOrder, spoken: Spoken): DueGroup {
  const { status, state, dates, carId, carName } = line;
  if (state === 'unknown') return { key: 'unsure', title: 'Not on record, or only in part' };
  if (order === 'car') return { key: carId, title: withStatus(carName, status) };
  if (status !== 'inUse') return { key: status, title: APART[status] };
  if (state === 'overdue') return { key: 'overdue', title: 'Overdue' };
  if (state === null) return { key: 'noDate', title: 'No date yet' };
  const day = dates[order];
  if (day !== null) return weekOrMonth(day, spoken);
  const until = spoken.asOf === null ? 'within three years' : `before ${horizonMonth(spoken.asOf)}`;
  return { key: 'later', title: `Nothing ${order === 'likely' ? 'likely ' : ''}${until}` };
}

/** So many weeks ahead have a heading each, what comes after them its month. */
const WEEKS = 13;

function weekOrMonth(day: string, spoken: Spoken): DueGroup {
  const monday = mondayOf(day);
  if (spoken.asOf === null || monday < addDays(mondayOf(spoken.asOf), 7 * WEEKS))
    return { key: monday, title: `Week of ${weekdayAhead(monday, spoken)}` };
  return { key: day.slice(0, 7), title: formatDay(day).replace(/^\d+ /, '') };
}

/** A car's name, and where it stands if it is not in use. @example withStatus('Brindle 2', 'laidUp') // "Brindle 2, laid up" */
export function withStatus(carName: string, status: CarStatus): string {
  return status === 'inUse' ? carName : `${carName}, ${STATUS_WORDS[status].toLowerCase()}`;
}

/** Monday of the ISO week of a civil date. @example mondayOf('2026-06-14') // '2026-06-08' */
export function mondayOf(day: string): string {
  return addDays(day, 1 - weekday(day));
}

/** A line's state and dates. What waits for a car that is in pieces or away is not called overdue. */
export function dueLineWords(line: DueListLine): ItemWords {
  const { carUnit: unit, laidUp, asOf, status } = line;
  const words = sideWords(line, { unit, laidUp, asOf });
  const waits = status === 'inPieces' || status === 'away';
  if (!waits || (words.mark !== 'overdue' && words.mark !== 'dueSoon')) return words;
  return { ...words, mark: 'beforeItWakes', word: 'Before its next drive' };
}

/** So many days ahead one is told to order parts; what is due soon is told whenever. */
const ORDER_AHEAD_DAYS = 30;

/**
 * What a line says of its parts: what is ordered or here, and to be ordered only where that is near.
 *
 * @example duePartsWords(line) // "Order the parts by 18 June, they take 12 days."
 */
export function duePartsWords({ parts, leadDays, asOf, state }: DueListLine): string | null {
  if (parts === null) return null;
  const far = parts.kind === 'orderBy' && parts.day > addDays(asOf, ORDER_AHEAD_DAYS);
  const words = far && state === 'fine' ? null : partsWords(parts, { leadDays }, { asOf });
  return words === null ? null : `${capital(words)}.`;
}

/** Lines of cars in use, by state, and what else a list of the whole garage holds. */
export type DueListCounts = {
  overdue: number;
  dueSoon: number;
  unknown: number;
  fine: number;
  /** without a forecast */
  noDate: number;
  /** lines of cars that are not in use */
  apart: number;
  /** cars whose lines are not worked out yet, or of a form this version cannot read */
  carsToCome: number;
};

type DueList = {
  /** lines of cars in use that are overdue or could be due before the day, by the early day */
  soon: readonly DueListLine[];
  /** there are further such lines */
  more: boolean;
  /** civil date, itself not counted */
  before: string;
  counts: DueListCounts;
};

/**
 * The first lines of the list: what is overdue and what is likely due before a day, the first of each, and
 * of how many nobody can say.
 *
 * @example dueListSentences(list, { asOf: '2026-06-15' })
 * // ["Four things are likely due before 30 June; the first is Engine oil of Brindle 2, likely by Sat 20 June."]
 */
export function dueListSentences(list: DueList, spoken: Spoken): string[] {
  const { overdue, dueSoon, fine, noDate, unknown, apart, carsToCome } = list.counts;
  const known = overdue + dueSoon + fine + noDate;
  const coming = carsToCome > 0 ? [`${cars(carsToCome)} still being worked out.`] : [];
  if (known + unknown + apart === 0)
    return coming.length > 0 ? coming : ['Nothing is watched on any car yet.'];
  const open = unknown > 0 ? [`${things(unknown)} not on record, or only in part.`] : [];
  if (known === 0) return [...open, ...(apart > 0 ? [NOT_IN_USE] : []), ...coming];
  const day = `before ${dayAhead(list.before, spoken)}`;
  const said = overdue > 0 ? overdueFirst(list, day, spoken) : soonFirst(list, day, spoken);
  return [...said, ...open, ...coming];
}

const NOT_IN_USE = 'What is watched is of cars that are not in use.';

/** What is likely due before the day, and what could be. */
function ahead({ soon, before }: DueList) {
  const could = soon.filter(({ state, likely }) => state !== 'overdue' && likely !== undefined);
  const likely = could.filter(({ dates }) => dates.likely !== null && dates.likely < before);
  return { could, likely };
}

function overdueFirst(list: DueList, day: string, spoken: Spoken): string[] {
  const { likely, could } = ahead(list);
  const over = list.soon.find(({ state }) => state === 'overdue');
  const next = likely[0] ?? could[0];
  const [count, how] =
    likely.length > 0 ? [likely.length, 'likely due'] : [could.length, 'perhaps due'];
  const others =
    count > 0
      ? ` and ${list.more ? 'at least ' : ''}${countWord(count).toLowerCase()} ${how} ${day}`
      : `, nothing else known is due ${day}`;
  return [
    `${things(list.counts.overdue)} overdue${others}.`,
    ...(over ? [`The first: ${of(over)}.`] : []),
    ...(next ? [`Then ${of(next)}, ${nearWords(next.dates, spoken)}.`] : []),
  ];
}

function soonFirst(list: DueList, day: string, spoken: Spoken): string[] {
  const { likely, could } = ahead(list);
  const [first, perhaps] = [likely[0], could[0]];
  const count = list.more ? `At least ${likely.length} things are` : things(likely.length);
  if (first)
    return [
      `${count} likely due ${day}; the first is ${of(first)}, ${nearWords(first.dates, spoken)}.`,
    ];
  if (!perhaps) return [`Nothing known is due ${day}.`];
  const some = could.length === 1 ? 'one thing' : `${countWord(could.length).toLowerCase()} things`;
  return [
    `Nothing is likely due ${day}, but ${some} could be; the first is ${of(perhaps)}, ${nearWords(perhaps.dates, spoken)}.`,
  ];
}

const of = ({ name, carName }: DueListLine) => `${name} of ${carName}`;

const things = (count: number) => (count === 1 ? 'One thing is' : `${countWord(count)} things are`);

const cars = (count: number) => (count === 1 ? 'One car is' : `${countWord(count)} cars are`);
