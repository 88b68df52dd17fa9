import type { DistanceUnit } from '../log/units.ts';
import type { CarStatus } from '../matters/result.ts';
import { capital, countWord, listWords } from './grammar.ts';
import { laneItemWords } from './item-words.ts';
import type { Lane } from './lane.ts';
import { levelWords, outsideTheMarks } from './level-words.ts';
import { STATUS_WORDS, STOP_WORDS } from './matter-words.ts';
import { isUrgent, OIL_STOP_WORDS } from './oil-stop-sentence.ts';

/** What the first line of the garage needs of each car; an overview row has it all. */
export type GarageRow = {
  name: string;
  unit: DistanceUnit;
  lane: Lane | null;
  laidUp: boolean;
  /** civil date of its figures; null without any */
  asOf: string | null;
  overdue: number;
  dueSoon: number;
  notOnRecord: number;
};

/** Something has run out or soon will, its oil cannot wait, or driving it is forbidden; and it is here and in use. */
export function needsAHand(
  row: Pick<GarageRow, 'lane' | 'laidUp' | 'overdue' | 'dueSoon'>,
): boolean {
  if (row.laidUp || statusOf(row) !== 'inUse') return false;
  return (
    row.overdue + row.dueSoon > 0 || (row.lane?.stop ?? null) !== null || isUrgent(oilStop(row))
  );
}

const oilStop = ({ lane }: Pick<GarageRow, 'lane'>) => lane?.oil?.stop ?? null;

function statusOf({ lane }: Pick<GarageRow, 'lane'>): CarStatus {
  return lane?.status ?? 'inUse';
}

function reason(row: GarageRow): string {
  const stop = row.lane?.stop ?? null;
  if (stop !== null) return `${row.name} (${STOP_WORDS[stop].toLowerCase()})`;
  if (isUrgent(oilStop(row))) return `${row.name} (oil)`;
  const item = row.lane?.next[0];
  if (item === undefined) return row.name;
  const { word } = laneItemWords(item, row);
  return `${row.name} (${item.name}: ${word.toLowerCase()})`;
}

function cars(count: number, verb: [one: string, many: string]): string {
  return count === 1 ? `One car ${verb[0]}` : `${countWord(count)} cars ${verb[1]}`;
}

/**
 * The first line of the garage: what needs a hand today, in words, and whose oil was last read outside
 * the marks, since that cannot wait for a limit.
 *
 * @param garage `cars` and `needsAHand` count the whole garage; `rows` may be its first page, most
 *   urgent first
 */
export function garageAnswer(garage: {
  cars: number;
  needsAHand: number;
  rows: readonly GarageRow[];
}): string {
  if (garage.cars === 0) return 'No car yet. Add one to begin its log.';
  const stick = stickSentences(garage.rows);
  const items =
    garage.needsAHand === 0 ? nothingToDo(garage.rows, stick.length > 0) : needing(garage);
  return [items, ...stick, ...elsewhere(garage.rows)].join(' ');
}

/** Cars of which nothing is asked today, and why. */
function elsewhere(rows: readonly GarageRow[]): string[] {
  return (['inPieces', 'away', 'sold'] as const).flatMap((status) => {
    const names = rows.filter((row) => statusOf(row) === status).map(({ name }) => name);
    return names.length === 0 ? [] : [`${STATUS_WORDS[status]}: ${listWords(names)}.`];
  });
}

function needing(garage: { needsAHand: number; rows: readonly GarageRow[] }): string {
  const named = garage.rows.filter(needsAHand).slice(0, 3).map(reason);
  const start = `${cars(garage.needsAHand, ['needs', 'need'])} a hand today`;
  if (named.length === 0) return `${start}.`;
  const rest = garage.needsAHand - named.length;
  const list = rest > 0 ? listWords([...named, `${rest} more`], 4) : listWords(named);
  return `${start}: ${list}.`;
}

function stickSentences(rows: readonly GarageRow[]): string[] {
  const told = rows.flatMap((row) => {
    const words = statusOf(row) === 'sold' ? null : oilWords(row);
    return words === null ? [] : [`${row.name} ${words}`];
  });
  if (told.length === 0) return [];
  return [`Oil: ${listWords(told)}. Look at it by the manual’s procedure before the next start.`];
}

/** What its oil asks for: by the ledger, or by the last reading where that lay outside the marks. */
function oilWords(row: GarageRow): string | null {
  const stop = oilStop(row);
  if (stop !== null) return OIL_STOP_WORDS[stop];
  const level = row.lane?.level ?? null;
  return level !== null && outsideTheMarks(level) ? levelWords(level) : null;
}

function nothingToDo(rows: readonly GarageRow[], other: boolean): string {
  // where a stick asks for a look, it is not true that nothing does
  const what = other ? 'no item' : 'nothing';
  const unknown = rows.filter((row) => row.notOnRecord > 0 && statusOf(row) !== 'sold');
  if (unknown.length === 0) return capital(`${what} on record needs a hand today.`);
  const names = listWords(unknown.map((row) => row.name));
  const have = unknown.length === 1 ? 'has' : 'have';
  return capital(
    `${what} on record needs a hand today, but ${names} ${have} items that are not on record.`,
  );
}
