import type { AddedUse } from '@quartermark/engine/what-if';
import { describe, expect, test } from 'vitest';
import { addEventAddress, eventOfAddress } from '../event/event-address.ts';
import { readEvent } from '../event/event-fields.ts';
import { readLines as readAddress, readLine, writeLine, writeLines } from './added-address.ts';
import { type AddedLine, emptyLine, lineOf, measuresOf, readLines } from './added-fields.ts';

const TODAY = '2026-06-15';
const circuit: AddedUse = { sort: 'circuit', start: '2026-06-20', use: { sessions: 6 } };
const trip: AddedUse = {
  sort: 'roadTrip',
  start: '2026-07-24',
  end: '2026-07-27',
  use: { distance: { text: '1,100.5', unit: 'mi' }, hours: 20 },
};

describe('readLine()', () => {
  test.each([circuit, trip])('readLine() reads what writeLine() wrote of %j', (line) => {
    expect(readLine(writeLine(line))).toEqual(line);
  });

  test('readLine() keeps a number with blanks in it in one piece', () => {
    const use = { distance: { text: '1 100', unit: 'km' as const } };
    const read = readLine(writeLine({ ...trip, use }));
    expect(read?.use.distance?.text).toBe('1\u00a0100');
  });

  test.each([
    '',
    'circuit',
    'circuit 2026-06-20',
    'circuit 2026-06-20 sessions',
    'circuit 2026-06-20 launches 4',
    'race 2026-06-20 sessions 4',
    'circuit 2026-02-30 sessions 4',
    'circuit 2026-06-20 2026-06-19 sessions 4',
    'circuit 2026-06-20 sessions 4 wheels 4',
  ])('readLine() takes "%s" for no line', (text) => {
    expect(readLine(text)).toBeNull();
  });
});

test('the lines of an address survive it, and what cannot be read is counted', () => {
  const query = new URLSearchParams(writeLines([circuit, trip]));
  expect(readAddress({ add: query.getAll('add') })).toEqual({ added: [circuit, trip], lost: 0 });
  expect(readAddress({ add: [writeLine(circuit), 'nonsense'] })).toEqual({
    added: [circuit],
    lost: 1,
  });
  expect(readAddress({ add: Array.from({ length: 22 }, () => writeLine(circuit)) }).lost).toBe(2);
  expect(readAddress({})).toEqual({ added: [], lost: 0 });
  expect(writeLines([])).toBe('');
});

describe('readLines()', () => {
  const read = (line: Partial<AddedLine>) =>
    readLines({ lines: [{ ...emptyLine('km'), start: '2026-06-20', ...line }] }, TODAY);
  const wrong = (line: Partial<AddedLine>) => {
    const found = read(line);
    return 'problems' in found ? Object.keys(found.problems) : [];
  };

  test('readLines() reads what lineOf() was made of, and the usual amounts that were left standing', () => {
    expect(readLines({ lines: [circuit, trip].map((line) => lineOf(line, 'km')) }, TODAY)).toEqual({
      added: [circuit, trip],
    });
    expect(read({ end: '2026-06-21' })).toEqual({
      added: [{ ...circuit, end: '2026-06-21', use: { sessions: 8 } }],
    });
  });

  test('readLines() says of each field what is wrong, by the path the server would name', () => {
    expect(wrong({ start: '' })).toEqual(['added.0.start']);
    expect(wrong({ start: '2026-06-14' })).toEqual(['added.0.start']);
    expect(wrong({ start: TODAY })).toEqual([]);
    expect(wrong({ start: '2029-06-15' })).toEqual([]);
    expect(wrong({ start: '2029-06-16' })).toEqual(['added.0.start']);
    expect(wrong({ start: '2029-06-14', end: '2029-06-16' })).toEqual(['added.0.end']);
    expect(wrong({ end: '2026-06-19' })).toEqual(['added.0.end']);
    const use = emptyLine('km').use;
    expect(wrong({ use: { ...use, sessions: 'six' } })).toEqual(['added.0.use.sessions']);
    expect(wrong({ use: { ...use, sessions: '' } })).toEqual(['added.0.use.sessions']);
    expect(wrong({ use: { ...use, distance: '90000' } })).toEqual(['added.0.use.distance.text']);
  });

  test('readLines() finds what is wrong in a later line though the first is right', () => {
    const lines = [lineOf(circuit, 'km'), emptyLine('km')];
    expect(readLines({ lines }, TODAY)).toEqual({
      problems: { 'added.1.start': 'Choose the day it begins.' },
    });
  });
});

test('measuresOf() asks for hours only where the line has some', () => {
  expect(measuresOf(emptyLine('km'))).toEqual(['sessions', 'distance']);
  expect(measuresOf(lineOf(trip, 'km'))).toEqual(['distance', 'hours']);
});

test('eventOfAddress() fills in the event that addEventAddress() leads to, but for its name', () => {
  const car = '01900000-0000-7001-a000-000000000000';
  const { searchParams } = new URL(addEventAddress('g', trip, car), 'http://garage.example');
  const filled = eventOfAddress(Object.fromEntries(searchParams), 'km');
  expect(filled && readEvent({ ...filled, name: 'Passes' })).toMatchObject({
    event: { ...trip, name: 'Passes', cars: [car] },
  });
  expect(eventOfAddress({}, 'km')).toBeNull();
  expect(eventOfAddress({ plan: 'nonsense' }, 'km')).toBeNull();
});
