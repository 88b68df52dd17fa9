import { type Analysis, analyseBook, isAmountLimit, type LimitResult } from '@quartermark/engine';
import { daysBetween } from '@quartermark/engine/calendar';
import { itemWords, whySentence } from '@quartermark/engine/display';
import type { Book } from '@quartermark/engine/log';
import { KM_PER_UNIT, LITRES_PER_UNIT } from '@quartermark/engine/units';
import { describe, expect, test } from 'vitest';
import expected from '../expected.json' with { type: 'json' };
import { bookOf } from './book-of.ts';
import { demoGarage } from './demo-garage.ts';

/** Every member that a fact may state; a fact that states another one is refused below. */
type Expect = {
  state?: string;
  reasonCode?: string;
  measure?: string;
  severe?: boolean;
  unit?: string;
  limit?: number;
  amount?: number;
  remaining?: number;
  known?: boolean;
  reached?: string;
  due?: string;
  elapsedDays?: number;
  remainingDays?: number;
  severeActive?: boolean;
  severeAmount?: number;
  severeThreshold?: number;
  severeSince?: string;
  reading?: number;
  onOffset?: number;
  level?: number;
  added?: number;
  overdueItems?: number;
  laidUpSince?: string;
  flag?: string;
  amended?: boolean;
  note?: string;
  removed?: boolean;
};
type Fact = Exclude<(typeof expected.facts)[number], { piece: string }>;
type Found = Record<string, unknown>;

const { asOf } = expected;
const garage = demoGarage(asOf);
const ofCars = expected.facts.filter((fact): fact is Fact => !('piece' in fact));
const books = new Map<string, Book>(
  garage.cars.map((car): [string, Book] => [car.key, bookOf(garage, car, asOf)]),
);
const analyses = new Map<string, Analysis>(
  [...books].map(([key, book]): [string, Analysis] => [key, analyseBook(book)]),
);

function of<T>(map: ReadonlyMap<string, T>, key: string): T {
  const found = map.get(key);
  if (found === undefined) throw new RangeError(`no car is called ${key}`);
  return found;
}

const inUnit = (value: number, unit: string | undefined) =>
  unit === 'mi' ? value / KM_PER_UNIT.mi : value;

function limitFound(limit: LimitResult, unit: string | undefined): Found {
  if (!isAmountLimit(limit))
    return {
      limit: limit.limit,
      due: limit.dueDate,
      elapsedDays: limit.elapsedDays,
      remainingDays: limit.remainingDays,
    };
  return {
    limit: inUnit(limit.limit, unit),
    amount: inUnit(limit.accrued, unit),
    remaining: inUnit(limit.remaining, unit),
    known: limit.known,
    reached: limit.reachedOn,
  };
}

function itemFound(fact: Fact, wanted: Expect): Found {
  const book = of(books, fact.car);
  const item = book.items.find(({ name }) => name === fact.item);
  const result = of(analyses, fact.car).items.find(({ id }) => id === item?.id);
  if (result === undefined) throw new RangeError(`${fact.car} has no item "${fact.item}"`);
  const { state, reasonCode, severe, limits } = result;
  const limit = limits.find(
    (each) => each.measure === wanted.measure && each.severe === (wanted.severe ?? false),
  );
  return {
    state,
    reasonCode,
    severeActive: severe?.active,
    severeAmount: severe?.severeAmount,
    severeThreshold: severe?.threshold,
    severeSince: severe?.since,
    measure: limit?.measure,
    severe: limit?.severe,
    ...(limit === undefined ? {} : limitFound(limit, wanted.unit)),
  };
}

function historyFound(fact: Fact): Found {
  const [id] = fact.evidence;
  const entry = of(books, fact.car).entries.find((each) => each.id === id);
  const flags = of(analyses, fact.car).flags.filter((each) => each.entry === id);
  return {
    flag: flags[0]?.code,
    amended: entry?.removed === false && entry.revision > 1,
    removed: entry?.removed,
    note: entry?.note,
  };
}

function carFound(fact: Fact, wanted: Expect): Found {
  const { odometer, lastLevel, laidUp, items } = of(analyses, fact.car);
  const { unit } = wanted;
  switch (fact.item) {
    case 'odometer':
      return {
        reading: odometer && inUnit(odometer.readingKm, unit),
        onOffset: odometer && daysBetween(asOf, odometer.on),
      };
    case 'oil level':
      return {
        level: lastLevel?.fraction,
        onOffset: lastLevel && daysBetween(asOf, lastLevel.on),
        added: lastLevel && lastLevel.addedSinceL / LITRES_PER_UNIT[unit === 'usQt' ? 'usQt' : 'l'],
      };
    case 'lay-up':
      return { laidUpSince: laidUp?.since };
    case 'overdue items':
      return { overdueItems: items.filter(({ state }) => state === 'overdue').length };
    case 'history':
      return historyFound(fact);
    default:
      return itemFound(fact, wanted);
  }
}

describe('expected.json', () => {
  test('expected.json states at least 80 facts, over all eight cars, each under its own name', () => {
    const { facts } = expected;
    expect(facts.length).toBeGreaterThanOrEqual(80);
    expect(new Set(facts.map(({ id }) => id)).size).toBe(facts.length);
    expect(new Set(ofCars.map(({ car }) => car))).toEqual(new Set(books.keys()));
  });

  test.each(ofCars)('analyseBook() agrees with the hand on $id', (fact) => {
    const wanted: Expect = fact.expect;
    const found = carFound(fact, wanted);
    for (const [member, value] of Object.entries(wanted)) {
      if (member === 'unit') continue;
      if (typeof value === 'number') expect(found[member], member).toBeCloseTo(value, 2);
      else expect(found[member], member).toBe(value);
    }
  });

  test.each(ofCars)('demoGarage() holds each entry that $id rests on', (fact) => {
    const ids = of(books, fact.car).entries.map(({ id }) => id);
    for (const id of fact.evidence) expect(ids).toContain(id);
  });

  test.each(
    ofCars.filter(({ expect: { measure, state } }: { expect: Expect }) => measure ?? state),
  )('whySentence() and itemWords() say the words of $id', (fact) => {
    const book = of(books, fact.car);
    const { laidUp, items } = of(analyses, fact.car);
    const item = book.items.find(({ name }) => name === fact.item);
    const result = items.find(({ id }) => id === item?.id);
    if (result === undefined) throw new RangeError(`${fact.car} has no item "${fact.item}"`);
    const on = { unit: book.car.unit, laidUp: laidUp !== null, asOf: book.asOf };
    const { word, detail } = itemWords(result, item, on);
    const about = { service: result.service, item, unit: book.car.unit };
    const why = result.limits.map((limit) => whySentence(limit, about));
    expect([word, detail, ...why].join(' ')).toContain(fact.text);
  });

  test('analyseBook() finds nothing odd in the books but what was put there', () => {
    const odd = [...analyses].flatMap(([key, { flags }]) =>
      flags.map(({ code, entry }) => `${key} ${code} ${entry?.slice(-4)}`),
    );
    expect(odd).toEqual([
      'autocross readingRejected 9005',
      'used exchangeWithoutOldValue 9010',
      'trip looksTheSame 9022',
    ]);
  });
});
