import type { Fact } from '../facts/fact.ts';
import type { Letter } from './letter.ts';
import type { Told } from './line-words.ts';
import { NAME_MOST, plain } from './plain.ts';
import { headingOf, restOf, standingOf, subjectOf } from './round-words.ts';
import { type DigestSettings, isLetterDay, isPaused, isThursday } from './settings.ts';
import { type RankedLine, toLines } from './to-lines.ts';
import { isBeforeWeekend, remember, type Said, whyTell } from './to-tell.ts';

/** What one letter is made of. */
export type Tonight = {
  /** civil date in the garage's zone */
  today: string;
  /** of all cars of the garage, in any order */
  facts: readonly Fact[];
  /** `said` of the last letter to this member; empty before the first */
  last: readonly Said[];
  settings: DigestSettings;
  garage: { name: string; cars: readonly string[] };
  /** cars the member may see */
  member: { cars: 'all' | readonly string[] };
};

/**
 * The letter of one night to one member; null where none is to be sent, and then nothing counts as said.
 *
 * Facts that are new or worse come at once, others again after a week, what was put off after its day. There
 * are at most 8 lines for up to 5 cars, rising to 12 for 40: what finds no room is counted, and comes next time.
 */
export function compose(tonight: Tonight): Letter | null {
  const { today, last, settings, garage } = tonight;
  const mine = carsOf(tonight);
  const facts = [...new Map(tonight.facts.map((fact) => [fact.id, fact])).values()].filter(
    ({ car }) => mine.has(car),
  );
  const told = toldTonight(tonight, facts);
  if (told === null) return null;
  if (settings.onlyIfNew && told.every(({ why }) => why === 'again')) return null;
  const { shown, rest } = fit(toLines(told, today), mostLines(mine.size));
  const shownIds = new Set(shown.flatMap(({ line }) => line.facts));
  const said = told.flatMap(({ fact: { id, grade, state } }) =>
    shownIds.has(id) ? [{ fact: id, on: today, grade, state }] : [],
  );
  return {
    date: today,
    subject: subjectOf(shown, told.length, plain(garage.name, NAME_MOST)),
    heading: headingOf(plain(garage.name, NAME_MOST), today),
    lines: shown.map(({ line }) => line),
    rest: restOf(rest.reduce((sum, { line }) => sum + line.facts.length, 0)),
    standing: shown.length === 0 ? standingOf(facts, mine.size) : null,
    said: remember(last, said, facts, today),
  };
}

/**
 * So many lines at most, the one that counts the rest among them: 8 for up to 5 cars, 12 from 40 on.
 *
 * @example mostLines(40) // 12
 */
export function mostLines(cars: number): number {
  const share = (Math.min(40, Math.max(5, cars)) - 5) / 35;
  return 8 + Math.floor(4 * share);
}

function carsOf({ garage, member }: Tonight): Set<string> {
  if (member.cars === 'all') return new Set(garage.cars);
  const may = new Set(member.cars);
  return new Set(garage.cars.filter((car) => may.has(car)));
}

/** What there is to tell; null: no letter tonight. Outside of the rhythm a Thursday tells of its weekend alone. */
function toldTonight({ today, last, settings }: Tonight, facts: readonly Fact[]): Told[] | null {
  if (isPaused(settings.pausedUntil, today)) return null;
  const weekend = settings.beforeEvents && isThursday(today);
  const going = new Set(
    facts.filter((fact) => weekend && isBeforeWeekend(fact, today)).map(({ car }) => car),
  );
  const regular = isLetterDay(settings, today);
  if (!regular && going.size === 0) return null;
  const saidOf = new Map(last.map((said) => [said.fact, said]));
  return facts.flatMap((fact): Told[] => {
    if (!regular && !going.has(fact.car)) return [];
    const said = saidOf.get(fact.id);
    const why = weekend && isBeforeWeekend(fact, today) ? 'weekend' : whyTell(fact, said, today);
    return why === null ? [] : [{ fact, why, said }];
  });
}

function fit(lines: RankedLine[], most: number): { shown: RankedLine[]; rest: RankedLine[] } {
  if (lines.length <= most) return { shown: lines, rest: [] };
  return { shown: lines.slice(0, most - 1), rest: lines.slice(most - 1) };
}
