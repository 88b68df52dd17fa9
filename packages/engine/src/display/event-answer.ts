import type { CarReadiness, Need } from '../readiness/result.ts';
import { type Spoken, weekdayAhead } from './due-words.ts';
import { listWords } from './grammar.ts';
import { nearDay, spokenDay } from './verdict-words.ts';
import { toOrder } from './work-words.ts';

/** A car that goes, with what the log says of it; null where its book cannot be read. */
export type CarToAnswer = { name: string; readiness: CarReadiness | null };

/** Cars and needs told one by one; what goes beyond is counted. */
const CARS_NAMED = 6;
const NEEDS_NAMED = 3;

/**
 * The first lines of an event's page: which cars can go, which not and why, and what must be ordered.
 *
 * @param start first day of the event, civil date
 * @param spoken `asOf`: today
 * @returns sentences, the first always there
 * @example eventAnswer('2026-06-13', cars, { asOf: '2026-06-08' })
 * // ["Ready for Saturday, by the log: Ardvane One.", "Can be ready by Thu 11: Finch (Front pads; Brake fluid).",
 * //  "Order today: Front pads for Finch."]
 */
export function eventAnswer(
  start: string,
  cars: readonly CarToAnswer[],
  spoken: Spoken & { asOf: string },
): string[] {
  if (cars.length === 0)
    return ['No car is named for it yet, so nobody can say which of them could go.'];
  return [
    readySentence(start, cars, spoken),
    ...afterWork(cars, spoken),
    ...withReasons('Not in time', cars, 'notInTime'),
    ...withReasons('Not on record', cars, 'notOnRecord'),
    ...unreadable(cars),
    ...orderSentences(cars, spoken),
  ];
}

const wordOf = ({ readiness }: CarToAnswer) => readiness?.verdict.word ?? null;

function readySentence(start: string, cars: readonly CarToAnswer[], spoken: Spoken): string {
  const day = spokenDay(start, spoken);
  const ready = cars.filter((car) => wordOf(car) === 'ready').map(withAccepted);
  if (ready.length > 0) return `Ready for ${day}, by the log: ${listWords(ready, CARS_NAMED)}.`;
  return cars.length === 1 ? `Not ready for ${day} yet.` : `No car is ready for ${day} yet.`;
}

/** A car that is ready only because somebody took something upon himself is never told without that. */
function withAccepted({ name, readiness }: CarToAnswer): string {
  const taken = (readiness?.needs ?? []).filter(({ accepted }) => accepted !== null);
  if (taken.length === 0) return name;
  const by = [...new Set(taken.flatMap(({ accepted }) => (accepted ? [accepted.by] : [])))];
  return `${name} (${titles(taken)}: taken on by ${listWords(by)})`;
}

/** Cars that can be ready, by the day on which they can. */
function afterWork(cars: readonly CarToAnswer[], spoken: Spoken): string[] {
  const days = new Map<string, CarToAnswer[]>();
  for (const car of cars) {
    const by = car.readiness?.verdict.by ?? null;
    if (by !== null) days.set(by, [...(days.get(by) ?? []), car]);
  }
  return [...days]
    .sort(([a], [b]) => a.localeCompare(b))
    .map(
      ([by, those]) =>
        `Can be ready by ${nearDay(by, spoken)}: ${listWords(those.map(withNeeds), CARS_NAMED)}.`,
    );
}

function withReasons(
  words: string,
  cars: readonly CarToAnswer[],
  word: 'notInTime' | 'notOnRecord',
): string[] {
  const those = cars.filter((car) => wordOf(car) === word).map(withNeeds);
  return those.length === 0 ? [] : [`${words}: ${listWords(those, CARS_NAMED)}.`];
}

/** What holds a car back: of what decides its verdict. */
export function holdsBack(readiness: CarReadiness): Need[] {
  const open = readiness.needs.filter(
    ({ weight, status, accepted }) =>
      weight === 'blocking' && status !== 'met' && accepted === null,
  );
  const worst = open.filter(({ status }) => status === WORST[readiness.verdict.word]);
  return worst.length > 0 ? worst : open;
}

const WORST = {
  ready: 'met',
  canBeReady: 'metAfterWork',
  notInTime: 'notMet',
  notOnRecord: 'unknown',
} as const;

function withNeeds({ name, readiness }: CarToAnswer): string {
  const needs = readiness ? holdsBack(readiness) : [];
  return needs.length === 0 ? name : `${name} (${titles(needs)})`;
}

/** Titles hold commas of their own. */
function titles(needs: readonly Need[]): string {
  const all = [...new Set(needs.map(({ title }) => title))];
  const named = all.length > NEEDS_NAMED ? all.slice(0, NEEDS_NAMED - 1) : all;
  const rest = all.length - named.length;
  return [...named, ...(rest > 0 ? [`${rest} more`] : [])].join('; ');
}

function unreadable(cars: readonly CarToAnswer[]): string[] {
  const names = cars.filter(({ readiness }) => readiness === null).map(({ name }) => name);
  if (names.length === 0) return [];
  const whose = names.length === 1 ? 'its book' : 'their books';
  return [`Nothing can be said of ${listWords(names, CARS_NAMED)}: ${whose} cannot be read.`];
}

/** What is to be ordered today, and the first day by which more is. */
function orderSentences(cars: readonly CarToAnswer[], spoken: Spoken & { asOf: string }): string[] {
  const parts = cars.flatMap(({ name, readiness }) =>
    (readiness?.needs ?? []).flatMap(({ title, remedy, weight, accepted }) => {
      const asked = weight === 'blocking' && accepted === null;
      const when = remedy && asked ? toOrder(remedy, spoken.asOf) : null;
      const day = remedy?.parts?.kind === 'orderBy' ? remedy.parts.day : '';
      return when === null ? [] : [{ what: `${title} for ${name}`, when, day }];
    }),
  );
  const today = parts.filter(({ when }) => when === 'today').map(({ what }) => what);
  const later = parts
    .filter(({ when }) => when === 'later')
    .sort((a, b) => a.day.localeCompare(b.day));
  const [next] = later;
  const those = later.filter(({ day }) => day === next?.day).map(({ what }) => what);
  return [
    today.length > 0
      ? `Order today: ${listWords(today, CARS_NAMED)}.`
      : 'Nothing must be ordered today.',
    ...(next
      ? [`Order by ${weekdayAhead(next.day, spoken)}: ${listWords(those, CARS_NAMED)}.`]
      : []),
  ];
}
