import { describe, expect, test } from 'vitest';
import type { CarReadiness, Need, Verdict } from '../readiness/result.ts';
import { type CarToAnswer, eventAnswer } from './event-answer.ts';

const asOf = '2026-06-08';
const SATURDAY = '2026-06-13';

const need = (title: string, more: Partial<Need> = {}): Need => ({
  id: `limit:${title}`,
  kind: 'limit',
  subject: title,
  weight: 'blocking',
  status: 'metAfterWork',
  title,
  margin: null,
  reason: '',
  evidence: [],
  remedy: null,
  accepted: null,
  mayAccept: true,
  ...more,
});

const toOrder = (day: string, feasible = true): Partial<Need> => ({
  remedy: {
    work: 'brakes',
    what: 'Fit new pads',
    latest: '2026-06-12',
    earliest: null,
    parts: { kind: 'orderBy', day, feasible },
    leadDays: 4,
    feasible,
    record: null,
  },
});

const car = (name: string, verdict: Verdict, needs: Need[] = []): CarToAnswer => {
  const readiness: CarReadiness = { car: name, use: 'circuit', event: 'e', verdict, needs };
  return { name, readiness };
};
const READY: Verdict = { word: 'ready', by: null };
const by = (day: string): Verdict => ({ word: 'canBeReady', by: day });
const say = (...cars: CarToAnswer[]) => eventAnswer(SATURDAY, cars, { asOf });

describe('eventAnswer()', () => {
  test('eventAnswer() says who can go, who can after work and which, and what is to be ordered', () => {
    const fluid = need('Brake fluid');
    const pads = need('Front pads', toOrder(asOf));
    expect(say(car('Ardvane', READY), car('Finch', by('2026-06-11'), [pads, fluid]))).toEqual([
      'Ready for Saturday, by the log: Ardvane.',
      'Can be ready by Thu 11: Finch (Front pads; Brake fluid).',
      'Order today: Front pads for Finch.',
    ]);
  });

  test('eventAnswer() never calls ready what is not on record or cannot be in time, and says why', () => {
    const late = need('Front pads', { status: 'notMet', ...toOrder('2026-06-01', false) });
    const unknown = need('Torque', { status: 'unknown' });
    expect(
      say(
        car('Ardvane', { word: 'notInTime', by: null }, [late, unknown]),
        car('Corrit', { word: 'notOnRecord', by: null }, [unknown, need('Brake fluid')]),
        { name: 'Finch', readiness: null },
      ),
    ).toEqual([
      'No car is ready for Saturday yet.',
      'Not in time: Ardvane (Front pads).',
      'Not on record: Corrit (Torque).',
      'Nothing can be said of Finch: its book cannot be read.',
      'Nothing must be ordered today.',
    ]);
  });

  test('eventAnswer() names by what somebody took something upon himself that a car is ready', () => {
    const accepted = { acceptanceId: 'a', by: 'Oda', on: asOf, because: 'seen good' };
    const taken = need('Tyre age', { status: 'notMet', accepted });
    expect(say(car('Ardvane', READY, [taken]))[0]).toBe(
      'Ready for Saturday, by the log: Ardvane (Tyre age: taken on by Oda).',
    );
  });

  test('eventAnswer() tells the next day for orders, not those of advice, and none twice', () => {
    const soon = need('Front pads', toOrder('2026-06-10'));
    const later = need('Brake fluid', toOrder('2026-06-11'));
    const advice = need('Wiper blades', { weight: 'advice', ...toOrder(asOf) });
    expect(say(car('Finch', by('2026-06-12'), [later, soon, advice])).slice(-2)).toEqual([
      'Nothing must be ordered today.',
      'Order by Wed 10 June: Front pads for Finch.',
    ]);
  });

  test('eventAnswer() counts what goes beyond a handful of needs', () => {
    const needs = ['A', 'B', 'C', 'D'].map((title) => need(title));
    expect(say(car('Finch', by('2026-06-11'), needs))[1]).toBe(
      'Can be ready by Thu 11: Finch (A; B; 2 more).',
    );
  });

  test('eventAnswer() says that nobody can tell where no car is named', () => {
    expect(say()).toEqual([
      'No car is named for it yet, so nobody can say which of them could go.',
    ]);
    expect(say(car('Finch', { word: 'notOnRecord', by: null }))[0]).toBe(
      'Not ready for Saturday yet.',
    );
  });
});
