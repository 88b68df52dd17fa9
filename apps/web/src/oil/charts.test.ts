import { type OilStory, oilStory, readBook } from '@quartermark/engine';
import { describe, expect, it, test } from 'vitest';
import { between, END, FOOT, FRAME, odometerAhead } from './chart-frame.ts';
import { levelChart } from './level-chart.ts';
import { useChart } from './use-chart.ts';

const reading = (at: number, on: string, odo: number, fraction: number) => ({
  id: `00000000-0000-7000-8000-00000000000${at}`,
  recorded: at,
  revision: 1,
  removed: false,
  kind: 'oilCheck',
  on,
  zone: 'Europe/London',
  odometer: { text: String(odo), unit: 'km' },
  level: { how: 'fraction', fraction, step: 0.25 },
});
const story = (rows: readonly ReturnType<typeof reading>[]): OilStory =>
  oilStory(
    readBook({
      format: 'log/1',
      asOf: '2026-06-15',
      garage: { zone: 'Europe/London' },
      car: {
        id: '00000000-0000-7000-8000-0000000000ff',
        unit: 'km',
        profile: { oilSpanL: 1 },
      },
      items: [],
      layUps: [],
      planned: [],
      entries: rows,
    }),
  );
const FOUR = [
  reading(1, '2026-03-01', 40_000, 1),
  reading(2, '2026-03-20', 40_900, 0.75),
  reading(3, '2026-04-20', 41_900, 0.25),
  reading(4, '2026-06-12', 42_900, 0),
];
const odometer = { readingKm: 42_900, totalKm: 2900 };
const units = { unit: 'km', distanceUnit: 'km', volumeUnit: 'l' } as const;

test('between() gives round numbers of a scale that does not begin at zero', () => {
  expect(between(41_200, 44_100, 4)).toEqual([42_000, 43_000, 44_000]);
  expect(between(0, 10, 5)).toEqual([0, 2, 4, 6, 8, 10]);
});

test('odometerAhead() matches the log with the odometer, unless the instrument was exchanged', () => {
  expect(odometerAhead(odometer, 0)).toBe(40_000);
  expect(odometerAhead({ readingKm: 500, totalKm: 12_000 }, 0)).toBeNull();
  expect(odometerAhead(null, 0)).toBeNull();
});

describe('levelChart()', () => {
  it('draws each reading at its height between the marks, along the odometer', () => {
    const chart = levelChart(story(FOUR), odometer, 'km');
    expect(chart?.along.words).toBe('odometer, km');
    expect(chart?.along.ticks.map(({ words }) => words)).toContain('42,000');
    const [full, , , min] = chart?.dots ?? [];
    expect(full).toMatchObject({ x: FRAME.left, y: chart?.max, look: 'sound' });
    expect(min).toMatchObject({ x: END, y: chart?.min });
    expect(chart?.max).toBeLessThan(chart?.min ?? 0);
  });

  it('makes no picture of one entry', () => {
    expect(levelChart(story(FOUR.slice(0, 1)), odometer, 'km')).toBeNull();
  });
});

describe('useChart()', () => {
  it('draws the road rate where there is one, within the frame, and no hard use that was never logged', () => {
    const told = story(FOUR);
    const chart = useChart(told, odometer, units);
    expect(chart?.hard).toBeNull();
    const heights = [...(chart?.road.likely.matchAll(/[ML][\d.]+ ([\d.]+)/g) ?? [])].map((it) =>
      Number(it[1]),
    );
    expect(heights.length).toBeGreaterThan(1);
    for (const y of heights) {
      expect(y).toBeGreaterThanOrEqual(FRAME.top);
      expect(y).toBeLessThanOrEqual(FOOT);
    }
  });

  it('makes no picture while there is no rate', () => {
    expect(useChart(story(FOUR.slice(0, 2)), odometer, units)).toBeNull();
  });
});
