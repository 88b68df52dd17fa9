import { expect, test } from 'vitest';
import type { Limit } from '../log/item.ts';
import type { AmountLimitResult } from '../wear/result.ts';
import { limitShare, useParts } from './use-parts.ts';

const km = (more: Partial<AmountLimitResult>): AmountLimitResult => ({
  measure: 'km',
  severe: false,
  limit: 10_000,
  known: true,
  accrued: 7_470,
  remaining: 2_530,
  fraction: 0.747,
  byClass: { circuit: 1_400, road: 6_070 },
  estimated: 0,
  reachedOn: null,
  ...more,
});
const limits: Limit[] = [
  { measure: 'km', value: 10_000, unit: 'km', weights: { circuit: 4, strip: 0 } },
];
const about = { item: { name: 'Engine oil', limits }, unit: 'mi' as const };

test('useParts() tells each class apart, as driven and as it counts', () => {
  expect(useParts(km({}), about)).toEqual([
    { useClass: 'road', where: 'on the road', used: '6,070 km', counts: '6,070 km', share: 0.607 },
    { useClass: 'circuit', where: 'on circuits', used: '350 km', counts: '1,400 km', share: 0.14 },
  ]);
});

test('useParts() adds what is expected since the last reading, where that makes a difference', () => {
  expect(useParts(km({ accruedNow: 7_750 }), about).at(-1)).toEqual({
    useClass: null,
    where: 'expected since the last reading',
    used: '',
    counts: '280 km',
    share: 0.028,
  });
  expect(useParts(km({ accruedNow: 7_519 }), about)).toHaveLength(2);
});

test('useParts() shares the use out once it is more than the limit, which then stands inside', () => {
  const over = km({ accrued: 20_000, byClass: { road: 15_000, circuit: 5_000 } });
  expect(useParts(over, about).map(({ share }) => share)).toEqual([0.75, 0.25]);
  expect(limitShare(over)).toBe(0.5);
  expect(limitShare(km({}))).toBe(1);
});

test('useParts() leaves out what is not counted', () => {
  expect(useParts(km({ byClass: { road: 0, strip: 0 }, accrued: 0 }), about)).toEqual([]);
});
