import { expect, test } from 'vitest';
import { carBook, km, type Line } from '../../test/car-book.ts';
import { needOf } from '../../test/need-of.ts';
import { analyseBook } from '../readers/index.ts';
import type { CarReadiness, Need, Verdict } from '../readiness/result.ts';
import { roadSentence } from './road-sentence.ts';

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

test('roadSentence() says the verdict, and what holds it back', () => {
  expect(roadSentence(road(READY), fine, [])).toBe('Ready for the road, by the log.');
  const can = road({ word: 'canBeReady', by: '2026-06-18' }, [fluid]);
  expect(roadSentence(can, fine, [])).toBe('Can be ready by Thu 18: Brake fluid.');
  const today = road({ word: 'canBeReady', by: '2026-06-15' }, [fluid]);
  expect(roadSentence(today, fine, [])).toBe('Can be ready today: Brake fluid.');
  expect(roadSentence(road(UNKNOWN, [odometer, fluid]), fine, [])).toBe(
    'Not on record whether it is ready for the road: Odometer.',
  );
  const late = road({ word: 'notInTime', by: null }, [{ status: 'notMet', title: 'Oil drained' }]);
  expect(roadSentence(late, fine, [])).toBe('Not ready for the road: Oil drained.');
});

test('roadSentence() does not name again what the car’s other sentences name', () => {
  const can = road({ word: 'canBeReady', by: '2026-06-18' }, [fluid]);
  expect(roadSentence(can, fine, ['Brake fluid is overdue: 24 months passed.'])).toBe(
    'Can be ready by Thu 18.',
  );
});

test('roadSentence() counts what goes beyond three', () => {
  const many = ['A', 'B', 'C', 'D'].map((title) => ({ ...odometer, title }));
  expect(roadSentence(road(UNKNOWN, many), fine, [])).toMatch(/: A; B; 2 more\.$/);
});

test('roadSentence() leaves the word to what forbids driving, and to where the car is', () => {
  const of = (...lines: Line[]) => roadSentence(road(READY), analyseBook(carBook(lines)), []);
  expect(of()).not.toBeNull();
  expect(of({ kind: 'incident', on: '2026-06-14', what: 'softPedal' })).toBeNull();
  expect(of({ kind: 'wheels', on: '2026-06-14', change: 'off' })).toBeNull();
  const none = { how: 'none' } as const;
  expect(of({ kind: 'oilCheck', on: '2026-06-14', odometer: km(40_000), level: none })).toBeNull();
  expect(of({ kind: 'handover', on: '2026-06-14', what: 'lent' })).toBeNull();
  expect(roadSentence(null, fine, [])).toBeNull();
});
