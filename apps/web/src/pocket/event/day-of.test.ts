import type { EventPage } from '@quartermark/api/client';
import { expect, test } from 'vitest';
import { daysToShow, isOlder } from './day-of.ts';

const day = (name: string, start: string, end?: string) =>
  ({ event: { event: { name, start, end } } }) as unknown as EventPage;
const names = (days: readonly EventPage[]) => days.map(({ event }) => event.event.name);

test('daysToShow() begins with what runs today and leaves out what is over', () => {
  const days = [
    day('next week', '2026-06-22'),
    day('over', '2026-06-12', '2026-06-14'),
    day('tomorrow', '2026-06-16'),
    day('since yesterday', '2026-06-14', '2026-06-15'),
  ];
  expect(names(daysToShow(days, '2026-06-15'))).toEqual([
    'since yesterday',
    'tomorrow',
    'next week',
  ]);
});

test('isOlder() once something was recorded here after it was worked out, by the garage’s clock', () => {
  const at = '2026-06-15T10:00:00.000Z';
  const ms = Date.parse(at);
  const none = { aheadMs: 0, lastMs: null, waiting: 0 };
  expect(isOlder({ at }, none)).toBe(false);
  expect(isOlder({ at }, { ...none, lastMs: ms - 1 })).toBe(false);
  expect(isOlder({ at }, { ...none, lastMs: ms + 1 })).toBe(true);
  // the phone is an hour behind: what it calls 09:30 was 10:30
  expect(isOlder({ at }, { ...none, aheadMs: 3_600_000, lastMs: ms - 1_800_000 })).toBe(true);
  // what waits was never counted, whenever it was made
  expect(isOlder({ at }, { ...none, lastMs: ms - 1, waiting: 1 })).toBe(true);
});
