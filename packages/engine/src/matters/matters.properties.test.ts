import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arbitraryLog } from '../../test/arbitrary-log.ts';
import { carBook, type Line } from '../../test/car-book.ts';
import { carSentences, laneOf, urgencyOf, whatChanged } from '../display/index.ts';
import { analyseBook, type Book } from '../index.ts';
import { stopOf } from './index.ts';

const RUNS = { numRuns: 80 };

function shuffled(book: Book, keys: readonly number[]): Book {
  const entries = book.entries
    .map((entry, index) => ({ entry, key: keys[index % keys.length] ?? 0, index }))
    .sort((a, b) => a.key - b.key || b.index - a.index)
    .map(({ entry }) => entry);
  return { ...book, entries };
}

/** Every number anywhere inside. */
function numbers(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbers);
}

describe('analyseBook() on logs of any kind', () => {
  test('analyseBook() gives the same answer in whatever order the entries stand', () => {
    const keys = fc.array(fc.integer(), { minLength: 1, maxLength: 25 });
    fc.assert(
      fc.property(arbitraryLog, keys, ({ lines, ...more }, order) => {
        const book = carBook(lines, more);
        expect(analyseBook(shuffled(book, order))).toEqual(analyseBook(book));
      }),
      RUNS,
    );
  });

  test('analyseBook() holds no number that is none, and no word of it says so', () => {
    fc.assert(
      fc.property(arbitraryLog, ({ lines, ...more }) => {
        const book = carBook(lines, more);
        const analysis = analyseBook(book);
        expect(numbers([analysis, urgencyOf(analysis), laneOf(book, analysis, null)])).toSatisfy(
          (all: number[]) => all.every(Number.isFinite),
        );
        const items = book.items.map(({ id, ...item }) => ({ id, item }));
        const units = { unit: 'km', distanceUnit: 'km', volumeUnit: 'l' } as const;
        const facts = { ...units, drySump: false, items };
        const nothing = analyseBook(carBook([], more));
        const said = [...carSentences(analysis, facts), ...whatChanged(nothing, analysis, facts)];
        expect(said.join(' ')).not.toMatch(/NaN|null|undefined|Infinity/);
      }),
      RUNS,
    );
  });

  test('stopOf() says do not drive whatever else is in the log', () => {
    const finding: Line = {
      id: 'brake',
      kind: 'finding',
      on: '2026-06-12',
      what: 'Hose cracked',
      severity: 'doNotDrive',
    };
    fc.assert(
      fc.property(arbitraryLog, fc.nat(25), ({ lines, ...more }, at) => {
        const book = carBook([...lines.slice(0, at), finding, ...lines.slice(at)], more);
        const analysis = analyseBook(book);
        expect(stopOf(analysis.status, analysis.matters)).toBe('doNotDrive');
        expect(laneOf(book, analysis, null).stop).toBe('doNotDrive');
      }),
      RUNS,
    );
  });

  test('analyseBook() ignores what was removed', () => {
    fc.assert(
      fc.property(arbitraryLog, ({ lines, ...more }) => {
        const book = carBook(lines, more);
        const kept = book.entries.filter(({ removed }) => !removed);
        const { matters, ...rest } = analyseBook(book);
        const without = analyseBook({ ...book, entries: kept });
        expect({ ...without, matters: null }).toEqual({ ...rest, matters: null });
        // only what a removed entry had resolved is open again
        expect(matters.findings.length).toBeGreaterThanOrEqual(without.matters.findings.length);
        expect(matters.incidents).toEqual(without.matters.incidents);
        expect(matters.wheels).toEqual(without.matters.wheels);
        expect(matters.wakeSteps).toEqual(without.matters.wakeSteps);
      }),
      RUNS,
    );
  });
});
