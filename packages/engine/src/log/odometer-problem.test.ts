import { expect, test } from 'vitest';
import type { EntryInput } from './entry.ts';
import { type KnownReading, odometerProblem, readingsAround } from './odometer-problem.ts';

const zone = 'Europe/Berlin';
const km = (text: string, on: string): KnownReading => ({ text, unit: 'km', on });
const reading = (id: string, on: string, text: string, more = {}): EntryInput => ({
  kind: 'odometer',
  id,
  on,
  zone,
  odometer: { text, unit: 'km' },
  ...more,
});

test('odometerProblem() names a lower value, the last one with its date, and the mend', () => {
  const around = { before: { text: '38,412', unit: 'mi', on: '2026-05-02' } as const, after: null };
  const problem = odometerProblem(around, { text: '38,142', unit: 'mi', on: '2026-05-09' });
  expect(problem?.field).toBe('odometer');
  expect(problem?.message).toMatch(
    /^odometer: 38,142 mi is lower than 38,412 mi on 2 May 2026\. Check the digits/,
  );
});

test('odometerProblem() compares across units', () => {
  const around = { before: km('1610', '2026-05-02'), after: null };
  expect(odometerProblem(around, { text: '1000', unit: 'mi', on: '2026-05-03' })?.message).toMatch(
    /lower/,
  );
  expect(odometerProblem(around, { text: '1001', unit: 'mi', on: '2026-05-03' })).toBeNull();
});

test('odometerProblem() names the next reading where a back-dated value is higher', () => {
  const around = { before: null, after: km('41200', '2026-05-10') };
  expect(odometerProblem(around, km('41300', '2026-05-02'))?.message).toMatch(
    /41300 km is higher than 41200 km on 10 May 2026/,
  );
});

test('odometerProblem() allows exactly 2,000 km a day and asks beyond it', () => {
  const around = { before: km('1000', '2026-05-02'), after: null };
  expect(odometerProblem(around, km('5000', '2026-05-03'))).toBeNull();
  expect(odometerProblem(around, km('5001', '2026-05-03'))?.message).toMatch(/2,000 km a day/);
});

test('odometerProblem() has nothing to say about the first reading', () => {
  expect(odometerProblem({ before: null, after: null }, km('5', '2026-05-03'))).toBeNull();
});

test('readingsAround() finds the neighbours by date, whatever the order of the list', () => {
  const entries = [
    reading('c', '2026-05-10', '300'),
    reading('a', '2026-05-01', '100'),
    reading('b', '2026-05-05', '200'),
  ];
  const around = readingsAround(entries, reading('x', '2026-05-06', '250'));
  expect(around).toEqual({ before: km('200', '2026-05-05'), after: km('300', '2026-05-10') });
});

test('readingsAround() passes over removed entries, rejected readings and the entry itself', () => {
  const entries = [
    reading('a', '2026-05-01', '100'),
    { ...reading('gone', '2026-05-02', '900'), removed: true },
    reading('typo', '2026-05-03', '99999'),
    reading('x', '2026-05-04', '400'),
  ];
  const around = readingsAround(entries, reading('x', '2026-05-04', '150'), new Set(['typo']));
  expect(around).toEqual({ before: km('100', '2026-05-01'), after: null });
});

test('readingsAround() orders untimed readings of a day by value, so they never disagree', () => {
  const entries = [reading('a', '2026-05-01', '300')];
  const candidate = reading('x', '2026-05-01', '250');
  const around = readingsAround(entries, candidate);
  expect(around).toEqual({ before: null, after: km('300', '2026-05-01') });
  expect(odometerProblem(around, km('250', '2026-05-01'))).toBeNull();
});

test('readingsAround() puts the odometer of a road trip at its end', () => {
  const trip: EntryInput = {
    kind: 'drive',
    use: 'touring',
    id: 't',
    on: '2026-05-01',
    until: '2026-05-08',
    zone,
    odometer: { text: '900', unit: 'km' },
  };
  const around = readingsAround([trip], reading('x', '2026-05-04', '500'));
  expect(around).toEqual({ before: null, after: km('900', '2026-05-08') });
});

test('readingsAround() starts anew at an exchanged odometer', () => {
  const exchange: EntryInput = {
    kind: 'meterReplaced',
    meter: 'odometer',
    id: 'm',
    on: '2026-05-03',
    zone,
    oldLast: { text: '88000', unit: 'km' },
    newFirst: { text: '5', unit: 'km' },
  };
  expect(readingsAround([exchange], reading('x', '2026-05-04', '40')).before).toEqual(
    km('5', '2026-05-03'),
  );
  expect(readingsAround([exchange], reading('x', '2026-05-02', '87950')).after).toEqual(
    km('88000', '2026-05-03'),
  );
});

test('readingsAround() has nothing to compare for an entry without an odometer value', () => {
  const note: EntryInput = { kind: 'note', id: 'n', on: '2026-05-04', zone, note: 'x' };
  expect(readingsAround([reading('a', '2026-05-01', '100')], note)).toEqual({
    before: null,
    after: null,
  });
});
