import fc from 'fast-check';
import { expect, test } from 'vitest';
import { canonicalJson } from '../log/canonical-json.ts';
import type { DueDocument } from './analyse-file.ts';
import { analyseFile } from './analyse-file.ts';
import { FileShapeError } from './file-shape-error.ts';

const zone = 'Europe/Lisbon';
const emptyBook = {
  format: 'log/1',
  asOf: '2026-06-01',
  garage: { zone },
  car: { id: 'c', unit: 'km' },
  items: [],
  layUps: [],
  planned: [],
  entries: [],
};

function refusal(json: unknown): string {
  try {
    analyseFile(json);
  } catch (error) {
    if (error instanceof FileShapeError) return error.message;
    throw error;
  }
  return '';
}

const due = (more: object) =>
  analyseFile({ schema: 1, asOf: '2026-06-01', ...more }) as DueDocument;

test('analyseFile() takes the first shape that fits: format, then logbook, then schema', () => {
  const logbook = { car: { id: 'inner' }, entries: [] };
  expect(refusal({ ...emptyBook, logbook, schema: 1 })).toMatch(/could not read the book/);
  expect(analyseFile(emptyBook).car).toBe('c');
  expect(analyseFile({ schema: 1, asOf: '2026-06-01', logbook }).car).toBe('inner');
  expect(due({ car: { id: 'd' } }).car).toBe('d');
});

test('analyseFile() knows an oil log by its span and dated entries', () => {
  const car = { id: 'o', spanL: 1 };
  expect(analyseFile({ car, entries: [{ at: '2026-05-02', kind: 'note' }] })).toHaveProperty('oil');
  expect(refusal({ car, entries: [] })).toMatch(/its members: "car", "entries"/);
});

test.each([[null], [[]], ['text'], [5]])(
  'analyseFile() refuses %j, which holds no object',
  (json) => {
    expect(refusal(json)).toMatch(/it should hold one object/);
  },
);

test('analyseFile() names the members of a file it does not know, and a newer format', () => {
  expect(refusal({ format: 'log/9', cars: [] })).toMatch(
    /its members: "format", "cars"\. "format" is "log\/9"\. It should have/,
  );
});

test('analyseFile() refuses a book naming path, value and mend', () => {
  const entries = [
    {
      id: 'e',
      on: '2026-05-02',
      zone,
      recorded: 1,
      kind: 'odometer',
      odometer: { text: 'x', unit: 'km' },
    },
  ];
  expect(refusal({ ...emptyBook, entries })).toMatch(
    /entries\[0\]\.odometer\.text is "x": odometer: "x" is not a number; write digits/,
  );
  const { asOf: _, ...undated } = emptyBook;
  expect(refusal(undated)).toMatch(/asOf is missing/);
});

test('analyseFile() leaves out of each document what its shape has no data for', () => {
  expect(analyseFile(emptyBook)).toHaveProperty('lastLevel', null);
  expect(due({})).not.toHaveProperty('lastLevel');
  expect(analyseFile({ logbook: { entries: [] } })).not.toHaveProperty('items');
  expect(analyseFile({ logbook: { entries: [] } })).not.toHaveProperty('asOf');
});

test('analyseFile() adds the history only where it is asked for', () => {
  const entries = [{ type: 'reading', date: '2026-05-02', odo: 5 }];
  const file = { schema: 1, asOf: '2026-06-01', entries };
  expect(analyseFile(file)).not.toHaveProperty('history');
  expect(analyseFile(file, { history: true })).toMatchObject({
    history: { entries: [{ on: '2026-05-02', kind: 'reading' }], odometer: [{ value: 5 }] },
  });
});

test.each([
  [{ type: 'reading', date: '2026-05-02', odo: -5 }, 'odo -5'],
  [{ type: 'reading', date: '2026-05-02', odo: 5, unit: 'furlong' }, 'unit "furlong"'],
  [{ type: 'reading', date: '2026-05-02', odo: '5' }, 'odo "5"'],
  [{ type: 'use', date: '2026-05-02', class: 'flight' }, 'class "flight"'],
  [
    { type: 'use', date: '2026-05-02', class: 'road', endDate: '2026-05-01' },
    'endDate "2026-05-01"',
  ],
  [{ type: 'use', date: '2026-05-02', class: 'road', km: -1 }, 'km -1'],
  [{ type: 'service', date: '2026-05-02', items: [7] }, 'items 7'],
  [{ type: 'reading', date: '2026-02-30' }, 'date "2026-02-30"'],
  [{ type: 'reading', date: '2026-05-02', time: '25:00' }, 'time "25:00"'],
  [{ type: 'dance', date: '2026-05-02' }, 'type "dance"'],
  ['nothing', 'entry "nothing"'],
])('analyseFile() makes a flag of the odd value in %j', (entry, value) => {
  const { flags } = due({ entries: [entry] });
  expect(flags.map((flag) => [flag.code, flag.value])).toContainEqual(['valueIgnored', value]);
});

test('analyseFile() leaves an odd limit out and keeps the others', () => {
  const limits = [
    { measure: 'km', value: -5 },
    { measure: 'months', value: 12 },
  ];
  const { items, flags } = due({ items: [{ id: 'x', limits, baseline: { date: '2026-01-31' } }] });
  expect(items[0]?.limits.map(({ measure }) => measure)).toEqual(['months']);
  expect(flags).toHaveLength(1);
});

test('analyseFile() lets leadDays alone serve as the warning too', () => {
  const item = {
    id: 'x',
    limits: [{ measure: 'days', value: 30 }],
    baseline: { date: '2026-05-13' },
  };
  expect(due({ items: [{ ...item, leadDays: 4 }] }).items[0]?.state).toBe('dueSoon');
  expect(due({ items: [{ ...item, leadDays: 3 }] }).items[0]?.state).not.toBe('dueSoon');
});

test('analyseFile() reads the older name of the ordinal', () => {
  const use = (seq: number, odo: number) => ({ type: 'reading', date: '2026-05-02', odo, seq });
  const file = { schema: 1, asOf: '2026-06-01', entries: [use(2, 5), use(1, 5)] };
  expect(analyseFile(file)).toMatchObject({ flags: [] });
});

test('analyseFile() refuses a due file whose lists or day are none', () => {
  expect(refusal({ schema: 1, asOf: 'today' })).toMatch(/"asOf" is "today", it should be a date/);
  expect(refusal({ schema: 1, asOf: '2026-06-01', entries: {} })).toMatch(/"entries" is \{\}/);
});

const odd = fc.oneof(
  fc.constantFrom(
    null,
    true,
    'text',
    '',
    '5',
    -1,
    0,
    0.5,
    1,
    1e9,
    1e308,
    -1e308,
    Number.POSITIVE_INFINITY,
    [],
    {},
  ),
  fc.constantFrom(
    '2026-05-02',
    '2026-02-30',
    '1900-01-01',
    '2199-12-31',
    '0001-01-01',
    '9999-12-31',
  ),
);
const loosely = (members: Record<string, fc.Arbitrary<unknown>>) =>
  fc.record(
    Object.fromEntries(
      Object.entries(members).map(([name, usual]) => [
        name,
        fc.oneof({ weight: 9, arbitrary: usual }, { weight: 1, arbitrary: odd }),
      ]),
    ),
    { requiredKeys: [] },
  );
const day = fc.constantFrom('2025-01-31', '2026-03-01', '2026-05-02', '2026-05-02', '2026-07-01');
const amount = fc.nat(50_000);
const useClass = fc.constantFrom('road', 'touring', 'circuit', 'strip', 'autocross');
const unit = fc.constantFrom('km', 'mi');
const dueEntry = loosely({
  type: fc.constantFrom('reading', 'use', 'service', 'meterReset'),
  date: day,
  endDate: day,
  time: fc.constantFrom('07:00', '23:59'),
  recorded: fc.nat(),
  class: useClass,
  odo: amount,
  hourMeter: amount,
  km: amount,
  hours: fc.nat(20),
  sessions: fc.nat(20),
  launches: fc.nat(20),
  items: fc.constant(['x']),
  complete: fc.boolean(),
  meter: fc.constantFrom('odo', 'hours'),
  oldValue: amount,
  newValue: amount,
  unit,
  oldUnit: unit,
});
const limit = loosely({
  measure: fc.constantFrom('km', 'hours', 'sessions', 'launches', 'months', 'days', 'date'),
  value: fc.oneof(amount, day),
  unit,
  weights: loosely({ circuit: fc.nat(12), road: fc.nat(2) }),
});
const dueFile = loosely({
  car: loosely({ id: fc.constant('c'), unit, odoDigits: fc.nat(9), roadKmh: fc.nat(100) }),
  entries: fc.array(fc.oneof(dueEntry, odd), { maxLength: 12 }),
  storage: fc.array(fc.oneof(loosely({ start: day, end: day }), odd), { maxLength: 3 }),
  items: fc.array(
    fc.oneof(
      loosely({
        id: fc.constantFrom('x', 'y'),
        warnDays: fc.nat(60),
        leadDays: fc.nat(60),
        limits: fc.array(fc.oneof(limit, odd), { maxLength: 3 }),
        severe: loosely({
          classes: fc.constant(['circuit']),
          measure: fc.constantFrom('km', 'hours'),
          share: fc.constant(0.5),
          basis: fc.constantFrom('limit', 'used'),
          limits: fc.array(limit, { maxLength: 2 }),
        }),
        baseline: loosely({ date: day, time: fc.constant('07:00'), odo: amount, unit }),
      }),
      odd,
    ),
    { maxLength: 3 },
  ),
}).map((file) => ({ ...file, schema: 1, asOf: '2026-06-01' }));

const condition = loosely({ state: fc.constantFrom('cold', 'hotIdle'), minutesAfterStop: amount });
const oilFile = loosely({
  car: loosely({
    spanL: fc.constant(1),
    capacityL: amount,
    readingProcedure: condition,
    drySump: fc.boolean(),
  }),
  asOf: loosely({ at: day, odometerKm: amount }),
  entries: fc.array(
    fc.oneof(
      loosely({
        at: day,
        kind: fc.constantFrom('reading', 'topUp', 'oilChange', 'use', 'odometerReplaced', 'repair'),
        id: fc.constantFrom('a', 'b'),
        recorded: fc.nat(),
        deleted: fc.boolean(),
        odometerKm: amount,
        level: fc.constantFrom(0.5, 'none'),
        levelAfter: fc.constant(1),
        volumeL: fc.constant(1),
        condition,
      }),
      odd,
    ),
    { maxLength: 12 },
  ),
}).map((logbook) => ({ logbook }));

test('analyseFile() never fails on odd values but by refusing a wrong shape, and says only finite numbers', () => {
  fc.assert(
    fc.property(fc.oneof(dueFile, oilFile), (file) => {
      try {
        // throws for a number that is not finite
        expect(canonicalJson(analyseFile(file))).toMatch(/^\{/);
      } catch (error) {
        if (!(error instanceof FileShapeError)) throw error;
      }
    }),
    { numRuns: 2000 },
  );
});
