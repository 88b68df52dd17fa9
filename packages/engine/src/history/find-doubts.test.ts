import { describe, expect, it } from 'vitest';
import { carCase, exchange, reading, service, use } from '../../test/car-case.ts';
import { buildHistory } from './build-history.ts';
import type { CaseEntry } from './case.ts';

const flags = (code: string, ...entries: CaseEntry[]) =>
  buildHistory(carCase('2026-06-30', entries))
    .flags.filter((flag) => flag.code === code)
    .map(({ entry, other }) => [entry, other]);

describe('findLookAlikes()', () => {
  const first = use('2026-05-01', 'circuit', { sessions: 1, id: 'a' });

  it('names the later of two equal uses, and the earlier beside it', () => {
    expect(
      flags('looksTheSame', first, use('2026-05-01', 'circuit', { sessions: 1, id: 'b' })),
    ).toEqual([['b', 'a']]);
  });

  it('names two at the same time', () => {
    expect(
      flags(
        'looksTheSame',
        use('2026-05-01', 'circuit', { sessions: 1, id: 'a', time: '10:00' }),
        use('2026-05-01', 'circuit', { sessions: 1, id: 'b', time: '10:00' }),
      ),
    ).toEqual([['b', 'a']]);
  });

  it.each([
    ['another amount', use('2026-05-01', 'circuit', { sessions: 2, id: 'b' })],
    ['another class', use('2026-05-01', 'autocross', { sessions: 1, id: 'b' })],
    ['another day', use('2026-05-02', 'circuit', { sessions: 1, id: 'b' })],
    ['a time of its own', use('2026-05-01', 'circuit', { sessions: 1, id: 'b', time: '10:00' })],
    ['more days', use('2026-05-01', 'circuit', { sessions: 1, id: 'b', endDate: '2026-05-02' })],
    ['the same id', use('2026-05-01', 'circuit', { sessions: 1, id: 'a' })],
  ])('says nothing about %s', (_, second) => {
    expect(flags('looksTheSame', first, second)).toEqual([]);
  });

  it('says nothing about two uses without any amount', () => {
    expect(
      flags(
        'looksTheSame',
        use('2026-05-01', 'road', { id: 'a' }),
        use('2026-05-01', 'road', { id: 'b' }),
      ),
    ).toEqual([]);
  });
});

describe('findAssumedOrders()', () => {
  const untimed = service('2026-05-01', ['oil'], { id: 's' });

  it('names a service and a use of one day without times', () => {
    expect(flags('orderAssumed', untimed, use('2026-05-01', 'road', { km: 5, id: 'u' }))).toEqual([
      ['s', 'u'],
    ]);
  });

  it('names a service on an inner day of a use of several days, whose time is the first day’s', () => {
    const trip = use('2026-04-30', 'touring', {
      km: 5,
      id: 'u',
      time: '09:00',
      endDate: '2026-05-02',
    });
    expect(flags('orderAssumed', untimed, trip)).toEqual([['s', 'u']]);
  });

  it.each<[string, ...CaseEntry[]]>([
    ['a timed use', untimed, use('2026-05-01', 'road', { km: 5, time: '09:00' })],
    [
      'a timed service',
      service('2026-05-01', ['oil'], { time: '07:00' }),
      use('2026-05-01', 'road', { km: 5 }),
    ],
    ['another day', untimed, use('2026-05-02', 'road', { km: 5 })],
    ['a reading', untimed, reading('2026-05-01', 100)],
    ['an exchange', untimed, exchange('2026-05-01', 0)],
  ])('says nothing about %s', (_, ...entries) => {
    expect(flags('orderAssumed', ...entries)).toEqual([]);
  });
});
