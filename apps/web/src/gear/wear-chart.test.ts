import { analyseGear, type ComponentWear } from '@quartermark/engine/gear';
import { entry, gear } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { CHART, wearChart } from './wear-chart.ts';
import { captionOf, wearTable } from './wear-table.ts';

const mm = (text: string) => ({ text, unit: 'mm' as const });

/** Pads fitted to a car whose own book is given, four sessions before each measurement. */
function wearOf(values: readonly string[], more: object = {}): ComponentWear {
  const zone = 'Europe/Lisbon';
  const on = (index: number) => `2026-04-${String(2 * index + 1).padStart(2, '0')}`;
  const written = (told: object, recorded: number) =>
    entry.parse({ id: `e${recorded}`, zone, recorded, ...told });
  const uses = values.map((_, index) =>
    written(
      { kind: 'session', use: 'circuit', on: on(index), time: '10:00', car: 'a', sessions: 4 },
      index,
    ),
  );
  const own = [
    written({ kind: 'fit', component: 'set', change: 'on', on: '2026-03-01', car: 'a' }, 100),
    ...values.map((value, index) =>
      written(
        {
          kind: 'measure',
          component: 'set',
          on: on(index),
          time: '18:00',
          pads: [{ corner: 'frontLeft', inner: mm(value) }],
        },
        200 + index,
      ),
    ),
  ];
  const { life } = analyseGear({
    gear: gear.parse({
      id: 'set',
      gear: { kind: 'component', name: 'Pads', sort: 'pads', condition: 'new', ...more },
    }),
    asOf: '2026-06-01',
    zone,
    items: [],
    cars: [
      {
        format: 'log/1',
        asOf: '2026-06-01',
        garage: { zone },
        car: { id: 'a', unit: 'km', profile: {} },
        items: [],
        layUps: [],
        planned: [],
        entries: [...uses, ...own.slice(0, 1)],
      } as never,
    ],
    entries: own,
  });
  if (life?.wear == null) throw new Error('nothing was measured');
  return life.wear;
}
function drawn(values: readonly string[], more: object = {}) {
  const wear = wearOf(values, more);
  const [position] = wear.positions;
  if (position === undefined) throw new Error('no place');
  return { chart: wearChart(position, wear, 'km'), position, wear };
}

test('wearChart() draws points, line and minimum where their values are', () => {
  const { chart } = drawn(['11', '10', '9', '8']);
  const points = chart?.points ?? [];
  expect(points).toHaveLength(4);
  // 1 mm apart, so evenly spaced; more use further right, less left further down
  const drops = points.slice(1).map(({ y }, index) => y - (points[index]?.y ?? 0));
  for (const drop of drops) expect(drop).toBeCloseTo(drops[0] ?? Number.NaN, 0);
  expect(points.every(({ x }, index) => index === 0 || x > (points[index - 1]?.x ?? 0))).toBe(true);
  expect(chart?.floors.map(({ words }) => words)).toEqual(['3 mm (common practice)']);
  // five steps of 1 mm below the last point
  expect((chart?.floors[0]?.y ?? 0) - (points[3]?.y ?? 0)).toBeCloseTo(5 * (drops[0] ?? 0), 0);
  expect(chart?.likely).toMatch(/^M[\d.]+ [\d.]+(L[\d.]+ [\d.]+)+$/);
  const end = Number(chart?.likely?.split(' ').at(-1));
  expect(end).toBeGreaterThanOrEqual((chart?.floors[0]?.y ?? 0) - 1);
  expect(end).toBeLessThanOrEqual(CHART.height - CHART.bottom);
});

test('wearChart() draws no line through values that rise, and nothing of one', () => {
  const { chart, position } = drawn(['8', '11']);
  expect(chart).toMatchObject({ likely: null, low: null });
  expect(captionOf(position)).toBe('Front left inner pad against use. Dots: measured.');
  expect(drawn(['8']).chart).toBeNull();
});

test('wearChart() gives one line two names where minima lie together', () => {
  const { position, wear } = drawn(['11', '9'], { newDepth: mm('12') });
  const floors = (
    [
      ['owner', 3],
      ['lawEu', 1.6],
      ['lawUs', 1.5875],
    ] as const
  ).map(([whose, value]) => ({ whose, mm: value, left: null }));
  const chart = wearChart({ ...position, floors }, wear, 'km');
  expect(chart?.points[0]).toMatchObject({ isNew: true });
  expect(chart?.floors.map(({ words }) => words)).toEqual([
    '3 mm (your own value)',
    '1.6 mm (law, EU), 2/32 in (1.59 mm; law, US)',
  ]);
});

test('wearTable() says value, bounds, rate and use left of each place', () => {
  const [row] = wearTable(wearOf(['11', '10', '9', '8']), 'km');
  expect(row).toMatchObject({
    place: 'Front left inner pad',
    measured: '8 mm on 7 April 2026',
    rate: 'about 0.25 mm a session',
  });
  expect(row?.now).toMatch(/^8 mm \(7\.\d mm to 8\.\d mm\)$/);
  expect(row?.left[0]).toMatch(/^3 mm \(common practice\): in about (19|20) sessions, could be/);
});

test('wearTable() says what is not known, and what is reached', () => {
  expect(wearTable(wearOf(['8', '11']), 'km')[0]).toMatchObject({
    now: 'not known',
    rate: 'none: it rose',
    left: ['3 mm (common practice): not known'],
  });
  expect(wearTable(wearOf(['8']), 'km')[0]).toMatchObject({
    now: '8 mm',
    rate: 'one measurement, no rate yet',
  });
  expect(wearTable(wearOf(['5', '2.5']), 'km')[0]).toMatchObject({
    rate: expect.stringMatching(/rough so far$/),
    left: ['3 mm (common practice): reached'],
  });
});
