import { describe, expect, it } from 'vitest';
import {
  carCase,
  exchange,
  item,
  km,
  reading,
  service,
  startingPoint,
  use,
} from '../../test/car-case.ts';
import { seasonOfCase } from '../../test/forecast-case.ts';
import { parseDay } from '../calendar/day-number.ts';
import type { CaseEntry } from '../history/case.ts';

const TODAY = '2026-06-15';
const seasonOf = (...entries: CaseEntry[]) => seasonOfCase(carCase(TODAY, entries));
const circuit = (day: string) => use(day, 'circuit', { sessions: 4 });

describe('seasonOf()', () => {
  it('begins with the first reading or use of a car with a meter', () => {
    const early = service('2024-01-01', ['oil']);
    expect(seasonOf(early, reading('2025-03-01', 100)).firstDay).toBe(parseDay('2025-03-01'));
    expect(seasonOf(early, reading('2025-03-01', 100), circuit('2025-02-01')).firstDay).toBe(
      parseDay('2025-02-01'),
    );
  });

  it('begins with the first entry of a car without a meter, whatever its kind', () => {
    const early = service('2025-01-01', ['fluid']);
    expect(seasonOf(early, circuit('2025-03-01')).firstDay).toBe(parseDay('2025-01-01'));
    expect(seasonOf(early).firstDay).toBe(parseDay('2025-01-01'));
  });

  it('begins today without an entry: a starting point is none', () => {
    const car = carCase(
      TODAY,
      [],
      [item('oil', [km(1000)], { baseline: startingPoint('2025-01-01') })],
    );
    expect(seasonOfCase(car).firstDay).toBe(parseDay(TODAY));
  });

  it('reads hours off the odometer where there is no hour meter, counts off none', () => {
    const by = seasonOf(reading('2026-01-01', 100), reading('2026-02-01', 900));
    expect(by.meterOf('hours')).toEqual(by.meterOf('km'));
    expect(by.meterOf('sessions')).toBeNull();
    const both = seasonOf(reading('2026-01-01', 100), reading('2026-02-01', null, { hours: 9 }));
    expect(both.meterOf('hours')?.readings).toEqual([parseDay('2026-02-01')]);
    expect(both.meterOf('km')?.readings).toEqual([parseDay('2026-01-01')]);
  });

  it('leaves the days of an exchange without an old value blank, the new reading’s day with them', () => {
    const season = seasonOf(
      reading('2026-01-01', 50_000),
      reading('2026-02-01', 51_000),
      exchange('2026-03-10', 0),
      reading('2026-04-01', 400),
    );
    expect(season.meterOf('km')?.blanks).toEqual([
      { from: parseDay('2026-02-02'), until: parseDay('2026-03-10') },
    ]);
  });

  it('takes the shares of one tour together, and no everyday use', () => {
    const season = seasonOf(
      reading('2026-01-01', 0),
      use('2026-05-01', 'touring', { km: 900, endDate: '2026-05-03' }),
      circuit('2026-05-20'),
      use('2026-05-21', 'road', { km: 40 }),
      reading('2026-06-01', 3000),
    );
    expect(season.occasions.map((shares) => shares.length)).toEqual([3, 1]);
  });

  it('says how long the car is laid up, by the storage that covers today', () => {
    const laidUp = (...storage: [string, string | null][]) =>
      seasonOfCase(carCase(TODAY, [], [], { storage })).laidUpUntil;
    expect(laidUp(['2026-06-01', '2026-06-30'])).toBe(parseDay('2026-06-30'));
    expect(laidUp(['2026-06-01', '2026-06-20'], ['2026-06-21', '2026-07-01'])).toBe(
      parseDay('2026-07-01'),
    );
    expect(laidUp(['2026-06-01', null])).toBe(parseDay('2026-06-01') + 150);
    expect(laidUp(['2026-06-01', TODAY])).toBe(parseDay(TODAY));
    expect(laidUp(['2026-06-16', '2026-06-30'])).toBeNull();
  });
});
