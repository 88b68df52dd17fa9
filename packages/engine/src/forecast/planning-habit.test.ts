import { describe, expect, it } from 'vitest';
import { carCase, use } from '../../test/car-case.ts';
import { outing, plannedOn } from '../../test/planned-use.ts';
import { notYetPlanned, planningHabit } from './planning-habit.ts';

const circuit = (day: string) => use(day, 'circuit', { sessions: 4 });

describe('planningHabit()', () => {
  it('is the prior of somebody who never plans, where nothing was', () => {
    expect(planningHabit(carCase('2026-06-01', []))).toEqual({ share: 0.2, leadDays: 60 });
  });

  it('is that of somebody who plans, where anything is on the calendar', () => {
    const car = carCase('2026-06-01', [], [], { planned: [outing('next', '2026-07-01')] });
    expect(planningHabit(car)).toEqual({ share: 0.7, leadDays: 60 });
  });

  // (2 + 2 x 0.7)/(3 + 2) of three occasions; (30 + 50 + 2 x 60)/(2 + 2) days
  it('counts the occasions and the days they were planned ahead', () => {
    const car = carCase('2026-06-01', [
      ...plannedOn([circuit('2026-05-01')], '2026-04-01'),
      ...plannedOn([circuit('2026-05-21')], '2026-04-01'),
      circuit('2026-05-09'),
    ]);
    expect(planningHabit(car)).toEqual({ share: 3.4 / 5, leadDays: 50 });
  });

  it('takes an occasion put down afterwards as planned on its day', () => {
    const car = carCase('2026-06-01', plannedOn([circuit('2026-05-01')], '2026-05-04'));
    expect(planningHabit(car).leadDays).toBe(120 / 3);
  });

  it('leaves out everyday use and what is dated ahead', () => {
    const car = carCase('2026-06-01', [
      use('2026-05-01', 'road', { km: 40 }),
      circuit('2026-05-02'),
      ...plannedOn([circuit('2026-06-02')], '2026-05-01'),
    ]);
    expect(planningHabit(car)).toEqual({ share: 0.4 / 3, leadDays: 60 });
  });
});

describe('notYetPlanned()', () => {
  const habit = { share: 0.8, leadDays: 50 };

  // half of the share is taken off today, e times less of it after the lead
  it('grows from half of the habit to everything', () => {
    expect(notYetPlanned(habit, 0)).toBeCloseTo(0.6, 12);
    expect(notYetPlanned(habit, 50)).toBeCloseTo(1 - 0.4 / Math.E, 12);
    expect(notYetPlanned(habit, 1000)).toBeCloseTo(1, 8);
  });
});
