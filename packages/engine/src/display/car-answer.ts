import type { Analysis, ItemResult } from '../wear/result.ts';
import type { CarFacts } from './car-facts.ts';
import { formatDay } from './format-day.ts';
import { capital, countWord, listWords, readsAsPlural } from './grammar.ts';
import { type ItemWords, itemWords } from './item-words.ts';
import { isUrgent, oilStopOf, oilStopSentence } from './oil-stop-sentence.ts';
import { goneSentence, openSentences, stopSentences } from './stop-sentences.ts';
import { itemUrgency } from './urgency-of.ts';

type Told = { name: string; words: ItemWords; result: ItemResult };

function tell(analysis: Analysis, car: CarFacts): Told[] {
  const byId = new Map(car.items.map(({ id, item }) => [id, item]));
  const on = { unit: car.unit, laidUp: analysis.laidUp !== null, asOf: analysis.asOf };
  return analysis.items
    .map((result, position) => ({ result, position, urgency: itemUrgency(result) }))
    .sort((a, b) => a.urgency - b.urgency || a.position - b.position)
    .map(({ result }) => {
      const item = byId.get(result.id);
      const words = itemWords(result, item, on);
      return { name: item?.name ?? result.id, words, result };
    });
}

/**
 * The item of a car that is most urgent, with its words; null where nothing is watched, and of a car that is
 * sold.
 */
export function firstItem(
  analysis: Analysis,
  car: CarFacts,
): { name: string; words: ItemWords } | null {
  const [first] = analysis.status === 'sold' ? [] : tell(analysis, car);
  return first ? { name: first.name, words: first.words } : null;
}

function isAre(name: string): string {
  return readsAsPlural(name) ? 'are' : 'is';
}

function withDetail(start: string, detail: string): string {
  return detail === '' ? `${start}.` : `${start}: ${detail}.`;
}

/** One sentence per item for the first three, the others counted. */
function sentences(told: Told[], state: string): string[] {
  const shown = told.length > 3 ? told.slice(0, 2) : told;
  const lines = shown.map(({ name, words }) =>
    withDetail(`${capital(name)} ${isAre(name)} ${state}`, words.detail),
  );
  const rest = told.length - shown.length;
  return rest > 0 ? [...lines, `${countWord(rest)} more are ${state}.`] : lines;
}

function laidUpSentences(analysis: Analysis, told: Told[]): string[] {
  const { laidUp } = analysis;
  if (laidUp === null) return [];
  const until = laidUp.until === null ? '' : ` until ${formatDay(laidUp.until)}`;
  const waiting = told.filter(({ words }) => words.mark === 'beforeItWakes');
  const names = listWords(
    waiting.map(({ name }) => name),
    5,
  );
  return [
    `Laid up since ${formatDay(laidUp.since)}${until}.`,
    ...(waiting.length > 0 ? [`Before it wakes: ${names}.`] : []),
  ];
}

function firstToRunOut(told: Told[]): string[] {
  const next = told.find(
    ({ words, result }) =>
      (words.mark === 'noDate' || words.mark === 'inLimits') && result.reasonCode !== 'doneOnce',
  );
  if (next === undefined) return [];
  const { name, words, result } = next;
  const said = words.mark === 'noDate' ? words.word : words.detail;
  if (said === '') return [];
  const has = readsAsPlural(name) ? 'have' : 'has';
  return result.dueDate === undefined && said.includes(' left')
    ? [`${capital(name)} ${has} ${said}.`]
    : [`What runs out first: ${name}, ${said}.`];
}

function atLeastSentences(told: Told[]): string[] {
  return told.map(({ name, words }) => {
    const least = words.word.replace(/^At/, 'at');
    return `${capital(name)}: ${least} since the last service; the history is incomplete.`;
  });
}

function notOnRecordSentences(told: Told[]): string[] {
  if (told.length === 0) return [];
  const names = listWords(
    told.map(({ name }) => name),
    4,
  );
  const only = told.length === 1 ? told[0]?.name : undefined;
  const are = only === undefined ? 'are' : isAre(only);
  return [
    `${capital(names)} ${are} not on record: say when ${are === 'is' ? 'it was' : 'they were'} last done.`,
  ];
}

/**
 * The first line of a car's page: what has run out, what soon will, what is not known, and what runs
 * out first; before all that whatever forbids driving it. It speaks of what is on record only.
 *
 * @param analysis the car's analysis
 * @param car names and units of the same car
 */
export function carAnswer(analysis: Analysis, car: CarFacts): string {
  return carSentences(analysis, car).join(' ');
}

/** The sentences of `carAnswer()`, the one that matters most first. */
export function carSentences(analysis: Analysis, car: CarFacts): string[] {
  const gone = goneSentence(analysis);
  const stop = stopSentences(analysis, car.unit);
  if (gone !== null && analysis.status === 'sold') return [gone, ...stop];
  const oil = oilStopSentence(analysis.oil);
  const urgent = isUrgent(oilStopOf(analysis.oil));
  const forbids = [...stop, ...(oil !== null && urgent ? [oil] : [])];
  const first = gone === null ? forbids : [...forbids, gone];
  const open = [...(oil !== null && !urgent ? [oil] : []), ...openSentences(analysis, car.unit)];
  if (analysis.items.length === 0)
    return [
      ...first,
      ...laidUpSentences(analysis, []),
      ...open,
      'Nothing is watched on this car yet.',
      'Add an item, such as engine oil, with its limits from the manual and the day it was last done.',
    ];
  const told = tell(analysis, car);
  const marked = (mark: ItemWords['mark']) => told.filter(({ words }) => words.mark === mark);
  return [
    ...first,
    ...laidUpSentences(analysis, told),
    ...open,
    ...sentences(marked('overdue'), 'overdue'),
    ...sentences(marked('dueSoon'), 'due soon'),
    ...atLeastSentences(marked('atLeast').slice(0, 2)),
    ...notOnRecordSentences(marked('notOnRecord')),
    ...firstToRunOut(told),
  ];
}
