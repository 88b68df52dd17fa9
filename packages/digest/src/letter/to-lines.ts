import { listWords, urgentRank } from '@quartermark/engine/display';
import type { Fact } from '../facts/fact.ts';
import type { LetterLine } from './letter.ts';
import { furtherLinks, linkOfFacts } from './line-links.ts';
import { type Told, type Worded, wordsOf } from './line-words.ts';

/** A line with what its place and the subject need. */
export type RankedLine = { line: LetterLine; subject: string };

type Placed = { told: Told; words: Worded; rank: number; day: string };

/**
 * What is told, as lines, the most urgent first: what forbids driving, what is not known, events, what became
 * overdue, the oil, what falls due, what is told again. Items of a car that say the same make one line.
 */
export function toLines(told: readonly Told[], today: string): RankedLine[] {
  const placed = told
    .map((one) => ({
      told: one,
      words: wordsOf(one, today),
      rank: rankOf(one),
      day: dayOf(one.fact),
    }))
    .sort(byPlace);
  const groups = new Map<string, [Placed, ...Placed[]]>();
  for (const one of placed) {
    const key = keyOf(one);
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return [...groups.values()].map((group) => lineOf(group, today));
}

function lineOf(group: [Placed, ...Placed[]], today: string): RankedLine {
  const [{ told, words }] = group;
  const names = group.flatMap((one) => (one.words.name === null ? [] : [one.words.name]));
  const facts = group.map((one) => one.told.fact);
  const what = listWords(names);
  const after = [what, words.tail].filter((part) => part !== '').join(', ');
  const note = words.note === undefined ? '' : ` (${words.note})`;
  const line = {
    mark: words.mark,
    word: words.word,
    text: `${words.about}${after === '' ? '' : `: ${after}`}${note}`,
    link: linkOfFacts(facts),
    more: furtherLinks(facts, today),
    car: told.fact.car,
    facts: facts.map(({ id }) => id),
    why: told.why,
  };
  const brief = what === '' ? words.brief : `${what} ${words.brief}`;
  return { line, subject: `${words.about}: ${brief}` };
}

function keyOf({ told: { fact }, words }: Placed): string {
  if (words.name === null) return fact.id;
  return JSON.stringify([fact.car, fact.kind, words.word, words.tail, words.note]);
}

function rankOf({ fact, why }: Told): number {
  if (fact.kind === 'urgent') return 0;
  if (fact.kind === 'notWorkedOut') return 1;
  if (why === 'again') return 8;
  // that one became better can wait
  if (fact.kind === 'verdict') return why === 'changed' ? 7 : 2;
  return { overdue: 3, oilNotice: 4, missedLook: 5, dueSoon: 6 }[fact.kind];
}

const stopOf = (fact: Fact) => (fact.kind === 'urgent' ? urgentRank(fact.urgent) : 0);

const LATEST = '9999-12-31';

/** By what facts of the same rank are put in order. */
function dayOf(fact: Fact): string {
  switch (fact.kind) {
    case 'urgent':
      return fact.urgent.since ?? LATEST;
    case 'notWorkedOut':
    case 'overdue':
    case 'oilNotice':
      return fact.since ?? LATEST;
    case 'verdict':
      return fact.event.start;
    case 'missedLook':
      return fact.looked?.on ?? '';
    case 'dueSoon':
      return fact.line.dates.early ?? fact.line.day ?? LATEST;
  }
}

function byPlace(a: Placed, b: Placed): number {
  return (
    a.rank - b.rank ||
    stopOf(a.told.fact) - stopOf(b.told.fact) ||
    // within an event the car that stands worst comes first
    (a.rank === 2 ? compare(a.day, b.day) || b.told.fact.grade - a.told.fact.grade : 0) ||
    compare(a.day, b.day) ||
    compare(a.told.fact.carName, b.told.fact.carName) ||
    compare(a.words.name ?? '', b.words.name ?? '') ||
    compare(a.told.fact.id, b.told.fact.id)
  );
}

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
