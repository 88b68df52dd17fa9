import { expect, test } from 'vitest';
import { hardUseSentence } from './hard-use-sentence.ts';

const schedule = {
  classes: ['circuit'],
  measure: 'sessions',
  share: 0.5,
  basis: 'limit',
  limits: [{ measure: 'months', value: 6 }],
} satisfies Parameters<typeof hardUseSentence>[1];
const result = { active: true, severeAmount: 17, threshold: 15, since: '2026-06-13' };

test('hardUseSentence() says how much, from how much on, and since when', () => {
  expect(hardUseSentence(result, schedule, 'km')).toBe(
    'Hard use: 17 circuit sessions. From 15 sessions on, the schedule for hard use applies (6 months); it is in force since 13 June 2026.',
  );
});

test('hardUseSentence() says so while the schedule is off, in the unit of the car', () => {
  const off = { active: false, severeAmount: 160.9344, threshold: 804.672, since: null };
  const byDistance = {
    classes: ['circuit', 'strip'],
    measure: 'km',
    share: 0.1,
    basis: 'limit',
    limits: [{ measure: 'km', value: 3000, unit: 'mi' }],
  } satisfies Parameters<typeof hardUseSentence>[1];
  expect(hardUseSentence(off, byDistance, 'mi')).toBe(
    'Hard use: 100 mi on circuits and on the drag strip. From 500 mi on, the schedule for hard use applies (3,000 mi); it is not in force now.',
  );
});

test('hardUseSentence() says where the threshold is a share of all use', () => {
  const shared = { active: false, severeAmount: 100, threshold: 120, since: null };
  const byShare = {
    classes: ['strip'],
    measure: 'km',
    share: 0.25,
    basis: 'used',
    limits: [{ measure: 'months', value: 6 }],
  } satisfies Parameters<typeof hardUseSentence>[1];
  expect(hardUseSentence(shared, byShare, 'km')).toContain(
    'Beyond 120 km, 25 % of all use since the last service, the schedule',
  );
});
