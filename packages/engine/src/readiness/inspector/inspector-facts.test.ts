import { describe, expect, test } from 'vitest';
import { type Drafted, entriesOf, km } from '../../../test/gear-book.ts';
import { analyseGear } from '../../gear/analyse-gear.ts';
import { type BookDraft, book } from '../../log/book.ts';
import { type GearDraft, gear as gearSchema } from '../../log/gear.ts';
import { type ItemDraft, item as itemSchema } from '../../log/item.ts';
import type { Piece } from '../asked.ts';
import { inspectorFacts } from './inspector-facts.ts';

const asOf = '2026-06-15';
type BookItem = BookDraft['items'][number];
const FLUID: BookItem = {
  id: 'fluid',
  name: 'Brake fluid',
  role: 'brakeFluid',
  limits: [{ measure: 'months', value: 12 }],
};
const PADS: BookItem = { id: 'padItem', name: 'Pads', role: 'pads', limits: FLUID.limits };

type Told = {
  entries: readonly Drafted[];
  items?: BookItem[];
  profile?: BookDraft['car']['profile'];
  parts?: Record<string, GearDraft>;
  drivers?: readonly Piece[];
};

const mm = (text: string) => ({ text, unit: 'mm' as const });

function facts({ entries, items = [FLUID], profile = {}, parts = {}, drivers = [] }: Told) {
  const told = entriesOf(entries.map((one) => ({ car: 'car', ...one })));
  const of = (log: typeof told) => ({
    ...book.parse({
      format: 'log/1',
      asOf,
      garage: { zone: 'Europe/Lisbon' },
      car: { id: 'car', unit: 'km', profile },
      items,
      layUps: [],
      planned: [],
      entries: [],
    }),
    entries: log,
  });
  const car = of(told);
  const pieces = Object.entries(parts).map(([id, drafted]): Piece => {
    const gear = gearSchema.parse({ id, gear: drafted });
    const cars = [car];
    return {
      gear,
      items: [],
      orders: [],
      result: analyseGear({ gear, asOf, zone: 'Europe/Lisbon', items: [], cars, entries: [] }),
    };
  });
  const saidIn = { distance: 'km', volume: 'l' } as const;
  return inspectorFacts({ book: car, parts: pieces, drivers, past: [], acceptances: [], saidIn });
}

test('inspectorFacts() of an empty log says nothing is on record', () => {
  expect(facts({ entries: [] })).toEqual({
    odometer: null,
    brakeFluid: [{ item: 'fluid', name: 'Brake fluid', on: null, entry: null }],
    pads: [],
    tread: [],
    tyres: [],
    labels: [],
    wheels: expect.objectContaining({ state: 'notOnRecord' }),
    torque: null,
    noise: null,
    findings: [],
    incidents: [],
  });
});

test('inspectorFacts() gives the last odometer that the log trusts, as typed', () => {
  const { odometer } = facts({
    entries: [
      { kind: 'odometer', on: '2026-05-01', odometer: { text: '41,200', unit: 'km' } },
      { kind: 'odometer', on: '2026-06-01', odometer: { text: '41 900', unit: 'km' } },
      // a digit too many, and read again rightly
      { kind: 'odometer', on: '2026-06-05', odometer: km(419_500) },
      { kind: 'odometer', on: '2026-06-06', odometer: { text: '41,960', unit: 'km' } },
      { kind: 'odometer', on: '2026-06-07', odometer: km(419_700) },
      { kind: 'odometer', on: '2026-06-14', odometer: { text: '42,010', unit: 'km' } },
      { kind: 'odometer', on: '2026-06-14', odometer: km(42_020), removed: true },
    ],
  });
  expect(odometer).toEqual({
    reading: { text: '42,010', unit: 'km' },
    on: '2026-06-14',
    entry: 'e5',
  });
});

test('inspectorFacts() dates brake fluid by its last service, or by its starting point, which is no entry', () => {
  const done = facts({
    entries: [
      { kind: 'service', on: '2026-03-01', items: ['fluid'] },
      { kind: 'service', on: '2025-03-01', items: ['fluid'] },
    ],
  });
  expect(done.brakeFluid).toEqual([
    { item: 'fluid', name: 'Brake fluid', on: '2026-03-01', entry: 'e0' },
  ]);
  const begun = facts({ entries: [], items: [{ ...FLUID, baseline: { on: '2025-11-02' } }] });
  expect(begun.brakeFluid[0]).toMatchObject({ on: '2025-11-02', entry: null });
});

describe('pads', () => {
  const measured = (on: string, inner: string, more: object = {}): Drafted => ({
    kind: 'measure',
    on,
    pads: [{ corner: 'frontLeft', inner: mm(inner) }],
    ...more,
  });

  test('each place has its last measurement, letter for letter', () => {
    const { pads } = facts({
      entries: [
        measured('2026-06-10', '6,5'),
        measured('2026-05-10', '8'),
        {
          kind: 'measure',
          on: '2026-05-10',
          pads: [{ corner: 'rearRight', inner: mm('7'), outer: mm('7.25') }],
        },
      ],
    });
    expect(pads.map(({ corner, what, depth, on }) => [corner, what, depth.text, on])).toEqual([
      ['frontLeft', 'padInner', '6,5', '2026-06-10'],
      ['rearRight', 'padInner', '7', '2026-05-10'],
      ['rearRight', 'padOuter', '7.25', '2026-05-10'],
    ]);
  });

  test('what was measured before they were renewed is not told of the new ones', () => {
    const entries: Drafted[] = [
      measured('2026-05-10', '3'),
      { kind: 'service', on: '2026-05-20', items: ['padItem'] },
    ];
    expect(facts({ entries, items: [PADS] }).pads).toEqual([]);
    const set = { kind: 'component', name: 'Front pads', sort: 'pads', condition: 'new' } as const;
    const fitted = facts({
      entries: [
        measured('2026-05-10', '3'),
        { kind: 'fit', on: '2026-05-20', component: 'set', change: 'on', condition: 'new' },
        measured('2026-06-01', '11', { component: 'set' }),
      ],
      parts: { set },
    });
    expect(fitted.pads).toMatchObject([{ part: 'set', depth: mm('11'), on: '2026-06-01' }]);
  });
});

test('inspectorFacts() gives tread and date code of the set that is on', () => {
  const { tread, tyres } = facts({
    entries: [
      { kind: 'fit', on: '2026-05-20', component: 'set', change: 'on', positions: ['all'] },
      {
        kind: 'measure',
        on: '2026-06-01',
        component: 'set',
        dateCode: '0523',
        tread: [{ corner: 'frontLeft', groove: 'outer', depth: { text: '6', unit: 'in32' } }],
      },
    ],
    parts: { set: { kind: 'component', name: 'Wets', sort: 'tyreSet', condition: 'used' } },
  });
  expect(tread).toMatchObject([{ groove: 'outer', depth: { text: '6', unit: 'in32' } }]);
  expect(tyres).toEqual([{ part: 'set', name: 'Wets', positions: ['all'], code: '0523' }]);
});

test('inspectorFacts() gives the last torque and the noise that was measured', () => {
  const said = facts({ entries: [], profile: { noiseDb: 98 } });
  expect(said.noise).toEqual({ db: 98, on: null, byWhom: null });
  const { torque, noise, wheels } = facts({
    profile: { noiseDb: 98 },
    entries: [
      { kind: 'wheels', on: '2026-06-01', change: 'torqued', torque: { text: '120', unit: 'nm' } },
      { kind: 'wheels', on: '2026-06-10', change: 'off' },
      {
        kind: 'inspection',
        on: '2026-06-02',
        purpose: 'noise',
        result: 'passed',
        noiseDb: 95.5,
        byWhom: 'the club',
      },
    ],
  });
  expect(torque).toMatchObject({ on: '2026-06-01', value: { text: '120', unit: 'nm' } });
  expect(wheels.state).toBe('off');
  expect(noise).toEqual({ db: 95.5, on: '2026-06-02', byWhom: 'the club' });
});

test('inspectorFacts() lists labels of those who drive by the day on them, and nothing without one', () => {
  const items: (ItemDraft & { id: string })[] = [
    { id: 'helmet', name: 'Helmet', limits: [{ measure: 'date', value: '2028-12-31' }] },
    { id: 'look', name: 'Visor, a look', limits: [{ measure: 'months', value: 1 }] },
  ];
  const driver: Piece = {
    gear: gearSchema.parse({ id: 'p', gear: { kind: 'person', name: 'Runa Vell' } }),
    items: items.map((one) => itemSchema.parse(one)),
    orders: [],
    result: null,
  };
  expect(facts({ entries: [], drivers: [driver] }).labels).toEqual([
    { gear: 'p', person: 'Runa Vell', item: 'helmet', name: 'Helmet', until: '2028-12-31' },
  ]);
});
