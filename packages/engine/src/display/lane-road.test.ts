import { expect, test } from 'vitest';
import { needOf } from '../../test/need-of.ts';
import type { CarReadiness, Need } from '../readiness/result.ts';
import { laneRoad, ROAD_WHY_MAX } from './lane-road.ts';

const road = (needs: Partial<Need>[], verdict: CarReadiness['verdict']): CarReadiness => {
  const all = needs.map(needOf);
  return { car: 'c', use: 'road', event: null, verdict, needs: all };
};

test('laneRoad() says nothing of a car that is not in use', () => {
  expect(laneRoad(null)).toBeNull();
});

test('laneRoad() counts the blocking needs that are not met and names the first', () => {
  const reason = 'It ran out on 2 May.';
  const needs: Partial<Need>[] = [
    { status: 'notMet', reason },
    { status: 'metAfterWork' },
    { status: 'met' },
    { status: 'unknown', weight: 'advice' },
  ];
  expect(laneRoad(road(needs, { word: 'canBeReady', by: '2026-06-20' }))).toEqual({
    word: 'canBeReady',
    by: '2026-06-20',
    why: `Brake fluid, flush: ${reason}`,
    needs: 2,
  });
  expect(laneRoad(road([{}], { word: 'ready', by: null }))).toEqual({
    word: 'ready',
    by: null,
    why: null,
    needs: 0,
  });
});

test('laneRoad() says a title once, and what is too long as the need and its word', () => {
  const unknown = { word: 'notOnRecord', by: null } as const;
  const why = (need: Partial<Need>, length = ROAD_WHY_MAX) =>
    laneRoad(road([{ status: 'unknown', ...need }], unknown), length)?.why;
  expect(why({ title: 'Coolant', reason: 'Coolant was never written down.' })).toBe(
    'Coolant was never written down.',
  );
  expect(why({ reason: 'r'.repeat(80) })).toBe('Brake fluid, flush: not on record.');
  expect(why({ reason: 'r'.repeat(80) }, 24)).toBe('Brake fluid, flush');
  const long = why({ title: '🛢'.repeat(200) }) ?? '';
  expect(Array.from(long)).toHaveLength(ROAD_WHY_MAX);
  expect(long).toMatch(/^🛢+…: not on record\.$/u);
});
