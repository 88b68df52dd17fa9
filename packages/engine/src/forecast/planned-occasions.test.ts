import { describe, expect, it } from 'vitest';
import { carCase, use } from '../../test/car-case.ts';
import { outing } from '../../test/planned-use.ts';
import { buildHistory } from '../history/build-history.ts';
import type { CaseEntry, PlannedUse } from '../history/case.ts';
import { plannedOccasions } from './planned-occasions.ts';

const TODAY = '2026-06-15';

function occasions(planned: PlannedUse[], entries: CaseEntry[] = [], hasHourMeter = false) {
  const car = carCase(TODAY, entries, [], { planned });
  const { contributions, asOfDay } = buildHistory(car);
  return plannedOccasions(car, contributions, asOfDay, hasHourMeter);
}

/** Days ahead of the only event there is; none where it does not count. */
const daysAhead = (event: PlannedUse, ...entries: CaseEntry[]) =>
  occasions([event], entries)[0]?.daysAhead ?? [];

const circuit = (day: string) => use(day, 'circuit', { sessions: 4 });

describe('plannedOccasions()', () => {
  it('counts the days ahead of one to come', () => {
    expect(daysAhead(outing('a', '2026-06-20', { end: '2026-06-21' }))).toEqual([5, 6]);
  });

  it('counts one of today as of today until its use is on record', () => {
    expect(daysAhead(outing('a', TODAY))).toEqual([0]);
    expect(daysAhead(outing('a', TODAY), circuit(TODAY))).toEqual([]);
  });

  it('counts one that is over and not on record as of today, for 14 days', () => {
    expect(daysAhead(outing('a', '2026-06-14'))).toEqual([0]);
    expect(daysAhead(outing('a', '2026-05-31', { end: '2026-06-01' }))).toEqual([0, 0]);
    expect(daysAhead(outing('a', '2026-06-01'))).toEqual([0]);
    expect(daysAhead(outing('a', '2026-05-31'))).toEqual([]);
  });

  it.each([
    { day: '2026-06-08', recorded: false },
    { day: '2026-06-09', recorded: true },
    { day: '2026-06-10', recorded: true },
    { day: '2026-06-13', recorded: true },
    { day: '2026-06-14', recorded: false },
  ])('takes a session of $day as that of 10 June: $recorded', ({ day, recorded }) => {
    expect(daysAhead(outing('a', '2026-06-10'), circuit(day))).toEqual(recorded ? [] : [0]);
  });

  it('takes no use of another class as its own, nor what an odometer shows', () => {
    expect(
      daysAhead(outing('a', '2026-06-10'), use('2026-06-10', 'strip', { launches: 4 })),
    ).toEqual([0]);
  });

  it('leaves what is to come alone, whatever was driven the day before', () => {
    expect(daysAhead(outing('a', '2026-06-16'), circuit(TODAY))).toEqual([1]);
  });

  it('counts only the days ahead of a running one whose first days are on record', () => {
    const tour = outing('a', '2026-06-14', { end: '2026-06-17' });
    expect(daysAhead(tour, circuit('2026-06-14'))).toEqual([1, 2]);
    expect(daysAhead(tour)).toEqual([0, 0, 1, 2]);
    expect(occasions([tour])[0]).toMatchObject({ days: 4, startAhead: -1, endAhead: 2 });
  });

  it('keeps two of one day apart, in an order of their own', () => {
    const two = [outing('b', '2026-06-20'), outing('a', '2026-06-20', { useClass: 'autocross' })];
    expect(occasions(two).map(({ id }) => id)).toEqual(['a', 'b']);
    expect(occasions(two.reverse()).map(({ id }) => id)).toEqual(['a', 'b']);
  });

  it('sorts by first day, then by last', () => {
    const events = [
      outing('c', '2026-07-02'),
      outing('b', '2026-07-01', { end: '2026-07-03' }),
      outing('a', '2026-07-01'),
    ];
    expect(occasions(events).map(({ id }) => id)).toEqual(['a', 'b', 'c']);
  });

  it('takes an end before its start as the day of its start', () => {
    const [event] = occasions([outing('a', '2026-06-20', { end: '2026-06-18' })]);
    expect(event).toMatchObject({ days: 1, daysAhead: [5] });
  });

  it('derives what is not said as it does for a use', () => {
    const [event] = occasions([outing('a', '2026-06-20', { sessions: 5 })]);
    expect(event?.amounts).toMatchObject({ distanceKm: 200, hours: 2, sessions: 5, launches: 0 });
  });

  it('gives a tour its hours by the road speed, but not beside an hour meter', () => {
    const tour = outing('a', '2026-06-20', { useClass: 'touring', km: 450 });
    expect(occasions([tour])[0]?.amounts.hours).toBe(10);
    expect(occasions([tour], [], true)[0]?.amounts.hours).toBe(0);
  });
});
