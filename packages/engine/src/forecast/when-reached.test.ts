import { describe, expect, it } from 'vitest';
import { carCase, reading } from '../../test/car-case.ts';
import { forecastsOfCase } from '../../test/forecast-case.ts';
import { outing } from '../../test/planned-use.ts';
import type { PlannedUse } from '../history/case.ts';
import { HORIZON_DAYS } from './day-table.ts';
import { amountReached, bothReached, reachedOnDay } from './when-reached.ts';

const TODAY = '2026-06-15';
const read = [reading('2025-06-15', 0), reading('2026-01-01', 2000), reading(TODAY, 3650)];

function sessionsReached(amount: number, planned: PlannedUse[], attended: string | null = null) {
  const of = forecastsOfCase(carCase(TODAY, read, [], { planned }));
  return amountReached(of.reachOf({ measure: 'sessions', weights: {} }, attended), amount);
}

describe('reachedOnDay()', () => {
  it('is nothing before and everything from that day on', () => {
    const on = reachedOnDay(3);
    expect([2, 3, 4].map((day) => on.by(day))).toEqual([0, 1, 1]);
    expect(on.first(0.1)).toBe(3);
    expect(on.first(0.9)).toBe(3);
  });
});

describe('bothReached()', () => {
  it('waits for the later of the two, whichever it is', () => {
    const both = bothReached(reachedOnDay(-40), reachedOnDay(7));
    expect(both.first(0.5)).toBe(7);
    expect([6, 7].map((day) => both.by(day))).toEqual([0, 1]);
    expect(bothReached(reachedOnDay(7), reachedOnDay(-40)).first(0.5)).toBe(7);
  });

  it('is never where one of them is never', () => {
    const never = { by: () => 0, first: () => null };
    expect(bothReached(reachedOnDay(1), never).first(0.1)).toBeNull();
    expect(bothReached(never, reachedOnDay(1)).by(900)).toBe(0);
  });
});

describe('amountReached()', () => {
  it('finds the day of the event that brings it, to the day', () => {
    const event = outing('a', '2026-07-04', { end: '2026-07-05', sessions: 10 });
    const when = sessionsReached(8, [event]);
    expect(when.first(0.5)).toBe(20);
    expect(when.by(19)).toBeLessThan(0.2);
    expect(when.by(20)).toBeGreaterThan(0.6);
  });

  it('sees every day of every event, however many lie between today and the horizon', () => {
    const events = Array.from({ length: 9 }, (_, at) =>
      outing(`e${at}`, `2026-07-${String(2 + 3 * at).padStart(2, '0')}`, { sessions: 1 }),
    );
    const when = sessionsReached(3.5, events);
    const early = when.first(0.5) as number;
    expect(early).toBeGreaterThanOrEqual(20);
    for (let day = 1; day < 120; day += 1) {
      expect(when.by(day)).toBeGreaterThanOrEqual(when.by(day - 1));
      expect(day >= early).toBe(when.by(day) >= 0.5);
    }
  });

  it('looks at an event of no chance only where it is asked about', () => {
    const never = [outing('a', '2026-07-04', { sessions: 30, attend: 0 })];
    expect(sessionsReached(20, never).by(19)).toBeLessThan(0.1);
    expect(sessionsReached(20, never, 'a').first(0.5)).toBe(19);
  });

  it('has no day beyond three years, and says the same for any later horizon', () => {
    const when = sessionsReached(500, []);
    expect(when.first(0.1)).toBeNull();
    expect(when.by(HORIZON_DAYS + 400)).toBe(when.by(HORIZON_DAYS));
  });
});
