import type { SaidCar } from '@quartermark/api/client';
import type { JudgedLine } from '@quartermark/engine/said';
import { expect, test } from 'vitest';
import { saidGroups } from './said-groups.ts';

function line(
  item: string,
  outcome: JudgedLine['outcome'],
  more: { on?: string; likely?: string; outside?: number; since?: string; late?: string } = {},
): JudgedLine {
  const { on = '2026-01-05', likely = '2026-06-01', outside = null, since = '2025-12-01' } = more;
  const { late = null } = more;
  return {
    said: {
      car: 'c',
      item,
      saidOn: on,
      since,
      early: likely,
      likely,
      late,
      binding: 'km',
      engineVersion: 3,
      afterwards: false,
    },
    outcome,
    reachedOn: null,
    doneOn: null,
    knownUntil: on,
    daysOff: null,
    daysOutside: outside,
    atLeast: false,
  };
}
const car = (lines: JudgedLine[] | null): SaidCar => ({
  carId: 'c',
  name: 'Brindle',
  items: { oil: 'Engine oil', pads: 'Pads', belt: 'Belt', plugs: 'Plugs' },
  lines,
});
const names = (rows: { itemName: string }[]) => rows.map(({ itemName }) => itemName);

test('saidGroups() puts the farthest miss first, then what was inside, open by its likely day, the rest', () => {
  const groups = saidGroups([
    car([
      line('oil', 'earlier', { outside: 3 }),
      line('pads', 'later', { outside: 40 }),
      line('belt', 'inside', { outside: 0, on: '2026-01-05' }),
      line('plugs', 'inside', { outside: 0, on: '2026-02-02' }),
      line('oil', 'open', { since: '2026-03-01', likely: '2026-09-01' }),
      line('pads', 'open', { since: '2026-03-01', likely: '2026-08-01' }),
      line('belt', 'doneFirst', { since: '2026-03-01' }),
      line('plugs', 'notKnown', { since: '2026-03-01' }),
    ]),
    car(null),
  ]);
  expect(names(groups.missed)).toEqual(['Pads', 'Engine oil']);
  expect(names(groups.inside)).toEqual(['Plugs', 'Belt']);
  expect(names(groups.open)).toEqual(['Pads', 'Engine oil']);
  expect(names(groups.without)).toEqual(['Belt', 'Plugs']);
});

test('saidGroups() shows one row for an interval, what was said nearer the day beneath', () => {
  const first = line('oil', 'inside', { on: '2026-01-05' });
  const second = line('oil', 'earlier', { on: '2026-03-02', outside: 2 });
  const third = line('oil', 'inside', { on: '2026-05-04' });
  const { inside, missed } = saidGroups([car([third, first, second])]);
  expect(missed).toEqual([]);
  expect(inside).toHaveLength(1);
  expect(inside[0]).toMatchObject({ line: first, nearer: [second, third], carName: 'Brindle' });
});

test('saidGroups() does not count a day of the calendar among what was inside', () => {
  const came = line('belt', 'inside', { outside: 0, late: '2026-06-01' });
  const { inside, without } = saidGroups([car([came])]);
  expect(inside).toEqual([]);
  expect(names(without)).toEqual(['Belt']);
});
