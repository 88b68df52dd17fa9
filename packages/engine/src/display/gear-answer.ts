import type { ComponentLife, GearAnalysis } from '../gear/result.ts';
import type { DistanceUnit } from '../log/units.ts';
import type { ItemResult } from '../wear/result.ts';
import type { ItemFacts } from './car-facts.ts';
import { formatDay } from './format-day.ts';
import { BEDDING_WORDS } from './gear-words.ts';
import { capital, countWord, listWords } from './grammar.ts';
import { itemWords, type Standing } from './item-words.ts';
import { laneItem } from './lane-item.ts';
import { itemUrgency } from './urgency-of.ts';
import { wearToDo } from './worst-place.ts';

/** What the answers need of a component, a piece of equipment or a person; a row of the list has it. */
export type GearFacts = {
  name: string;
  items: readonly { id: string; item: ItemFacts }[];
  analysis: GearAnalysis['analysis'];
  life: ComponentLife | null;
  /** unit to show distances in where a limit has none */
  unit: DistanceUnit;
};

type Told = { mark: ReturnType<typeof itemWords>['mark']; words: string };

/** "Torque wrench, calibration" of the torque wrench is its calibration. */
function ownName(item: string, gear: string): string {
  const cut = item.toLowerCase().startsWith(`${gear.toLowerCase()}, `);
  const name = cut ? item.slice(gear.length + 2) : item;
  // "ABS unit" keeps its capitals
  return /^\p{Lu}\p{Ll}/u.test(name) ? name.charAt(0).toLowerCase() + name.slice(1) : name;
}

/** The state as it follows the name of the item: " overdue since ...", ", 4 sessions left". */
function stateWords(result: ItemResult, item: ItemFacts | undefined, on: Standing): Told {
  const { mark, word, detail } = itemWords(result, item, on);
  const { day, remaining } = laneItem(result, item);
  const atOnce = result.reasonCode === 'trigger' || result.reasonCode === 'asked';
  if (day !== null && remaining === null && !atOnce) {
    if (mark === 'overdue') return { mark, words: ` overdue since ${formatDay(day)}` };
    if (mark === 'dueSoon') return { mark, words: ` due by ${formatDay(day)}` };
    if (mark === 'noDate') return { mark, words: ` good until ${formatDay(day)}` };
  }
  const said = `${word.charAt(0).toLowerCase()}${word.slice(1)}`.replace(/, no date yet$/, '');
  if (mark === 'notOnRecord') return { mark, words: ` ${said}` };
  if (mark === 'noDate' || detail === '') return { mark, words: `, ${said}` };
  return { mark, words: mark === 'overdue' ? ` ${said}, ${detail}` : `, ${said}, ${detail}` };
}

function tell({ name, items, analysis, unit }: GearFacts): Told[] {
  const byId = new Map(items.map(({ id, item }) => [id, item]));
  const on = { unit, laidUp: false, asOf: analysis.asOf };
  return analysis.items
    .map((result, position) => ({ result, position, urgency: itemUrgency(result) }))
    .sort((a, b) => a.urgency - b.urgency || a.position - b.position)
    .map(({ result }) => {
      const item = byId.get(result.id);
      const { mark, words } = stateWords(result, item, on);
      return { mark, words: `${ownName(item?.name ?? result.id, name)}${words}` };
    });
}

/** Pads or discs that are on a car and not bedded. */
function unbedded({ life }: GearFacts): Told[] {
  if (life?.fitted == null || life.bedding === null) return [];
  const { word, toDo } = BEDDING_WORDS[life.bedding];
  return toDo ? [{ mark: 'dueSoon', words: word }] : [];
}

/** What a component's measurements ask for, before its items: a tread is too thin whatever was planned. */
function worn({ life, unit }: GearFacts): Told[] {
  const toDo = life?.wear ? wearToDo(life.wear, unit) : null;
  return toDo === null ? [] : [toDo];
}

/** All that needs a hand, what is overdue first. */
function pressing(gear: GearFacts): Told[] {
  const items = tell(gear).filter(({ mark }) => mark === 'overdue' || mark === 'dueSoon');
  const all = [...worn(gear), ...items, ...unbedded(gear)];
  return [
    ...all.filter(({ mark }) => mark === 'overdue'),
    ...all.filter(({ mark }) => mark !== 'overdue'),
  ];
}

/**
 * The one line that answers for a component, a tool or a person: what is most urgent of it.
 *
 * @example gearAnswer(wrench) // "Torque wrench: calibration overdue since 2 May 2026."
 */
export function gearAnswer(gear: GearFacts): string {
  const first = pressing(gear);
  const shown = first.length > 0 ? first : tell(gear).slice(0, 1);
  if (shown.length === 0) return `${capital(gear.name)}: nothing is watched on it yet.`;
  return `${capital(gear.name)}: ${listWords(shown.map(({ words }) => words))}.`;
}

/**
 * The first line of the list of sets, tools and people: what needs a hand, in words.
 *
 * @param rows in any order that shall be kept among equals
 */
export function gearListAnswer(rows: readonly GearFacts[]): string {
  if (rows.length === 0)
    return 'No set, tool or person yet. Add the tyre sets, the pads, the lift and who drives.';
  const needing = rows.flatMap((row) => {
    const [first] = pressing(row);
    return first === undefined ? [] : [{ ...first, name: row.name }];
  });
  if (needing.length === 0) return nothingToDo(rows);
  // overdue before the rest, else as they come
  const ordered = [
    ...needing.filter(({ mark }) => mark === 'overdue'),
    ...needing.filter(({ mark }) => mark !== 'overdue'),
  ];
  const names = ordered.map(({ name, words }) => `${name} (${words})`);
  const verb = needing.length === 1 ? 'needs' : 'need';
  return `${countWord(needing.length)} ${verb} a hand: ${listWords(names, 4)}.`;
}

function nothingToDo(rows: readonly GearFacts[]): string {
  const unknown = rows.filter((row) =>
    tell(row).some(({ mark }) => mark === 'notOnRecord' || mark === 'atLeast'),
  );
  if (unknown.length === 0) return 'Nothing on record here needs a hand today.';
  const names = listWords(unknown.map(({ name }) => name));
  const have = unknown.length === 1 ? 'has' : 'have';
  return `Nothing on record here needs a hand today, but ${names} ${have} items that are not fully on record.`;
}
