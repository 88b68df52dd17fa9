import { expect, test } from 'vitest';
import { carBook, km, type Line } from '../../test/car-book.ts';
import { needOf } from '../../test/need-of.ts';
import { analyseBook } from '../readers/index.ts';
import type { CarReadiness, Need, Verdict } from '../readiness/result.ts';
import { withRoad } from './road-sentence.ts';

const road = (verdict: Verdict, needs: Partial<Need>[] = []): CarReadiness => ({
  car: 'car',
  use: 'road',
  event: null,
  verdict,
  needs: needs.map(needOf),
});
const READY: Verdict = { word: 'ready', by: null };
const UNKNOWN: Verdict = { word: 'notOnRecord', by: null };
const fine = analyseBook(carBook([]));
const fluid: Partial<Need> = { status: 'metAfterWork', title: 'Brake fluid' };
const odometer: Partial<Need> = { status: 'unknown', kind: 'odometer', title: 'Odometer' };

test('withRoad() says the verdict, and what holds it back', () => {
  expect(withRoad(road(READY), fine, [])).toEqual(['Ready for the road, by the log.']);
  const can = road({ word: 'canBeReady', by: '2026-06-18' }, [fluid]);
  expect(withRoad(can, fine, [])).toEqual(['Can be ready by Thu 18: Brake fluid.']);
  const today = road({ word: 'canBeReady', by: '2026-06-15' }, [fluid]);
  expect(withRoad(today, fine, [])).toEqual(['Can be ready today: Brake fluid.']);
  expect(withRoad(road(UNKNOWN, [odometer, fluid]), fine, ['Belts are due soon.'])).toEqual([
    'Not on record whether it is ready for the road: Odometer.',
    'Belts are due soon.',
  ]);
  const late = road({ word: 'notInTime', by: null }, [{ status: 'notMet', title: 'Oil drained' }]);
  expect(withRoad(late, fine, [])).toEqual(['Not ready for the road: Oil drained.']);
});

const OVERDUE = 'Brake fluid is overdue: 24 months passed.';
const SOON = 'Belts are due soon.';

test('withRoad() draws the sentence that says why to the verdict, and names nothing twice', () => {
  const can = road({ word: 'canBeReady', by: '2026-06-18' }, [fluid]);
  expect(withRoad(can, fine, [SOON, OVERDUE])).toEqual([
    `Can be ready by Thu 18. ${OVERDUE}`,
    SOON,
  ]);
  const two = road({ word: 'canBeReady', by: '2026-06-18' }, [fluid, { ...fluid, title: 'Tyres' }]);
  expect(withRoad(two, fine, [OVERDUE])).toEqual([`Can be ready by Thu 18: Tyres. ${OVERDUE}`]);
  expect(withRoad(road(READY), fine, [SOON, OVERDUE])).toEqual([
    `Ready for the road, by the log. ${SOON}`,
    OVERDUE,
  ]);
});

test('withRoad() counts what goes beyond three', () => {
  const many = ['Aaa', 'Bbb', 'Ccc', 'Ddd'].map((title) => ({ ...odometer, title }));
  expect(withRoad(road(UNKNOWN, many), fine, [])[0]).toMatch(/: Aaa; Bbb; 2 more\.$/);
});

test('withRoad() leaves the word to what forbids driving, and to where the car is', () => {
  const of = (...lines: Line[]) => withRoad(road(READY), analyseBook(carBook(lines)), [SOON])[0];
  expect(of()).toMatch(/^Ready/);
  expect(of({ kind: 'incident', on: '2026-06-14', what: 'softPedal' })).toBe(SOON);
  expect(of({ kind: 'wheels', on: '2026-06-14', change: 'off' })).toBe(SOON);
  const none = { how: 'none' } as const;
  expect(of({ kind: 'oilCheck', on: '2026-06-14', odometer: km(40_000), level: none })).toBe(SOON);
  expect(of({ kind: 'handover', on: '2026-06-14', what: 'lent' })).toBe(SOON);
  expect(withRoad(null, fine, [SOON])).toEqual([SOON]);
});
