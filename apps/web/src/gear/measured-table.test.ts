import type { MeasuredReading, MeasuredRow } from '@quartermark/engine/gear';
import { expect, test } from 'vitest';
import { lifeLines } from './life-lines.ts';
import { measuredTable } from './measured-table.ts';

const reading = (more: Partial<MeasuredReading>): MeasuredReading => ({
  what: 'tread',
  corner: 'frontLeft',
  groove: null,
  where: 'front left',
  mm: 5,
  g: null,
  ...more,
});
const row = (on: string, readings: MeasuredReading[], more: Partial<MeasuredRow> = {}) => ({
  entry: on,
  on,
  readings,
  sessionsThen: null,
  kmThen: null,
  ...more,
});

test('measuredTable() sets the newest first, with the use the part had behind it then', () => {
  const { measurements } = measuredTable(
    [
      row('2026-05-01', [reading({})]),
      row('2026-06-01', [reading({ mm: 4.25 })], { sessionsThen: 6, kmThen: 240 }),
    ],
    'km',
  );
  expect(measurements.map(({ title }) => title)).toEqual([
    '1 June 2026, after 6 sessions, 240 km',
    '1 May 2026',
  ]);
});

test('measuredTable() gives each groove a column and each corner a line, units in every cell', () => {
  const { columns, measurements } = measuredTable(
    [
      row('2026-05-01', [
        reading({ groove: 'inner', mm: 4 }),
        reading({ groove: 'outer', mm: 5 }),
        reading({ corner: 'rearRight', groove: 'inner', mm: 6.04 }),
      ]),
    ],
    'km',
  );
  expect(columns).toEqual(['inner', 'outer']);
  expect(measurements[0]?.corners).toEqual([
    { corner: 'Front left', cells: ['4 mm', '5 mm'] },
    { corner: 'Rear right', cells: ['6 mm', ''] },
  ]);
});

test('measuredTable() tells inner pads from outer ones, and weighed discs by their mass', () => {
  const { columns, measurements } = measuredTable(
    [
      row('2026-05-01', [
        reading({ what: 'padInner', mm: 7 }),
        reading({ what: 'padOuter', mm: 8.5 }),
        reading({ what: 'disc', mm: null, g: 5_300 }),
      ]),
    ],
    'km',
  );
  expect(columns).toEqual(['Inner pad', 'Outer pad', 'Disc']);
  expect(measurements[0]?.corners[0]?.cells).toEqual(['7 mm', '8.5 mm', '5,300 g']);
});

test('lifeLines() says at least where not all is known, and that nothing is where nothing is', () => {
  const life = {
    sessions: { amount: 14, known: true },
    distanceKm: { amount: 804.672, known: false },
    hours: { amount: null, known: false },
    launches: { amount: 1, known: true },
  };
  expect(lifeLines(life, 'mi').map(({ words }) => words)).toEqual([
    '14 sessions',
    'at least 500 mi',
    'not on record',
    '1 launch',
  ]);
});
