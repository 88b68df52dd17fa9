import { expect, test } from 'vitest';
import { entriesOf } from '../../test/gear-book.ts';
import { measurements, readingsOf } from './measured.ts';

const mm = (text: string) => ({ text, unit: 'mm' as const });
const measure = { kind: 'measure', component: 'set' } as const;

test('measurements() come in the order of the log', () => {
  const entries = entriesOf([
    { ...measure, on: '2026-05-02' },
    { kind: 'note', note: 'x', on: '2026-05-01' },
    { ...measure, on: '2026-05-01' },
  ]);
  expect(measurements(entries).map(({ id }) => id)).toEqual(['e2', 'e0']);
});

test('readingsOf() gives tread, both sides of pads, and discs by thickness or mass', () => {
  const [entry] = measurements(
    entriesOf([
      {
        ...measure,
        on: '2026-05-01',
        tread: [{ corner: 'rearLeft', groove: 'outer', depth: { text: '8', unit: 'in32' } }],
        pads: [
          { corner: 'frontLeft', inner: mm('7,5'), outer: mm('8') },
          { corner: 'frontRight', outer: mm('6') },
        ],
        discs: [
          { corner: 'frontLeft', thickness: mm('31.2') },
          { corner: 'frontRight', massG: 5210 },
          { corner: 'rearLeft' },
        ],
      },
    ]),
  );
  if (entry === undefined) throw new Error('no measurement');
  const told = readingsOf(entry).map(({ what, where, mm, g }) => [what, where, mm, g]);
  expect(told).toEqual([
    ['tread', 'rear left, outer', 6.35, null],
    ['padInner', 'front left, inner', 7.5, null],
    ['padOuter', 'front left, outer', 8, null],
    ['padOuter', 'front right, outer', 6, null],
    ['disc', 'front left', 31.2, null],
    ['disc', 'front right', null, 5210],
  ]);
});
