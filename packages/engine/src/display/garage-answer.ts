import { type GarageAsked, roadOfGarage, unknownTail } from './garage-road.ts';
import { type GarageRow, needsAHand, oilStopOfRow, statusOfRow, withReason } from './garage-row.ts';
import { capital, countWord, listWords } from './grammar.ts';
import { levelWords, outsideTheMarks } from './level-words.ts';
import { STATUS_WORDS } from './matter-words.ts';
import { OIL_STOP_WORDS } from './oil-stop-sentence.ts';

function cars(count: number, verb: [one: string, many: string]): string {
  return count === 1 ? `One car ${verb[0]}` : `${countWord(count)} cars ${verb[1]}`;
}

/** The sentences of `garageSentences()` as one text. */
export function garageAnswer(garage: GarageAsked): string {
  return garageSentences(garage).join(' ');
}

/**
 * The first lines of the garage: how many cars are ready for the road and what needs a hand; then whose oil
 * was last read outside the marks, since that cannot wait for a limit, and which cars are elsewhere.
 *
 * @returns the first always there
 * @example garageSentences({ cars: 8, needsAHand: 2, road: { ready: 6, known: 8 }, rows })
 * // ["Ready for the road, by the log: six of eight cars. Two need a hand: Tern (engine oil: overdue) and Wren (oil)."]
 */
export function garageSentences(garage: GarageAsked): string[] {
  if (garage.cars === 0) return ['No car yet. Add one to begin its log.'];
  const stick = stickSentences(garage.rows);
  const road = roadOfGarage(garage);
  const hand =
    road ??
    (garage.needsAHand === 0 ? nothingToDo(garage.rows, stick.length > 0) : needing(garage));
  return [hand, ...stick, ...elsewhere(garage.rows)];
}

/** Cars of which nothing is asked today, and why. */
function elsewhere(rows: readonly GarageRow[]): string[] {
  return (['inPieces', 'away', 'sold'] as const).flatMap((status) => {
    const names = rows.filter((row) => statusOfRow(row) === status).map(({ name }) => name);
    return names.length === 0 ? [] : [`${STATUS_WORDS[status]}: ${listWords(names)}.`];
  });
}

function needing(garage: { needsAHand: number; rows: readonly GarageRow[] }): string {
  const named = garage.rows.filter(needsAHand).slice(0, 3).map(withReason);
  const start = `${cars(garage.needsAHand, ['needs', 'need'])} a hand today`;
  if (named.length === 0) return `${start}.`;
  const rest = garage.needsAHand - named.length;
  const list = rest > 0 ? listWords([...named, `${rest} more`], 4) : listWords(named);
  return `${start}: ${list}.`;
}

function stickSentences(rows: readonly GarageRow[]): string[] {
  const told = rows.flatMap((row) => {
    const words = statusOfRow(row) === 'sold' ? null : oilWords(row);
    return words === null ? [] : [`${row.name} ${words}`];
  });
  if (told.length === 0) return [];
  return [`Oil: ${listWords(told)}. Look at it by the manual’s procedure before the next start.`];
}

/** What its oil asks for: by the ledger, or by the last reading where that lay outside the marks. */
function oilWords(row: GarageRow): string | null {
  const stop = oilStopOfRow(row);
  if (stop !== null) return OIL_STOP_WORDS[stop];
  const level = row.lane?.level ?? null;
  return level !== null && outsideTheMarks(level) ? levelWords(level) : null;
}

function nothingToDo(rows: readonly GarageRow[], other: boolean): string {
  // where a stick asks for a look, it is not true that nothing does
  const what = other ? 'no item' : 'nothing';
  return capital(`${what} on record needs a hand today${unknownTail(rows)}`);
}
