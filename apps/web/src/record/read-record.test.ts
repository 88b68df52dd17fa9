import { type EntryDraft, type EntryInput, entryInput } from '@quartermark/engine/log';
import { describe, expect, test } from 'vitest';
import { type ReadRecord, readRecord } from './read-record.ts';
import { emptyFields, fieldsOf, type RecordFields, type Start } from './record-fields.ts';
import { type FormKind, type RecordKind, recordKindOf } from './record-kinds.ts';

const start: Start = {
  entryId: 'e-1',
  today: '2026-06-15',
  unit: 'km',
  volumeUnit: 'l',
  last: null,
};
const COMMON = { id: 'e-1', car: 'c-1', zone: 'Europe/Berlin', on: '2026-05-02' };
const fresh = (kind: FormKind) => ({ kind, car: 'c-1', zone: 'Europe/Berlin' });

function readNew(kind: RecordKind, more: Partial<RecordFields> = {}): ReadRecord {
  const fields = { ...emptyFields(start), ...more };
  return readRecord(fields, { base: null, fresh: fresh(kind) });
}

function amended(entry: EntryInput, change: (fields: RecordFields) => RecordFields): ReadRecord {
  const kind = recordKindOf(entry.kind) ?? 'other';
  return readRecord(change(fieldsOf(entry, 1, start)), { base: entry, fresh: fresh(kind) });
}

const of = (draft: object) => entryInput.parse({ ...COMMON, ...draft } as EntryDraft);

/** One of each form and of some kinds without one, with members that no form shows. */
const STORED: readonly EntryInput[] = [
  of({ kind: 'odometer', odometer: { text: '38,412', unit: 'mi' }, time: '07:05' }),
  of({
    kind: 'odometer',
    odometer: { text: '41 350', unit: 'km' },
    hourMeter: { text: '812.5', unit: 'h' },
    dayOrder: 'beforeDriving',
  }),
  of({
    kind: 'fuel',
    volume: { text: '41,20', unit: 'l' },
    octane: 98,
    full: true,
    price: '70.11 €',
  }),
  of({
    kind: 'oilCheck',
    level: { how: 'fraction', fraction: 0.6 },
    condition: { state: 'hotStopped', minutesAfterStop: 5, oilTempC: 92 },
  }),
  of({ kind: 'oilCheck', level: { how: 'fraction', fraction: 0.5 }, photos: ['p-1'] }),
  of({ kind: 'oilCheck', level: { how: 'fromMax', litres: -0.4 }, note: ' two lines\nof it ' }),
  of({
    kind: 'oilTopUp',
    volume: { text: '0,30', unit: 'l' },
    toMax: true,
    levelBefore: { how: 'fraction', fraction: 0.25, step: 0.25 },
    product: 'House blend',
    condition: { state: 'hotIdle' },
  }),
  of({
    kind: 'oilChange',
    filled: { text: '6.2', unit: 'l' },
    drained: { text: '6', unit: 'usQt' },
    filterRenewed: false,
    levelAfter: { how: 'fraction', fraction: 0.9 },
    grade: '10W-60',
  }),
  of({
    kind: 'drive',
    use: 'touring',
    distance: { text: '1 450', unit: 'km' },
    until: '2026-05-06',
  }),
  of({
    kind: 'session',
    use: 'autocross',
    sessions: 2,
    hours: 0.4,
    laps: 8,
    venue: 'Old Works',
    oilTempPeak: { text: '241', unit: 'f' },
    fuelUsed: { text: '12', unit: 'l' },
    event: 'event-1',
    pressuresCold: { frontLeft: { text: '1.8', unit: 'bar' } },
    driver: 'Tam',
    remarks: 'Dusty.',
  }),
  of({
    kind: 'strip',
    passes: [{ lane: 'left', at4thS: 12.841, pressure: { text: '1.1', unit: 'bar' } }, {}],
    launches: 3,
    weather: 'dry',
  }),
  of({
    kind: 'service',
    items: ['i-1', 'i-2'],
    parts: ['seal', 'washer'],
    fasteners: ['drain plug'],
    byWhom: 'own work',
    historyComplete: true,
  }),
  of({ kind: 'note', note: 'Rattle from the left.' }),
  of({ kind: 'wheels', change: 'torqued', torque: { text: '120', unit: 'nm' } }),
  of({ kind: 'layUp', until: '2026-08-01', keysAt: 'the hook' }),
];

describe('readRecord() of an amendment', () => {
  test.each(STORED.map((entry) => [entry.kind, entry] as const))(
    'gives back %s as it is stored while nothing is changed',
    (_kind, entry) => {
      expect(amended(entry, (fields) => fields)).toEqual({ entry });
    },
  );

  test('changes what was changed and keeps what no form shows', () => {
    const session = STORED.find(({ kind }) => kind === 'session') as EntryInput;
    const read = amended(session, (fields) => ({
      ...fields,
      session: { ...fields.session, sessions: 3, laps: '' },
    }));
    const { laps: _, ...rest } = session as EntryInput & { laps: number };
    expect(read).toEqual({ entry: { ...rest, sessions: 3 } });
  });

  test('takes a time instead of a place in the day', () => {
    const entry = of({ kind: 'note', note: 'x', dayOrder: 'afterDriving' });
    expect(amended(entry, (fields) => ({ ...fields, time: '09:00' }))).toEqual({
      entry: of({ kind: 'note', note: 'x', time: '09:00' }),
    });
  });
});

describe('readRecord() of a new entry', () => {
  test('leaves out what was left empty', () => {
    expect(readNew('drive')).toEqual({
      entry: of({ kind: 'drive', use: 'road', on: start.today }),
    });
  });

  test('keeps figures letter for letter', () => {
    const volume = { text: '0,30', unit: 'l' };
    const oilTopUp = { ...emptyFields(start).oilTopUp, volume };
    expect(readNew('oilTopUp', { oilTopUp })).toMatchObject({ entry: { volume } });
  });

  test('makes as many passes as were counted, those written out first', () => {
    const strip = { ...emptyFields(start).strip, passes: 3 };
    expect(readNew('strip', { strip })).toMatchObject({ entry: { passes: [{}, {}, {}] } });
  });

  test.each([
    ['odometer', 'entry.odometer.text'],
    ['fuel', 'entry.volume.text'],
    ['oilCheck', 'entry.level'],
    ['oilTopUp', 'entry.volume.text'],
    ['oilChange', 'entry.filterRenewed'],
    ['service', 'entry.items'],
    ['note', 'entry.note'],
  ] as const)('says of an empty %s that %s is to be filled in, and nothing else', (kind, path) => {
    const read = readNew(kind);
    expect(read).toHaveProperty('problems');
    expect('problems' in read && Object.keys(read.problems)).toEqual([path]);
  });

  test.each([
    ['-0.5', /-0\.5 is outside 0 to/],
    ['half a litre', /"half a litre" is not a number/],
    ['400', /400 l is outside 0\.01 to 15 litres/],
  ])('says of %s litres of oil how to mend it', (text, words) => {
    const oilTopUp = { ...emptyFields(start).oilTopUp, volume: { text, unit: 'l' } };
    const read = readNew('oilTopUp', { oilTopUp });
    expect('problems' in read && read.problems['entry.volume.text']).toMatch(words);
  });

  test('puts what the schema leaves to its library into words', () => {
    const { fuel } = emptyFields(start);
    const volume = { text: '40', unit: 'l' };
    const high = readNew('fuel', { fuel: { ...fuel, volume, octane: '980' } });
    expect(high).toEqual({ problems: { 'entry.octane': 'At most 130; check the figure.' } });
    const long = readNew('fuel', { fuel: { ...fuel, volume, price: 'x'.repeat(201) } });
    expect('problems' in long && long.problems['entry.price']).toMatch(/Longer than 200/);
  });

  test.each([0, 1.5, 101, null])('refuses %s passes', (passes) => {
    const strip = { ...emptyFields(start).strip, passes };
    expect(readNew('strip', { strip })).toHaveProperty(['problems', 'entry.passes']);
  });

  test('asks for a day, and for one that exists', () => {
    const { drive } = emptyFields(start);
    expect(readNew('drive', { drive, on: '' })).toHaveProperty(['problems', 'entry.on']);
    const missing = readNew('drive', { on: '2026-02-30' });
    expect('problems' in missing && missing.problems['entry.on']).toMatch(/does not exist/);
  });
});
