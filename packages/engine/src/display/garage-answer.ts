import type { DistanceUnit } from '../log/units.ts';
import { capital, countWord, listWords } from './grammar.ts';
import { laneItemWords } from './item-words.ts';
import type { Lane } from './lane.ts';

/** What the first line of the garage needs of each car; an overview row has it all. */
export type GarageRow = {
  name: string;
  unit: DistanceUnit;
  lane: Lane | null;
  laidUp: boolean;
  overdue: number;
  dueSoon: number;
  notOnRecord: number;
};

/** Something has run out or soon will, and the car is in use. */
export function needsAHand(row: Pick<GarageRow, 'laidUp' | 'overdue' | 'dueSoon'>): boolean {
  return !row.laidUp && row.overdue + row.dueSoon > 0;
}

function reason(row: GarageRow): string {
  const item = row.lane?.next[0];
  if (item === undefined) return row.name;
  const { word } = laneItemWords(item, row.unit, row.laidUp);
  return `${row.name} (${item.name}: ${word.toLowerCase()})`;
}

function cars(count: number, verb: [one: string, many: string]): string {
  return count === 1 ? `One car ${verb[0]}` : `${countWord(count)} cars ${verb[1]}`;
}

/**
 * The first line of the garage: what needs a hand today, in words.
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
  if (garage.needsAHand === 0) return nothingToDo(garage.rows);
  const named = garage.rows.filter(needsAHand).slice(0, 3).map(reason);
  const start = `${cars(garage.needsAHand, ['needs', 'need'])} a hand today`;
  if (named.length === 0) return `${start}.`;
  const rest = garage.needsAHand - named.length;
  const list = rest > 0 ? listWords([...named, `${rest} more`], 4) : listWords(named);
  return `${start}: ${list}.`;
}

function nothingToDo(rows: readonly GarageRow[]): string {
  const unknown = rows.filter((row) => row.notOnRecord > 0);
  if (unknown.length === 0) return 'Nothing on record needs a hand today.';
  const names = listWords(unknown.map((row) => row.name));
  const have = unknown.length === 1 ? 'has' : 'have';
  return capital(
    `nothing on record needs a hand today, but ${names} ${have} items that are not on record.`,
  );
}
