import type { OilComparedRow } from '@quartermark/api/client';
import { LITRES_PER_1000_KM, US_QUARTS_PER_1000_MI } from '@quartermark/engine/display';
import { expect, test } from 'vitest';
import { intervalScale } from './interval-scale.ts';

const row = (road: [number, number, number], limit: number | null = null): OilComparedRow => ({
  carId: 'c',
  name: 'Tern',
  unit: 'km',
  status: 'inUse',
  asOf: '2026-06-15',
  limit,
  line: {
    status: 'ok',
    stop: null,
    level: null,
    road: { low: road[0], likely: road[1], high: road[2] },
    hard: null,
    ago: null,
    change: null,
    rise: null,
  },
});

test('intervalScale() puts all cars on one scale from zero, and cuts a band that would squeeze the others', () => {
  const scale = intervalScale([row([0.2, 0.4, 0.5]), row([0.5, 1, 4])], LITRES_PER_1000_KM);
  const wide = scale.interval({ low: 0.5, likely: 1, high: 4 });
  expect(wide).toMatchObject({ to: 1, cut: true });
  const narrow = scale.interval({ low: 0.2, likely: 0.4, high: 0.5 });
  expect(narrow.cut).toBe(false);
  expect(narrow.at / wide.at).toBeCloseTo(0.4, 9);
  expect(scale.place(0)).toBe(0);
});

test('intervalScale() keeps an owner’s limit in sight', () => {
  expect(intervalScale([row([0.1, 0.2, 0.3], 2)], LITRES_PER_1000_KM).place(2)).toBeLessThan(1);
});

test('intervalScale() has its numbers in the person’s units', () => {
  const scale = intervalScale([row([0.2, 0.588036, 0.9])], US_QUARTS_PER_1000_MI);
  const one = scale.ticks.find(({ words }) => words === '1');
  expect(one?.at).toBeCloseTo(scale.place(0.588036458), 6);
});
