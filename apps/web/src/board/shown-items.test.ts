import type { LaneItem } from '@quartermark/engine/display';
import { expect, test } from 'vitest';
import { placeEvents } from './place.ts';
import { leftOut, mayHoldMore, shownAtFirst } from './shown-items.ts';

const item = (id: string, more: Partial<LaneItem> = {}): LaneItem => ({
  id,
  name: id,
  state: 'fine',
  reasonCode: null,
  binding: 'km',
  limit: 10_000,
  remaining: 2_300,
  unit: 'km',
  day: null,
  ...more,
});
const { placed } = placeEvents(
  [
    { eventId: 'theirs', event: { name: 'Meet', start: '2026-06-20', cars: ['other'] } },
    { eventId: 'ours', event: { name: 'Circuit day', start: '2026-07-04', cars: ['car'] } },
  ],
  { today: '2026-06-15', days: 100 },
);
const shown = (items: LaneItem[], events = placed) =>
  shownAtFirst(items, 'car', events).map(({ id }) => id);

test('shownAtFirst() shows the next thing, and what may fall due before the car’s next event', () => {
  const items = [
    item('next', { likely: '2026-08-01', early: '2026-07-20' }),
    item('before', { likely: '2026-08-20', early: '2026-07-04' }),
    item('after', { likely: '2026-08-20', early: '2026-07-05' }),
  ];
  expect(shown(items)).toEqual(['next', 'before']);
  expect(shown(items, [])).toEqual(['next']);
});

test('shownAtFirst() shows all that has run out, event or not', () => {
  const over = ['a', 'b', 'c'].map((id) => item(id, { state: 'overdue', day: '2026-05-01' }));
  expect(shown(over, [])).toEqual(['a', 'b', 'c']);
});

test('shownAtFirst() takes a day of the calendar as it is, and gives what is not known none', () => {
  const next = item('next', { likely: '2026-06-20', early: '2026-06-16' });
  expect(shown([next, item('label', { day: '2026-07-01' })])).toEqual(['next', 'label']);
  expect(shown([next, item('least', { state: 'unknown', day: '2026-07-01' })])).toEqual(['next']);
  const once = { reasonCode: 'doneOnce', day: '2026-05-01' } as const;
  expect(shown([next, item('once', once)])).toEqual(['next']);
});

test('leftOut() counts what asks for something and is not shown', () => {
  const over = [item('a', { state: 'overdue' }), item('b', { state: 'overdue' }), item('c')];
  expect(leftOut(over, { overdue: 4, dueSoon: 1, notOnRecord: 0 })).toBe(3);
  expect(leftOut(over, { overdue: 2, dueSoon: 0, notOnRecord: 0 })).toBe(0);
  const unknown = item('d', { state: 'unknown', reasonCode: 'noBaseline' });
  expect(leftOut([unknown], { overdue: 0, dueSoon: 0, notOnRecord: 2 })).toBe(1);
});

test('mayHoldMore() is sure of no more only where the lane holds fewer than it could', () => {
  const two = [item('a'), item('b')];
  expect(mayHoldMore({ next: two }, 2, 0)).toBe(false);
  expect(mayHoldMore({ next: two }, 1, 0)).toBe(true);
  expect(mayHoldMore({ next: [...two, item('c')] }, 3, 0)).toBe(true);
  expect(mayHoldMore({ next: two }, 2, 1)).toBe(true);
});
