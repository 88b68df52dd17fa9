import type { ComponentWear, PositionWear, WearBasis } from '../gear/wear-rate/result.ts';
import type { DistanceUnit } from '../log/units.ts';
import { type ItemResult, isAmountLimit } from '../wear/result.ts';
import { belowWords, floorsBelow, startWords, thinnest } from './below-words.ts';
import { floorWords, leftWords, placeWords } from './wear-words.ts';

const SORT = { tread: 'tread', padInner: 'pad', padOuter: 'pad', disc: 'disc' } as const;

/** Use of a circuit day or a long trip: what may reach its minimum within that is due soon. */
const SOON: Readonly<Record<WearBasis, number>> = { sessions: 4, km: 1000, launches: 10 };

/** Least use left first; a place without a rate comes after those that have one. */
function leastLeft({ floors }: PositionWear): number {
  return Math.min(...floors.map(({ left }) => left?.low ?? Number.POSITIVE_INFINITY));
}

function byUrgency(a: PositionWear, b: PositionWear): number {
  const below = floorsBelow(b).length - floorsBelow(a).length;
  const [left, other] = [leastLeft(a), leastLeft(b)];
  return below || (left === other ? 0 : left - other) || thinnest(a) - thinnest(b);
}

/**
 * The places to speak of: of each sort the one that runs out first, with a thinner one whose rate nobody
 * knows, and each that rose.
 */
export function worstOf({ positions }: ComponentWear): PositionWear[] {
  const told = new Set<PositionWear>();
  for (const sort of new Set(positions.map(({ what }) => SORT[what]))) {
    const here = positions.filter(({ what }) => SORT[what] === sort);
    const [first] = here.toSorted(byUrgency);
    const [thin] = here.toSorted((a, b) => thinnest(a) - thinnest(b));
    if (first) told.add(first);
    if (thin && thin.line === null) told.add(thin);
    for (const position of here) if (position.rise !== null) told.add(position);
  }
  return [...told];
}

/**
 * What of a component's wear asks for something: below a minimum, a minimum that one circuit day or trip
 * may reach, or too thin to begin a circuit day; null where nothing does.
 *
 * @param unit of distances
 * @example wearToDo(wear, 'km') // { mark: 'overdue', words: 'front left tread below your own least, 3 mm' }
 */
export function wearToDo(
  wear: ComponentWear,
  unit: DistanceUnit,
): { mark: 'overdue' | 'dueSoon'; words: string } | null {
  const [worst] = wear.positions.toSorted(byUrgency);
  if (worst === undefined) return null;
  const place = placeWords(worst);
  const below = belowWords(worst);
  if (below !== null) return { mark: 'overdue', words: `${place} ${below}` };
  const floor = worst.floors.find(({ left }) => left !== null && left.low < SOON[wear.basis]);
  // without any wear seen a low bound tells of the gauge, not of the part
  if (floor?.left && floor.left.likely !== null)
    return {
      mark: 'dueSoon',
      words: `${place} at ${floorWords(floor)} ${leftWords(floor.left, wear.basis, unit)}`,
    };
  const thin = wear.positions.toSorted((a, b) => thinnest(a) - thinnest(b))[0] ?? worst;
  const start = startWords(thin, wear);
  return start === null ? null : { mark: 'dueSoon', words: `${placeWords(thin)} ${start}` };
}

const WORD = { overdue: 'Worn out', dueSoon: 'Due soon', noDate: 'First to run out' } as const;

/** A line on wear, as the list of sets shows it. */
export type WearLineWords = { mark: keyof typeof WORD; word: string; words: string };

/**
 * What to say of a component's wear where that is the first thing of it to run out: it asks for something,
 * or less use is left to a minimum than to any limit counted in the same use; null where it is not.
 *
 * @param items of the component, as judged by its use
 * @param unit of distances
 * @example wearFirst(wear, items, 'km')
 * // { mark: 'dueSoon', word: 'Due soon', words: 'front left tread at 3 mm (your own value) in about 4 sessions' }
 */
export function wearFirst(
  wear: ComponentWear,
  items: readonly ItemResult[],
  unit: DistanceUnit,
): WearLineWords | null {
  const toDo = wearToDo(wear, unit);
  if (toDo !== null) return { ...toDo, word: WORD[toDo.mark] };
  const [worst] = wear.positions.toSorted(byUrgency);
  const floor = worst?.floors.find(({ left }) => left?.likely != null);
  if (worst === undefined || floor?.left?.likely == null) return null;
  const rest = items
    .flatMap(({ limits }) => limits.filter(isAmountLimit))
    .filter(({ measure }) => measure === wear.basis)
    .map(({ remaining }) => remaining);
  // days and use cannot be told apart here: then nothing is said to come first
  if (items.length > 0 && !(Math.min(...rest) > floor.left.likely && rest.length > 0)) return null;
  const left = `${floorWords(floor)} ${leftWords(floor.left, wear.basis, unit)}`;
  return { mark: 'noDate', word: WORD.noDate, words: `${placeWords(worst)} at ${left}` };
}
