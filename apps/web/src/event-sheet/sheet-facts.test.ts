import type { InspectorFacts } from '@quartermark/engine/readiness';
import { expect, test } from 'vitest';
import { placeTable } from './place-table.ts';
import { factLines } from './sheet-facts.ts';

const NOTHING: InspectorFacts = {
  odometer: null,
  brakeFluid: [],
  pads: [],
  tread: [],
  tyres: [],
  labels: [],
  wheels: {
    state: 'notOnRecord',
    corners: [],
    entry: null,
    on: null,
    sinceKm: null,
    sinceSessions: null,
  },
  torque: null,
  noise: null,
  findings: [],
  incidents: [],
};

const linesOf = (facts: Partial<InspectorFacts>) =>
  factLines({ ...NOTHING, ...facts }, 'km').map(({ what, words }) => `${what}: ${words}`);

test('factLines() says of everything that nobody wrote down that it is not on record', () => {
  const lines = factLines(NOTHING, 'km');
  expect(lines.map(({ what }) => what)).toEqual([
    'Odometer',
    'Brake fluid',
    'Tyres, date codes',
    'Wheel torque',
    'Wheels',
    'Noise',
    'Labels of those who drive',
  ]);
  expect(lines.every(({ open, words }) => open && words === 'Not on record')).toBe(true);
});

test('factLines() says what is on record, as typed, with its day', () => {
  const lines = linesOf({
    odometer: { reading: { text: '38,412', unit: 'mi' }, on: '2026-06-14', entry: 'e' },
    brakeFluid: [{ item: 'i', name: 'Brake fluid', on: '2026-03-01', entry: 'e' }],
    tyres: [{ part: 'p', name: 'Slicks', positions: ['front'], code: '0523' }],
    torque: { on: '2026-06-01', value: { text: '120', unit: 'nm' }, cold: true, entry: 'e' },
    noise: { db: 95.5, on: '2026-06-02', byWhom: 'the club' },
    labels: [{ gear: 'g', person: 'Runa Vell', item: 'i', name: 'helmet', until: '2028-12-31' }],
  });
  expect(lines).toEqual([
    'Odometer: 38,412 mi on 14 June 2026',
    'Brake fluid: 1 March 2026',
    'Date code, Slicks, front: 0523',
    'Wheel torque: 120 Nm, cold on 1 June 2026',
    'Wheels: Not on record',
    'Noise: 95.5 dB, measured by the club on 2 June 2026',
    'Helmet of Runa Vell: valid to 31 December 2028',
  ]);
});

test('factLines() never shows a starting point as a service, nor what people say as a measurement', () => {
  const lines = linesOf({
    brakeFluid: [
      { item: 'i', name: 'Brake fluid', on: '2026-03-01', entry: null },
      { item: 'j', name: 'Clutch fluid', on: null, entry: null },
    ],
    noise: { db: 98, on: null, byWhom: null },
    torque: { on: '2026-06-01', value: null, cold: null, entry: 'e' },
  });
  expect(lines).toContain('Brake fluid: Taken as good since 1 March 2026, no service on record');
  expect(lines).toContain('Clutch fluid: Not on record');
  expect(lines).toContain('Noise: 98 dB, as its people say, not measured on record');
  expect(lines).toContain('Wheel torque: value not written down on 1 June 2026');
});

test('placeTable() has all four corners, and says where nothing was measured', () => {
  const fact = { part: null, groove: null, on: '2026-06-10', entry: 'e' };
  const inner = { ...fact, what: 'padInner', corner: 'frontLeft' } as const;
  const outer = { ...fact, what: 'padOuter', corner: 'rearRight' } as const;
  const table = placeTable([
    { ...outer, depth: { text: '7,25', unit: 'mm' } },
    { ...inner, depth: { text: '6', unit: 'in32' }, on: '2026-05-10' },
  ]);
  expect(table.on).toBeNull();
  expect(table.columns).toEqual(['Inner', 'Outer']);
  expect(table.corners).toEqual([
    { corner: 'Front left', cells: ['6 /32 in, 10 May 2026', 'not on record'] },
    { corner: 'Front right', cells: ['not on record', 'not on record'] },
    { corner: 'Rear left', cells: ['not on record', 'not on record'] },
    { corner: 'Rear right', cells: ['not on record', '7,25 mm, 10 June 2026'] },
  ]);
  const sameDay = placeTable([{ ...outer, depth: { text: '7,25', unit: 'mm' } }]);
  expect(sameDay.on).toBe('10 June 2026');
  expect(sameDay.corners[3]?.cells).toEqual(['7,25 mm']);
});
