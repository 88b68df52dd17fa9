import type { GarageRow } from './garage-row.ts';
import { needsAHand, oilStopOfRow, statusOfRow, withReason } from './garage-row.ts';
import { countWord, listWords } from './grammar.ts';
import { isUrgent } from './oil-stop-sentence.ts';
import { nearDay } from './verdict-words.ts';

/** What the first line of the garage rests on. */
export type GarageAsked = {
  /** of the whole garage, as the two that follow */
  cars: number;
  needsAHand: number;
  /** cars in use of which it is known, and how many of them are ready for the road; absent: of none */
  road?: { ready: number; known: number };
  /** may be its first page, most urgent first */
  rows: readonly GarageRow[];
};

/** How many are ready for the road, and what needs a hand; null where nothing is known of any. */
export function roadOfGarage({
  cars: all,
  needsAHand: needy,
  road,
  rows,
}: GarageAsked): string | null {
  if (road === undefined || road.known === 0) return null;
  const [only] = rows;
  if (all === 1 && only && needy > 0 && road.ready === 0) return `${notReady(only)}.`;
  const start = 'Ready for the road, by the log';
  const head = all === 1 ? start : `${start}: ${share(road, all)}`;
  if (needy === 0) return head + unknownTail(rows);
  return `${head}. ${handList(needy, rows)}.`;
}

function share({ ready, known }: { ready: number; known: number }, all: number): string {
  const of = (count: number) => countWord(count).toLowerCase();
  const whole = known === all ? `${of(known)} cars` : `the ${of(known)} in use`;
  if (known === 1) return ready === 1 ? 'the one in use' : 'not the one in use';
  if (ready === known) return `all ${whole.replace(/^the /, '')}`;
  return ready === 0 ? `none of ${whole}` : `${of(ready)} of ${whole}`;
}

/** The only car there is, and why it has to wait. */
function notReady(row: GarageRow): string {
  const { word, by } = row.lane?.road ?? { word: 'notInTime', by: null };
  const spoken = { asOf: row.asOf };
  const stopped = (row.lane?.stop ?? null) !== null || isUrgent(oilStopOfRow(row));
  if (stopped || word === 'notInTime') return `Not ready for the road: ${withReason(row)}`;
  if (word === 'canBeReady' && by !== null)
    return `Can be ready for the road ${by === row.asOf ? 'today' : `by ${nearDay(by, spoken)}`}: ${withReason(row)}`;
  return `Not on record whether it is ready for the road: ${withReason(row)}`;
}

/** Cars told by name beside how many are ready, so that the line stays short. */
const NAMED_BESIDE = 2;

function handList(count: number, rows: readonly GarageRow[]): string {
  const named = rows.filter(needsAHand).slice(0, NAMED_BESIDE).map(withReason);
  const need = count === 1 ? 'One needs a hand' : `${countWord(count)} need a hand`;
  const rest = count - named.length;
  if (named.length === 0) return need;
  const list = rest > 0 ? [...named, `${rest} more`] : named;
  return `${need}: ${listWords(list, NAMED_BESIDE + 1)}`;
}

/** Ends a sentence with whose items are not on record, or with its stop. */
export function unknownTail(rows: readonly GarageRow[]): string {
  const unknown = rows.filter((row) => row.notOnRecord > 0 && statusOfRow(row) !== 'sold');
  if (unknown.length === 0) return '.';
  const names = listWords(unknown.map((row) => row.name));
  return `, but ${names} ${unknown.length === 1 ? 'has' : 'have'} items that are not on record.`;
}
