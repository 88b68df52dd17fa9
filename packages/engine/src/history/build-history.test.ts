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
import { formatDay } from '../calendar/day-number.ts';
import { buildHistory, type History } from './build-history.ts';
import type { CaseEntry } from './case.ts';

const AS_OF = '2026-06-30';

const build = (entries: CaseEntry[], more: Parameters<typeof carCase>[3] = {}) =>
  buildHistory(carCase(AS_OF, entries, [], more));

const kept = ({ odometer }: History) => odometer.kept.map((point) => point.reading);
const codes = ({ flags }: History) => flags.map(({ code, entry }) => `${code} ${entry}`).sort();

function sumKm({ contributions }: History, useClass?: string): number {
  return contributions
    .filter((it) => useClass === undefined || it.useClass === useClass)
    .reduce((sum, { distanceKm }) => sum + distanceKm, 0);
}

const roadDays = ({ contributions }: History) =>
  contributions
    .filter(({ since }) => since !== null)
    .map(({ day, distanceKm }) => [formatDay(day), Math.round(distanceKm * 1000) / 1000]);

describe('buildHistory()', () => {
  it('is empty for no entries at all', () => {
    const history = build([]);
    expect(history.contributions).toEqual([]);
    expect(history.flags).toEqual([]);
    expect(kept(history)).toEqual([]);
  });

  it('knows no use from one reading', () => {
    expect(build([reading('2026-01-01', 1000)]).contributions).toEqual([]);
  });

  it('sets entries after asOf aside, asOf itself counts', () => {
    const history = build([
      reading('2026-06-20', 1000),
      reading('2026-06-30', 1100),
      reading('2026-07-01', 1200),
    ]);
    expect(kept(history)).toEqual([1000, 1100]);
    expect(codes(history)).toEqual(['future reading 2026-07-01 1200']);
  });

  it('puts two readings of one day in the order of their values and the rest on that day', () => {
    const history = build([reading('2026-05-01', 1080), reading('2026-05-01', 1000)]);
    expect(kept(history)).toEqual([1000, 1080]);
    expect(roadDays(history)).toEqual([['2026-05-01', 80]]);
  });

  it('spreads the rest of an interval as road use over its days', () => {
    const history = build([
      reading('2026-05-01', 1000),
      use('2026-05-03', 'circuit', { km: 100 }),
      reading('2026-05-05', 1300),
    ]);
    expect(roadDays(history)).toEqual([
      ['2026-05-02', 50],
      ['2026-05-03', 50],
      ['2026-05-04', 50],
      ['2026-05-05', 50],
    ]);
    expect(sumKm(history)).toBeCloseTo(300, 9);
  });

  it('spreads it over the days outside storage, or over all of them if there are none', () => {
    const entries = [reading('2026-05-01', 1000), reading('2026-05-05', 1040)];
    expect(roadDays(build(entries, { storage: [['2026-05-01', '2026-05-03']] }))).toEqual([
      ['2026-05-04', 20],
      ['2026-05-05', 20],
    ]);
    expect(roadDays(build(entries, { storage: [['2026-04-01', null]] }))).toHaveLength(4);
  });

  it('counts use logged in storage', () => {
    const history = build([use('2026-05-02', 'road', { km: 12 })], {
      storage: [['2026-05-01', '2026-05-10']],
    });
    expect(sumKm(history)).toBe(12);
  });

  it('spreads a use of several days evenly, without the days after asOf', () => {
    const history = build([use('2026-06-29', 'touring', { km: 400, endDate: '2026-07-02' })]);
    expect(
      history.contributions.map(({ day, distanceKm }) => [formatDay(day), distanceKm]),
    ).toEqual([
      ['2026-06-29', 100],
      ['2026-06-30', 100],
    ]);
  });

  it('scales estimated amounts down to what the meter shows before it doubts the log', () => {
    const history = build([
      reading('2026-05-01', 1000),
      use('2026-05-02', 'circuit', { sessions: 5 }),
      use('2026-05-03', 'road', { km: 60 }),
      reading('2026-05-05', 1100),
    ]);
    expect(sumKm(history, 'circuit')).toBeCloseTo(40, 9);
    expect(sumKm(history)).toBeCloseTo(100, 9);
    expect(history.flags).toEqual([]);
  });

  it('lets the log win where given amounts are more than the meter shows', () => {
    const history = build([
      reading('2026-05-01', 1000),
      use('2026-05-02', 'circuit', { sessions: 5 }),
      use('2026-05-03', 'road', { km: 160 }),
      reading('2026-05-05', 1100),
    ]);
    expect(sumKm(history)).toBeCloseTo(160, 9);
    expect(history.flags).toMatchObject([
      {
        code: 'loggedExceedsMeter',
        entry: 'reading 2026-05-05 1100',
        value: '160 km logged, 100 km by the meter',
      },
    ]);
  });

  it('does not doubt shares of days that add up to the difference but for the last bit', () => {
    const history = build([
      reading('2026-05-01', 1000),
      use('2026-05-02', 'touring', { km: 100.1, endDate: '2026-05-08' }),
      reading('2026-05-09', 1100.1),
    ]);
    expect(history.flags).toEqual([]);
  });

  it('takes the hours of road use from its distance where there is no hour meter', () => {
    const entries = [reading('2026-05-01', 1000), reading('2026-05-02', 1090)];
    expect(build(entries).contributions[0]).toMatchObject({ hours: 2, hoursEstimated: true });
    expect(build(entries, { roadKmh: null }).contributions[0]).toMatchObject({ hours: 0 });
  });

  it('takes the hours of road use from the hour meter where there is one', () => {
    const history = build([
      reading('2026-05-01', null, { hours: 100 }),
      use('2026-05-02', 'circuit', { hours: 1.5 }),
      reading('2026-05-03', null, { hours: 104 }),
    ]);
    const hours = history.contributions.map(({ useClass, hours }) => [useClass, hours]);
    expect(hours).toEqual([
      ['road', 1.25],
      ['circuit', 1.5],
      ['road', 1.25],
    ]);
    expect(
      history.contributions.every(
        ({ distanceKm, useClass }) => useClass !== 'road' || distanceKm === 0,
      ),
    ).toBe(true);
  });

  it('joins the scales of a logged exchange with its old value', () => {
    const history = build([
      reading('2026-05-01', 88_000),
      exchange('2026-05-11', 5, { oldValue: 88_100 }),
      reading('2026-05-21', 205),
    ]);
    expect(sumKm(history)).toBeCloseTo(300, 9);
    expect(history.odometer.unknownGaps).toEqual([]);
    expect(history.flags).toEqual([]);
  });

  it('leaves the distance across an exchange without its old value unknown', () => {
    const history = build([
      reading('2026-05-01', 88_000),
      use('2026-05-05', 'circuit', { km: 120 }),
      exchange('2026-05-11', 0),
      reading('2026-05-21', 200),
    ]);
    expect(sumKm(history)).toBeCloseTo(320, 9);
    expect(history.odometer.unknownGaps).toEqual([{ after: 0, until: 2 }]);
    expect(codes(history)).toEqual(['exchangeWithoutOldValue meterReset 2026-05-11']);
  });

  it('reads a new instrument in another unit on its own scale', () => {
    // 50,000 km on the old one; the new one starts at 31,069 mi, read here in km
    const newKm = 31_069 * 1.609344;
    const history = build([
      reading('2026-05-01', 49_900),
      exchange('2026-05-11', newKm, { oldValue: 50_000 }),
      reading('2026-05-21', (31_069 + 100) * 1.609344),
    ]);
    expect(sumKm(history)).toBeCloseTo(100 + 160.9344, 6);
  });

  it('gives untimed readings of an exchange day to the scale they fit', () => {
    const history = build([
      reading('2026-05-01', 88_000),
      reading('2026-05-11', 88_090),
      reading('2026-05-11', 12),
      exchange('2026-05-11', 0, { oldValue: 88_100 }),
      reading('2026-05-21', 212),
    ]);
    expect(kept(history)).toEqual([88_000, 88_090, 88_100, 0, 12, 212]);
    expect(sumKm(history)).toBeCloseTo(312, 9);
    expect(history.flags).toEqual([]);
  });

  it('measures them against the last reading of an earlier day where the old value is missing', () => {
    const history = build([
      reading('2026-05-01', 88_000),
      reading('2026-05-11', 12),
      exchange('2026-05-11', 0),
      reading('2026-05-21', 212),
    ]);
    expect(kept(history)).toEqual([88_000, 0, 12, 212]);
  });

  it('marks an exchange nobody logged and gives readings of its day to the scale they fit', () => {
    const history = build([
      reading('2026-05-01', 49_900),
      reading('2026-05-11', 50_000),
      reading('2026-05-11', 5),
      reading('2026-05-14', 30),
      reading('2026-05-20', 60),
    ]);
    expect(kept(history)).toEqual([49_900, 50_000, 5, 30, 60]);
    expect(sumKm(history)).toBeCloseTo(155, 9);
    expect(codes(history)).toEqual(['unloggedExchange reading 2026-05-11 5']);
    expect(history.odometer.unknownGaps).toEqual([{ after: 1, until: 2 }]);
  });

  it('counts on over a roll-over of a counter in miles at its own full scale', () => {
    const mi = 1.609344;
    const history = build([reading('2026-05-01', 99_900 * mi), reading('2026-05-11', 50 * mi)], {
      odoDigits: 5,
      odoUnit: 'mi',
    });
    expect(sumKm(history)).toBeCloseTo(150 * mi, 6);
    expect(history.flags).toMatchObject([{ code: 'rollOver', on: '2026-05-11' }]);
  });

  it('keeps the rest of an entry whose reading it rejects', () => {
    const history = build([
      reading('2026-05-01', 50_000),
      service('2026-05-02', ['oil'], { odo: 5_000 }),
      reading('2026-05-03', 50_100),
    ]);
    expect(kept(history)).toEqual([50_000, 50_100]);
    expect(codes(history)).toEqual(['readingRejected service 2026-05-02']);
    expect(history.timeline).toHaveLength(3);
  });

  it('rejects equal typos at the end together', () => {
    const history = build([
      reading('2026-05-01', 50_000),
      reading('2026-05-08', 500_100, { id: 'a' }),
      reading('2026-05-09', 500_100, { id: 'b' }),
    ]);
    expect(kept(history)).toEqual([50_000]);
    expect(codes(history)).toEqual(['readingTooFast a', 'readingTooFast b']);
  });

  it('does not join an exchange whose old value was rejected', () => {
    const history = build([
      reading('2026-05-01', 88_000),
      reading('2026-05-05', 88_050),
      exchange('2026-05-11', 0, { oldValue: 87_900 }),
      reading('2026-05-21', 212),
    ]);
    expect(history.odometer.unknownGaps).toHaveLength(1);
  });

  it('reads the starting point of an item as a reading', () => {
    const car = carCase(
      AS_OF,
      [reading('2026-05-11', 1100)],
      [item('oil', [km(5000)], { baseline: startingPoint('2026-05-01', 1000) })],
    );
    expect(sumKm(buildHistory(car))).toBeCloseTo(100, 9);
  });

  it('builds 10,000 entries in tens of milliseconds', () => {
    const entries: CaseEntry[] = [];
    for (let index = 0; index < 5000; index += 1) {
      const date = formatDay(index * 2);
      entries.push(reading(date, 1000 + index * 60));
      entries.push(use(date, 'circuit', { sessions: 1, id: `u${index}` }));
    }
    const car = carCase('2026-06-30', entries);
    buildHistory(car);
    const before = process.cpuUsage();
    const history = buildHistory(car);
    const { user, system } = process.cpuUsage(before);
    expect(history.contributions.length).toBeGreaterThan(14_000);
    // processor time, not the clock: 30 to 50 ms alone, more where other work shares the machine
    expect((user + system) / 1000).toBeLessThan(400);
  });
});
