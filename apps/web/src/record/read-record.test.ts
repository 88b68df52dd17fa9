import { ENTRY_KINDS, type EntryInput, type EntryKind } from '@quartermark/engine/log';
import { describe, expect, test } from 'vitest';
import { type ReadRecord, readRecord } from './read-record.ts';
import { emptyFields, fieldsOf, type RecordFields } from './record-fields.ts';
import { of, SAMPLE_ENTRIES } from './sample-entries.ts';
import type { Start } from './start.ts';

const start: Start = {
  entryId: 'e-1',
  today: '2026-06-15',
  unit: 'km',
  volumeUnit: 'l',
  last: null,
};
const fresh = (kind: EntryKind) => ({ kind, car: 'c-1', zone: 'Europe/Berlin' });

function readNew(kind: EntryKind, more: Partial<RecordFields> = {}): ReadRecord {
  const fields = { ...emptyFields(start), ...more };
  return readRecord(fields, { base: null, fresh: fresh(kind) });
}

function amended(entry: EntryInput, change: (fields: RecordFields) => RecordFields): ReadRecord {
  return readRecord(change(fieldsOf(entry, 1, start)), { base: entry, fresh: fresh(entry.kind) });
}

test('SAMPLE_ENTRIES holds every kind of the log', () => {
  expect(new Set(SAMPLE_ENTRIES.map(({ kind }) => kind))).toEqual(new Set(ENTRY_KINDS));
});

describe('readRecord() of an amendment', () => {
  test.each(SAMPLE_ENTRIES.map((entry) => [entry.kind, entry] as const))(
    'has the fields of %s come back as they were after it was read',
    (_kind, entry) => {
      const fields = fieldsOf(entry, 1, start);
      const read = amended(entry, (same) => same);
      expect('entry' in read && fieldsOf(read.entry, 1, start)).toEqual(fields);
    },
  );

  test.each(SAMPLE_ENTRIES.map((entry) => [entry.kind, entry] as const))(
    'gives back %s as it is stored while nothing is changed',
    (_kind, entry) => {
      expect(amended(entry, (fields) => fields)).toEqual({ entry });
    },
  );

  test('changes what was changed and keeps what no form shows', () => {
    const session = SAMPLE_ENTRIES.find(({ kind }) => kind === 'session') as EntryInput;
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
    ['fluid', 'entry.which'],
    ['measure', 'entry.readings'],
    ['wheels', 'entry.change'],
    ['incident', 'entry.what'],
    ['repair', 'entry.text'],
    ['meterReplaced', 'entry.newFirst.text'],
    ['handover', 'entry.what'],
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

describe('readRecord() of a list with empty rows', () => {
  const { measure, labReport, layUp } = emptyFields(start);

  test('names a wrong reading at its place in the form, empty rows counted', () => {
    const tread = measure.tread.map((row, at) =>
      at === 4 ? { ...row, depth: { text: 'deep', unit: 'mm' } } : row,
    );
    const read = readNew('measure', { measure: { ...measure, tread } });
    expect('problems' in read && Object.keys(read.problems)).toEqual(['entry.tread.4.depth.text']);
  });

  test('names a wrong weight of a disc at its place', () => {
    const discs = measure.discs.map((row, at) => (at === 2 ? { ...row, massG: 'heavy' } : row));
    const read = readNew('measure', { measure: { ...measure, discs } });
    expect(read).toHaveProperty(['problems', 'entry.discs.2.massG']);
  });

  test('asks for the other half of a pressure at speed', () => {
    const pressure = { text: '4', unit: 'bar' };
    const read = readNew('measure', {
      measure: { ...measure, oilPressureAtRpm: { pressure, rpm: '' } },
    });
    expect(read).toHaveProperty(['problems', 'entry.oilPressureAtRpm.rpm']);
  });

  test('refuses two figures of one name, and a figure without one', () => {
    const figures = [
      { name: 'iron', value: '1' },
      { name: 'iron', value: '2' },
      { name: '', value: '3' },
    ];
    const read = readNew('labReport', { labReport: { ...labReport, figures } });
    expect('problems' in read && Object.keys(read.problems)).toEqual([
      'entry.figures.1.name',
      'entry.figures.2.name',
    ]);
  });

  test('leaves out a line of a lay-up in which nothing stands', () => {
    const lines = [
      { what: ' ', how: 'other' as const },
      { what: 'Battery', how: 'disconnected' as const },
    ];
    expect(readNew('layUp', { layUp: { ...layUp, lines } })).toMatchObject({
      entry: { lines: [{ what: 'Battery', how: 'disconnected' }] },
    });
  });
});

describe('readRecord() of wheels', () => {
  const { wheels } = emptyFields(start);

  test('names the wheels only where it is not all four', () => {
    const all = readNew('wheels', { wheels: { ...wheels, change: 'off' } });
    expect('entry' in all && all.entry).not.toHaveProperty('which');
    const two = readNew('wheels', {
      wheels: { ...wheels, change: 'off', which: ['rearRight', 'frontLeft'] },
    });
    expect(two).toMatchObject({ entry: { which: ['rearRight', 'frontLeft'] } });
    const none = readNew('wheels', { wheels: { ...wheels, change: 'off', which: [] } });
    expect(none).toHaveProperty(['problems', 'entry.which']);
  });

  test('takes no torque of wheels that are off', () => {
    const torque = { text: '120', unit: 'nm' };
    const read = readNew('wheels', { wheels: { ...wheels, change: 'off', torque, cold: true } });
    expect('entry' in read && Object.keys(read.entry).sort()).toEqual(
      ['car', 'change', 'id', 'kind', 'on', 'zone'].sort(),
    );
  });
});
