import type { Lane } from '@quartermark/engine/display';
import { expect, test } from 'vitest';
import { laneState } from './lane-state.ts';

const lane: Lane = {
  next: [],
  odometer: null,
  level: null,
  oil: null,
  laidUp: null,
  status: 'inUse',
  stop: null,
  road: null,
  open: 0,
  flags: 0,
};
const row = (more: Partial<Lane>, counts: Partial<Parameters<typeof laneState>[0]> = {}) => ({
  lane: { ...lane, ...more },
  overdue: 0,
  dueSoon: 0,
  notOnRecord: 0,
  failure: null,
  asOf: '2026-06-08',
  ...counts,
});

test('laneState() says first what forbids driving', () => {
  expect(laneState(row({ stop: 'doNotDrive' }, { overdue: 2 }))).toEqual({
    mark: 'overdue',
    words: 'Do not drive',
    summed: false,
  });
});

test('laneState() says where a car is that is not here in use', () => {
  expect(laneState(row({ status: 'away', stop: 'incident' })).words).toBe('Away');
  const laidUp = { since: '2026-01-02', until: '2026-07-01' };
  expect(laneState(row({ status: 'laidUp', laidUp })).words).toBe(
    'Laid up since 2 January 2026 until 1 July 2026',
  );
});

test('laneState() counts what asks for something, the worst first', () => {
  expect(laneState(row({}, { overdue: 2, notOnRecord: 1 }))).toEqual({
    mark: 'overdue',
    words: '2 past the limit, 1 not on record',
    summed: true,
  });
  expect(laneState(row({}, { dueSoon: 1 })).mark).toBe('dueSoon');
});

test('laneState() never calls good what is not known', () => {
  expect(laneState(row({})).words).toBe('Nothing watched');
  expect(laneState({ ...row({}), lane: null }).words).toBe('Being worked out');
  const [one] = [
    { id: 'i', name: 'Oil', state: 'unknown', reasonCode: 'lowerBound' } as Lane['next'][number],
  ];
  expect(laneState(row({ next: [one] })).words).toBe('Not all known');
});

test('laneState() says whether a car in use is ready for the road, and what keeps it', () => {
  const ready = { word: 'ready', by: null, why: null, needs: 0 } as const;
  expect(laneState(row({ road: ready }, { dueSoon: 1 }))).toEqual({
    mark: 'ready',
    words: 'Ready, by the log',
    summed: false,
  });
  const fluid = {
    word: 'canBeReady',
    by: '2026-06-11',
    why: 'Brake fluid: not met.',
    needs: 2,
  } as const;
  expect(laneState(row({ road: fluid }, { overdue: 2 }))).toEqual({
    mark: 'afterWork',
    words: 'Can be ready by Thu 11',
    summed: false,
    why: 'Brake fluid: not met',
  });
  const unknown = { ...fluid, word: 'notOnRecord', by: null } as const;
  expect(laneState(row({ road: unknown })).words).toBe('Not on record');
});

test('laneState() lets what forbids driving, and where a car is, win over the road', () => {
  const road = { word: 'ready', by: null, why: null, needs: 0 } as const;
  expect(laneState(row({ road, stop: 'incident' })).words).toBe('Not looked over');
  const oil = { level: null, rough: true, stop: 'low' } as const;
  expect(laneState(row({ road, oil })).words).toBe('Oil low, or may be');
  expect(laneState(row({ road, status: 'away' })).words).toBe('Away');
});
