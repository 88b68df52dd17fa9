import { describe, expect, it } from 'vitest';
import { carCase, item, km, reading, service, use } from '../../test/car-case.ts';
import type { CaseEntry, CaseItem } from '../history/case.ts';
import { analyseCase } from './analyse-case.ts';

type Severe = NonNullable<CaseItem['severe']>;

function judge(severe: Partial<Severe>, asOf: string, ...more: CaseEntry[]) {
  const car = carCase(
    asOf,
    [service('2026-01-01', ['oil'], { odo: 10_000, id: 'done' }), ...more],
    [
      item('oil', [km(10_000), { measure: 'months', value: 24 }], {
        severe: {
          classes: ['circuit', 'autocross'],
          measure: 'km',
          share: 0.05,
          basis: 'limit',
          limits: [km(5_000), { measure: 'months', value: 6 }],
          ...severe,
        },
      }),
    ],
  );
  const found = analyseCase(car).items[0];
  if (found === undefined) throw new Error('the item is missing');
  return found;
}

const circuit = (date: string, distance: number) => use(date, 'circuit', { km: distance });

describe('judgeSevere() by the limit', () => {
  it('stays off one kilometre short of the share', () => {
    const found = judge({}, '2026-06-30', circuit('2026-03-01', 499));
    expect(found.severe).toEqual({
      active: false,
      severeAmount: 499,
      threshold: 500,
      since: null,
    });
    // the next session would switch it on: then the six months, up tomorrow, count
    expect(found.binding).toBe('months:severe');
    expect(found.state).not.toBe('overdue');
  });

  it('switches on at exactly the share, on that day, and the shorter limits join', () => {
    const found = judge({}, '2026-06-30', circuit('2026-03-01', 300), circuit('2026-04-01', 200));
    expect(found.severe).toEqual({
      active: true,
      severeAmount: 500,
      threshold: 500,
      since: '2026-04-01',
    });
    expect(found.binding).toBe('months:severe');
    expect(found.state).toBe('dueSoon');
  });

  it('keeps the day of the switch when more hard use follows', () => {
    const found = judge({}, '2026-06-30', circuit('2026-03-01', 500), circuit('2026-04-01', 200));
    expect(found.severe).toMatchObject({ severeAmount: 700, since: '2026-03-01' });
  });

  it('adds up plain amounts of the hard classes alone', () => {
    const found = judge(
      {},
      '2026-06-30',
      circuit('2026-03-01', 100),
      use('2026-03-02', 'autocross', { km: 30 }),
      use('2026-03-03', 'touring', { km: 4000 }),
    );
    expect(found.severe?.severeAmount).toBe(130);
  });

  it('counts nothing from before the service', () => {
    const found = judge({}, '2026-06-30', circuit('2025-12-01', 900));
    expect(found.severe).toMatchObject({ active: false, severeAmount: 0 });
  });

  it('makes an amount limit passed before the switch due on the day of the switch', () => {
    const found = judge(
      {},
      '2026-06-30',
      use('2026-02-01', 'touring', { km: 6000 }),
      circuit('2026-04-01', 500),
    );
    expect(found.state).toBe('overdue');
    expect(found.limits.find(({ measure, severe }) => severe && measure === 'km')).toMatchObject({
      reachedOn: '2026-04-01',
    });
  });

  it('leaves a passed limit of a schedule that is off out of the state', () => {
    const found = judge(
      {},
      '2026-08-30',
      use('2026-02-01', 'touring', { km: 6000 }),
      reading('2026-08-29', 16_000),
    );
    // a tour of 6,000 km is what this car does: another one soon would use up the usual 10,000
    expect(found.binding).toBe('km');
    expect(found.state).not.toBe('overdue');
    const hard = found.limits.filter(({ severe }) => severe);
    expect(hard).toMatchObject([
      { accrued: 6000, remaining: -1000, reachedOn: null },
      { dueDate: '2026-07-01' },
    ]);
    // six months passed in July, but only hard use makes them count
    expect(hard[1]?.due?.p10 ?? '9').not.toBe('2026-07-01');
  });

  it('is on from the service where no usual limit has its measure', () => {
    expect(judge({ measure: 'hours' }, '2026-06-30').severe).toEqual({
      active: true,
      severeAmount: 0,
      threshold: 0,
      since: '2026-01-01',
    });
  });
});

describe('judgeSevere() by the share of use', () => {
  const used = { basis: 'used', share: 0.2 } as const;

  it('waits for a tenth of the interval', () => {
    expect(judge(used, '2026-06-30', circuit('2026-03-01', 999)).severe?.active).toBe(false);
    expect(judge(used, '2026-06-30', circuit('2026-03-01', 1000)).severe).toMatchObject({
      active: true,
      since: '2026-03-01',
    });
  });

  it('stays off at exactly the share', () => {
    const road = use('2026-02-01', 'touring', { km: 1600 });
    expect(judge(used, '2026-06-30', road, circuit('2026-03-01', 400)).severe).toMatchObject({
      active: false,
      threshold: 400,
    });
    expect(judge(used, '2026-06-30', road, circuit('2026-03-01', 401)).severe?.active).toBe(true);
  });

  it('never flips back, though the share falls', () => {
    const found = judge(
      used,
      '2026-06-30',
      circuit('2026-02-01', 1000),
      use('2026-03-01', 'touring', { km: 8000 }),
    );
    expect(found.severe).toMatchObject({ active: true, since: '2026-02-01', threshold: 1800 });
  });

  it('starts again at the next service', () => {
    const found = judge(
      used,
      '2026-06-30',
      circuit('2026-02-01', 1000),
      service('2026-03-01', ['oil'], { id: 'again' }),
      reading('2026-03-02', 12_000),
    );
    expect(found.severe?.active).toBe(false);
  });
});
