import { type AnalyseDocument, analyseFile } from '@quartermark/engine';
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import dst from './data/dst-nights.json' with { type: 'json' };

// The same car must be told the same days whatever unit its log is written in, and wherever the machine
// stands that reads it.

const MILE = 1.609344;
const day = (month: number, date: number, year = 2025) =>
  `${year}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`;
const anyDay = fc
  .record({ month: fc.integer({ min: 1, max: 12 }), date: fc.integer({ min: 1, max: 28 }) })
  .map(({ month, date }) => day(month, date));
const miles = fc.integer({ min: 0, max: 60_000 });

const entry = fc.oneof(
  fc.record({ type: fc.constant('reading'), date: anyDay, odo: miles }),
  fc.record({
    type: fc.constant('use'),
    date: anyDay,
    class: fc.constantFrom('road', 'touring', 'circuit', 'strip', 'autocross'),
    km: fc.option(fc.integer({ min: 0, max: 500 }), { nil: undefined }),
    sessions: fc.option(fc.integer({ min: 0, max: 8 }), { nil: undefined }),
    plannedOn: fc.option(anyDay, { nil: undefined }),
  }),
  fc.record({
    type: fc.constant('service'),
    date: anyDay,
    items: fc.constant(['oil']),
    odo: fc.option(miles, { nil: undefined }),
  }),
  fc.record({
    type: fc.constant('meterReset'),
    date: anyDay,
    meter: fc.constant('odo'),
    oldValue: fc.option(miles, { nil: undefined }),
    newValue: fc.integer({ min: 0, max: 900 }),
  }),
);
const carInMiles = fc.record({
  schema: fc.constant(1),
  asOf: fc.constantFrom('2025-12-31', '2026-03-01', '2026-08-15'),
  car: fc.record({ hemisphere: fc.constantFrom('N', 'S', undefined), unit: fc.constant('mi') }),
  entries: fc
    .array(entry, { maxLength: 25 })
    .map((list) => list.map((it, at) => ({ ...it, recorded: at }))),
  storage: fc.constantFrom([], [{ start: '2025-11-01', end: '2026-03-20' }]),
  planned: fc.array(
    fc.record({
      date: fc.constantFrom('2026-01-10', '2026-04-04', '2026-09-12'),
      class: fc.constantFrom('circuit', 'touring'),
      km: fc.integer({ min: 0, max: 400 }),
      sessions: fc.nat(8),
    }),
    { maxLength: 3 },
  ),
  items: fc.integer({ min: 100, max: 30_000 }).map((value) => [
    {
      id: 'oil',
      limits: [
        { measure: 'km', value, weights: { circuit: 4 } },
        { measure: 'months', value: 12 },
      ],
      severe: {
        classes: ['circuit'],
        measure: 'km',
        share: 0.1,
        basis: 'limit',
        limits: [{ measure: 'km', value: value / 2 }],
      },
      baseline: { date: '2025-01-01', odo: 0 },
    },
  ]),
});

/** The same with every distance in kilometres. */
function inKilometres(value: unknown, name = '', of: Record<string, unknown> = {}): unknown {
  const isDistance =
    ['km', 'odo', 'oldValue', 'newValue'].includes(name) ||
    (name === 'value' && of.measure === 'km');
  if (typeof value === 'number') return isDistance ? value * MILE : value;
  if (name === 'unit') return 'km';
  if (Array.isArray(value)) return value.map((it) => inKilometres(it));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, it]) => [
      key,
      inKilometres(it, key, value as Record<string, unknown>),
    ]),
  );
}

const itemsOf = (file: unknown) =>
  (analyseFile(JSON.parse(JSON.stringify(file))) as Extract<AnalyseDocument, { items: unknown }>)
    .items;

describe('analyseFile() of a log in miles', () => {
  it('says the same of every item as of the same log in kilometres', () => {
    fc.assert(
      fc.property(carInMiles, (file) => {
        expect(itemsOf(inKilometres(file))).toEqual(itemsOf(file));
      }),
      { numRuns: 300 },
    );
  });

  it('would not if the miles were taken as kilometres', () => {
    const file = fc.sample(carInMiles, { numRuns: 20, seed: 1 });
    const wrong = file.filter(
      (it) =>
        JSON.stringify(itemsOf({ ...it, car: { ...it.car, unit: 'km' } })) !==
        JSON.stringify(itemsOf(it)),
    );
    expect(wrong.length).toBeGreaterThan(15);
  });
});

describe('analyseFile() on a machine in any zone', () => {
  const home = process.env.TZ;
  afterEach(() => {
    if (home === undefined) delete process.env.TZ;
    else process.env.TZ = home;
  });

  /** A log whose days all lie on and beside a night of the list. */
  const fileAt = ({ day: night, before, after }: (typeof dst.nights)[number]) => ({
    schema: 1,
    asOf: after,
    car: { hemisphere: 'N' },
    entries: [
      { type: 'service', date: '2024-05-01', items: ['oil'], odo: 10_000 },
      { type: 'reading', date: before, time: '23:59', odo: 14_000 },
      { type: 'use', date: before, endDate: after, class: 'circuit', sessions: 6, km: 240 },
      { type: 'reading', date: night, time: '02:30', odo: 14_100 },
      { type: 'reading', date: after, odo: 14_320 },
    ],
    storage: [{ start: '2024-11-01', end: '2024-12-24' }],
    planned: [{ id: 'next', date: after, endDate: after, class: 'circuit', sessions: 4 }],
    items: [
      {
        id: 'oil',
        limits: [
          { measure: 'km', value: 6000, weights: { circuit: 3 } },
          { measure: 'months', value: 24 },
          { measure: 'days', value: 700 },
        ],
      },
    ],
  });

  it.each(dst.nights)('says the same about the night of $day in $zone', (night) => {
    const said = dst.zones.map((zone) => {
      process.env.TZ = zone;
      return JSON.stringify(itemsOf(fileAt(night)));
    });
    expect(new Set(said).size).toBe(1);
  });

  it('is asked in zones that do differ', () => {
    const hours = dst.zones.map((zone) => {
      process.env.TZ = zone;
      return new Date(2025, 2, 30, 12).toISOString();
    });
    expect(new Set(hours).size).toBe(dst.zones.length);
  });
});
