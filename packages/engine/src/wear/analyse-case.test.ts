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
import type { CarCase, CaseEntry, CaseItem } from '../history/case.ts';
import { analyseCase } from './analyse-case.ts';
import { type AmountLimitResult, type ItemResult, isAmountLimit } from './result.ts';

const AS_OF = '2026-06-30';
const SESSIONS = { measure: 'sessions', value: 10, weights: {} } as const;
const HOURS = { measure: 'hours', value: 50, weights: {} } as const;

function first(car: CarCase): ItemResult {
  const found = analyseCase(car).items[0];
  if (found === undefined) throw new Error('the item is missing');
  return found;
}

const judge = (one: CaseItem, ...entries: CaseEntry[]) => first(carCase(AS_OF, entries, [one]));

function amount(found: ItemResult, measure = 'km'): AmountLimitResult {
  const limit = found.limits.find((one) => one.measure === measure);
  if (limit === undefined || !isAmountLimit(limit)) throw new Error(`no limit in ${measure}`);
  return limit;
}

const done = service('2026-01-01', ['oil'], { odo: 10_000, id: 'done' });

describe('analyseCase() adding up', () => {
  it('weighs each class, tells them apart and says what was derived', () => {
    const found = judge(
      item('oil', [km(10_000, { circuit: 4, strip: 0 })]),
      done,
      use('2026-02-01', 'circuit', { sessions: 2, id: 'track' }),
      use('2026-02-02', 'strip', { launches: 10, id: 'strip' }),
      reading('2026-03-01', 10_300, { id: 'end' }),
    );
    expect(Object.keys(amount(found).byClass)).toEqual(['road', 'circuit']);
    // 80 km on the circuit and 8 on the strip, derived; 212 km of road left of 300
    expect(amount(found)).toMatchObject({
      measure: 'km',
      severe: false,
      limit: 10_000,
      known: true,
      accrued: 532,
      remaining: 9468,
      fraction: 0.0532,
      byClass: { circuit: 320, road: 212 },
      estimated: 320,
      reachedOn: null,
    });
    expect(found.evidence).toEqual(['done', 'track', 'end']);
  });

  it('counts nothing with all weights 0', () => {
    const none = { road: 0, touring: 0, circuit: 0, strip: 0, autocross: 0 };
    const found = judge(item('oil', [km(100, none)]), done, reading('2026-03-01', 20_000));
    expect(amount(found)).toMatchObject({ accrued: 0, fraction: 0, byClass: {} });
    expect(found.evidence).toEqual(['done']);
  });

  it('counts the sessions of a day whose service was at seven in the morning', () => {
    const flushed = service('2026-05-01', ['fluid'], { time: '07:00' });
    const morning = use('2026-05-01', 'circuit', { sessions: 4, time: '09:00' });
    expect(amount(judge(item('fluid', [SESSIONS]), flushed, morning), 'sessions').accrued).toBe(4);
  });

  it('does not count the sessions before an evening service', () => {
    const flushed = service('2026-05-01', ['fluid'], { time: '18:00' });
    const morning = use('2026-05-01', 'circuit', { sessions: 4, time: '09:00' });
    expect(amount(judge(item('fluid', [SESSIONS]), flushed, morning), 'sessions').accrued).toBe(0);
  });

  it('counts sessions before an untimed service of their day as before it, and says so', () => {
    const flushed = service('2026-05-01', ['fluid'], { id: 'flush' });
    const day = use('2026-05-01', 'circuit', { sessions: 4, id: 'day' });
    const analysis = analyseCase(carCase(AS_OF, [flushed, day], [item('fluid', [SESSIONS])]));
    expect(analysis.items[0]?.limits).toMatchObject([{ accrued: 0 }]);
    expect(analysis.flags).toEqual([
      { code: 'orderAssumed', entry: 'flush', on: '2026-05-01', value: null, other: 'day' },
    ]);
  });

  it('counts the distance to a reading of the service’s day after an early service', () => {
    const early = service('2026-01-11', ['oil'], { time: '07:00', complete: true });
    const found = judge(
      item('oil', [km(10_000)]),
      reading('2026-01-01', 10_000),
      early,
      reading('2026-01-11', 10_100),
    );
    // ten days of 10 km: the nine before count as before, the day itself as after
    expect(amount(found).accrued).toBe(10);
  });

  it('takes a service with a reading as the end of its interval', () => {
    const found = judge(
      item('oil', [km(10_000)]),
      reading('2025-12-01', 9_000),
      done,
      reading('2026-02-01', 10_500),
    );
    expect(amount(found).accrued).toBe(500);
  });

  it('counts logged use alone after a service later than the last reading', () => {
    const found = judge(
      item('oil', [km(10_000)]),
      reading('2026-01-01', 10_000),
      service('2026-02-01', ['oil'], {}),
      use('2026-03-01', 'circuit', { km: 150 }),
    );
    expect(amount(found)).toMatchObject({ accrued: 150, known: true });
  });

  it('reads hours alone and kilometres alone', () => {
    const hoursOnly = judge(
      item('pump', [HOURS]),
      service('2026-01-01', ['pump'], { hours: 100 }),
      reading('2026-02-01', null, { hours: 112 }),
    );
    expect(amount(hoursOnly, 'hours')).toMatchObject({ accrued: 12, known: true, estimated: 0 });
    const kmOnly = judge(
      item('pump', [HOURS]),
      service('2026-01-01', ['pump'], { odo: 1000 }),
      reading('2026-02-01', 1450),
    );
    expect(amount(kmOnly, 'hours')).toMatchObject({ accrued: 10, known: true, estimated: 10 });
  });

  it('does not move when a back-dated entry comes last', () => {
    const one = item('oil', [km(10_000)]);
    const entries = [done, reading('2026-03-01', 10_300), use('2026-02-01', 'circuit', { km: 90 })];
    expect(judge(one, ...entries)).toEqual(judge(one, ...entries.reverse()));
  });
});

describe('analyseCase() at a limit', () => {
  it('is overdue where a limit is reached exactly, on the day it was', () => {
    const found = judge(
      item('oil', [km(1000)]),
      done,
      use('2026-02-01', 'circuit', { km: 900 }),
      use('2026-02-09', 'circuit', { km: 100 }),
    );
    expect(found).toMatchObject({ state: 'overdue', reasonCode: null });
    expect(amount(found)).toMatchObject({ remaining: 0, fraction: 1, reachedOn: '2026-02-09' });
  });

  it('is not overdue a metre before', () => {
    const found = judge(
      item('oil', [km(1000)]),
      done,
      use('2026-02-01', 'circuit', { km: 999.999 }),
    );
    expect(found.state).toBe('dueSoon');
  });

  it('reaches a limit in shares of days that do not add up to the last bit', () => {
    const found = judge(
      item('oil', [km(0.3)]),
      done,
      ...['02', '03', '04'].map((day) => use(`2026-02-${day}`, 'circuit', { km: 0.1 })),
    );
    expect(found.state).toBe('overdue');
  });

  it('reaches 7,500 mi by 7,500 mi', () => {
    const mi = 1.609344;
    const found = judge(
      item('oil', [km(7_500 * mi)]),
      service('2026-01-01', ['oil'], { odo: 38_412 * mi }),
      reading('2026-05-01', 45_912 * mi),
    );
    expect(found.state).toBe('overdue');
    expect(amount(found).reachedOn).toBe('2026-05-01');
  });

  it('leaves a negative remainder where it was passed long ago', () => {
    const found = judge(item('oil', [km(1000)]), done, reading('2026-02-01', 12_500));
    expect(amount(found)).toMatchObject({ remaining: -1500, fraction: 2.5 });
  });

  it('is valid through the day a calendar limit runs out, overdue on the next', () => {
    const half = item('oil', [{ measure: 'months', value: 6 }]);
    const on = (asOf: string) => first(carCase(asOf, [done], [half])).state;
    expect(on('2026-06-09')).toBe('fine');
    expect(on('2026-06-10')).toBe('dueSoon');
    expect(on('2026-07-01')).toBe('dueSoon');
    expect(on('2026-07-02')).toBe('overdue');
  });

  it('warns as many days ahead as asked, and a week', () => {
    const half = item('oil', [{ measure: 'months', value: 6 }], { warnDays: 0 });
    const on = (asOf: string) => first(carCase(asOf, [done], [half]));
    expect(on('2026-06-23').state).toBe('fine');
    expect(on('2026-06-24')).toMatchObject({ state: 'dueSoon', dueSoonHorizonDays: 7 });
  });

  it('names what is reached first by the likely day, whatever the used fraction', () => {
    const twoYears = { measure: 'months', value: 24 } as const;
    const commuter = [done, reading('2026-03-31', 13_000), reading('2026-06-28', 16_000)];
    // 1,000 km a month: the last 4,000 km take four months, the last 18 months longer than that
    expect(judge(item('oil', [km(10_000), twoYears]), ...commuter).binding).toBe('km');
    expect(judge(item('oil', [km(60_000), twoYears]), ...commuter).binding).toBe('months');
  });

  it('names the earlier early day where no likely day lies within three years', () => {
    const parked = [done, reading('2026-06-28', 10_000)];
    const found = judge(item('oil', [km(90_000), { measure: 'months', value: 60 }]), ...parked);
    expect(found).toMatchObject({ binding: 'months', dueDate: { p50: '2031-01-01' } });
  });
});

describe('analyseCase() of a label’s day', () => {
  const label = (value: string) => ({ measure: 'date', value }) as const;

  it('needs no service', () => {
    expect(judge(item('belt', [label('2026-12-31')]))).toMatchObject({
      state: 'fine',
      reasonCode: null,
      binding: 'date',
      dueDate: { p10: '2026-12-31', p50: '2026-12-31', p90: '2026-12-31' },
      limits: [{ measure: 'date', dueDate: '2026-12-31', remainingDays: 184, known: true }],
    });
    expect(judge(item('belt', [label(AS_OF)])).state).toBe('dueSoon');
    expect(judge(item('belt', [label('2026-06-29')])).state).toBe('overdue');
  });

  it('names the earliest of several', () => {
    const found = judge(item('belt', [label('2026-12-31'), label('2026-06-01')]));
    expect(found).toMatchObject({ state: 'overdue', binding: 'date' });
  });

  it('does not make up for a service that is not on record, but tells when it has passed', () => {
    expect(judge(item('belt', [km(1000), label('2026-12-31')]))).toMatchObject({
      state: 'unknown',
      reasonCode: 'noBaseline',
      limits: [{ measure: 'date' }],
    });
    expect(judge(item('belt', [km(1000), label('2026-06-29')])).state).toBe('overdue');
  });
});

describe('analyseCase() of a starting point', () => {
  it('serves its own item alone and reads like a service', () => {
    const analysis = analyseCase(
      carCase(
        AS_OF,
        [reading('2026-02-01', 1500)],
        [
          item('oil', [km(10_000)], { baseline: startingPoint('2026-01-01', 1000) }),
          item('gear', [km(10_000)]),
        ],
      ),
    );
    expect(analysis.items[0]).toMatchObject({
      service: '2026-01-01',
      limits: [{ accrued: 500, known: true }],
      evidence: ['reading 2026-02-01 1500'],
    });
    expect(analysis.items[1]?.reasonCode).toBe('noBaseline');
  });

  it('gives way to a later service', () => {
    const found = judge(
      item('oil', [km(10_000)], { baseline: startingPoint('2025-01-01', 1000) }),
      done,
    );
    expect(found.service).toBe('2026-01-01');
  });

  it('is set aside with a flag where it lies ahead', () => {
    const analysis = analyseCase(
      carCase(AS_OF, [], [item('oil', [km(1)], { baseline: startingPoint('2026-07-01') })]),
    );
    expect(analysis.items[0]?.reasonCode).toBe('noBaseline');
    expect(analysis.flags).toEqual([
      { code: 'future', entry: null, on: '2026-07-01', value: null },
    ]);
  });
});

describe('analyseCase() of the car', () => {
  it('says what the odometer shows and what the car has gone across exchanges', () => {
    const { odometer } = analyseCase(
      carCase(AS_OF, [
        reading('2026-01-01', 88_000),
        exchange('2026-02-01', 0, { oldValue: 88_100 }),
        reading('2026-03-01', 200, { id: 'last' }),
        use('2026-04-01', 'circuit', { km: 100 }),
        reading('2026-04-02', 150, { id: 'typo' }),
      ]),
    );
    // a later reading wins a tie, so 150 stands against 200
    expect(odometer).toEqual({ entry: 'typo', on: '2026-04-02', readingKm: 150, totalKm: 250 });
  });

  it('has no odometer, no lay-up and no items where there are none', () => {
    expect(analyseCase(carCase(AS_OF, []))).toEqual({
      schema: 1,
      engineVersion: expect.any(Number),
      car: 'car',
      asOf: AS_OF,
      flags: [],
      items: [],
      laidUp: null,
      odometer: null,
    });
  });

  it('refuses a day that does not exist', () => {
    expect(() => analyseCase(carCase('2026-02-30', []))).toThrow(RangeError);
  });
});
