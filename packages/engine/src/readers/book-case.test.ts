import { expect, test } from 'vitest';
import { type BookDraft, book } from '../log/book.ts';
import { ENTRY_KINDS, type EntryDraft } from '../log/entry.ts';
import { bookCase } from './book-case.ts';

const zone = 'Europe/Lisbon';
const on = '2026-05-02';

type Extra = Partial<Pick<BookDraft, 'items' | 'layUps'>> & { car?: Partial<BookDraft['car']> };

/** A book of these entries; ids and ordinals are their places. */
function caseOf(drafts: object[], { car, ...extra }: Extra = {}) {
  const entries = drafts.map((draft, index) => ({
    id: `e${index}`,
    on,
    zone,
    recorded: index,
    ...draft,
  }));
  const draft = {
    format: 'log/1',
    asOf: '2026-06-01',
    garage: { zone },
    car: { id: 'c', unit: 'km', ...car },
    items: [
      {
        id: 'oil',
        name: 'Engine oil',
        role: 'engineOil',
        limits: [{ measure: 'months', value: 12 }],
      },
      {
        id: 'filter',
        name: 'Oil filter',
        role: 'oilFilter',
        limits: [{ measure: 'months', value: 12 }],
      },
      { id: 'fluid', name: 'Brake fluid', limits: [{ measure: 'months', value: 24 }] },
    ],
    layUps: [],
    planned: [],
    entries,
    ...extra,
  };
  return bookCase(book.parse(draft));
}

const brief = (drafts: object[], extra?: Extra) =>
  caseOf(drafts, extra).entries.map((entry) => {
    const { canonical, ...rest } = entry;
    expect(JSON.parse(canonical)).toEqual(rest);
    return rest;
  });
const km = (text: string) => ({ text, unit: 'km' });
const at = { id: 'e0', date: on, minute: null, recorded: 0 };

const READ_AS_READING: Record<string, object> = {
  odometer: {},
  fuel: { volume: { text: '40', unit: 'l' } },
  oilCheck: { level: { how: 'none' } },
  oilTopUp: {},
  fluid: { which: 'coolant' },
  inspection: { purpose: 'road', result: 'passed' },
  measure: {},
  fit: { component: 'set-1', change: 'on' },
  wheels: { change: 'torqued' },
  finding: { what: 'weep', severity: 'watch' },
  incident: { what: 'off' },
  layUp: {},
  wakeUp: {},
  repair: { text: 'valve cover' },
  labReport: {},
  handover: { what: 'bought' },
  answer: { notice: 'n', answer: 'a' },
  note: { note: 'x' },
};

test.each(Object.entries(READ_AS_READING))(
  'bookCase() reads a %s with an odometer value as a reading',
  (kind, members) => {
    expect(brief([{ kind, odometer: km('41 200'), ...members }])).toEqual([
      { type: 'reading', ...at, kind, odometerKm: 41200, hourMeterH: null },
    ]);
  },
);

test.each(Object.entries(READ_AS_READING).filter(([kind]) => kind !== 'odometer'))(
  'bookCase() reads a %s without an odometer value as nothing',
  (kind, members) => {
    expect(brief([{ kind, ...members }])).toEqual([]);
  },
);

test('bookCase() has a rule for every kind of the log', () => {
  const others = ['oilChange', 'drive', 'session', 'strip', 'service', 'meterReplaced'];
  expect([...Object.keys(READ_AS_READING), ...others].toSorted()).toEqual(ENTRY_KINDS.toSorted());
});

test('bookCase() reads miles as kilometres and an hour meter as hours', () => {
  const draft = {
    kind: 'odometer',
    odometer: { text: '1,000', unit: 'mi' },
    hourMeter: { text: '812.5', unit: 'h' },
  };
  expect(brief([draft])[0]).toMatchObject({ odometerKm: 1609.344, hourMeterH: 812.5 });
});

test('bookCase() reads an oil change as one service of the oil, with its odometer value', () => {
  const draft = { kind: 'oilChange', filterRenewed: false, odometer: km('5000') };
  expect(brief([draft])).toEqual([
    {
      type: 'service',
      ...at,
      kind: 'oilChange',
      items: ['oil'],
      odometerKm: 5000,
      hourMeterH: null,
      complete: false,
    },
  ]);
});

test('bookCase() counts the oil filter as done only if it was renewed', () => {
  expect(brief([{ kind: 'oilChange', filterRenewed: true }])[0]).toMatchObject({
    items: ['oil', 'filter'],
  });
});

test('bookCase() reads a service as that of its items', () => {
  const draft = { kind: 'service', items: ['fluid'], historyComplete: true, time: '07:00' };
  expect(brief([draft])[0]).toMatchObject({
    type: 'service',
    items: ['fluid'],
    complete: true,
    minute: 420,
    odometerKm: null,
  });
});

test('bookCase() reads a session with an odometer value as a use, then a reading at its end', () => {
  const draft = { kind: 'session', use: 'circuit', hours: 1.5, odometer: km('900'), time: '09:00' };
  const [use, reading, ...none] = brief([draft]);
  expect(use).toMatchObject({
    type: 'use',
    useClass: 'circuit',
    sessions: 1,
    hours: 1.5,
    distanceKm: null,
  });
  expect(reading).toMatchObject({ type: 'reading', odometerKm: 900, id: 'e0', minute: 540 });
  expect(none).toEqual([]);
});

test('bookCase() counts the days of a road trip without distance, both ends included', () => {
  const trip = { kind: 'drive', use: 'touring', until: '2026-05-06' };
  expect(brief([trip])[0]).toMatchObject({ sessions: 5, distanceKm: null, endDate: '2026-05-06' });
  expect(brief([{ ...trip, distance: km('1450') }])[0]).toMatchObject({
    sessions: null,
    distanceKm: 1450,
  });
  expect(brief([{ kind: 'drive', use: 'road' }])[0]).toMatchObject({ sessions: null });
});

test('bookCase() puts the odometer value of a road trip on its last day', () => {
  const trip = {
    kind: 'drive',
    use: 'touring',
    until: '2026-05-06',
    time: '08:00',
    odometer: km('900'),
  };
  expect(brief([trip])[1]).toMatchObject({ type: 'reading', date: '2026-05-06', minute: null });
});

test('bookCase() counts as many launches as passes unless said otherwise', () => {
  const day = { kind: 'strip', passes: [{}, {}, {}] };
  expect(brief([day])[0]).toMatchObject({ useClass: 'strip', launches: 3, distanceKm: null });
  expect(brief([{ ...day, launches: 5 }])[0]).toMatchObject({ launches: 5, passes: 3 });
});

test('bookCase() reads an exchanged meter as a reset on both scales', () => {
  const draft = {
    kind: 'meterReplaced',
    meter: 'odometer',
    oldLast: { text: '100', unit: 'mi' },
    newFirst: km('3'),
  };
  expect(brief([draft])).toEqual([
    {
      type: 'meterReset',
      ...at,
      kind: 'meterReplaced',
      meter: 'odo',
      oldValue: 160.9344,
      newValue: 3,
    },
  ]);
  const hours = { kind: 'meterReplaced', meter: 'hours', newFirst: { text: '0', unit: 'h' } };
  expect(brief([hours])[0]).toMatchObject({ meter: 'hours', oldValue: null, newValue: 0 });
});

test('bookCase() drops tombstones', () => {
  expect(brief([{ kind: 'odometer', odometer: km('1'), removed: true, revision: 2 }])).toEqual([]);
});

test('bookCase() puts what was said to be before driving first, after driving last', () => {
  const draft: Partial<EntryDraft> = { kind: 'service', items: ['fluid'] };
  expect(brief([{ ...draft, dayOrder: 'beforeDriving' }])[0]?.minute).toBe(0);
  expect(brief([{ ...draft, dayOrder: 'afterDriving' }])[0]?.minute).toBe(1439);
});

test('bookCase() converts limits typed in miles, hard-use ones too, and the starting point', () => {
  const limits = [
    { measure: 'km' as const, value: 7500, unit: 'mi' as const, weights: { circuit: 12 } },
  ];
  const item = {
    id: 'x',
    name: 'X',
    limits,
    severe: { classes: ['circuit' as const], share: 0.5, limits },
    baseline: { on, time: '06:30', odometer: { text: '10', unit: 'mi' as const } },
  };
  const [mapped] = caseOf([], { items: [item] }).items;
  const expected = [{ measure: 'km', value: 12070.08, weights: { circuit: 12 } }];
  expect(mapped).toMatchObject({
    limits: expected,
    severe: { measure: 'km', basis: 'limit', share: 0.5, limits: expected },
    baseline: { date: on, minute: 390, odometerKm: 16.09344, complete: false },
    warnDays: 14,
    leadDays: 0,
  });
});

test('bookCase() keeps what is not known of the car apart from what is switched off', () => {
  expect(caseOf([]).car).toMatchObject({ odoDigits: null, hemisphere: null, roadKmh: 45 });
  expect(caseOf([], { car: { roadKmh: null } }).car.roadKmh).toBeNull();
});

test('bookCase() takes the lay-ups as storage, an open one without an end', () => {
  const layUps = [{ id: 'w', start: '2025-11-01' }];
  expect(caseOf([], { layUps }).storage).toEqual([{ id: 'w', start: '2025-11-01', end: null }]);
});
