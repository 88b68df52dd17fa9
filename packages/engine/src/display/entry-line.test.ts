import { expect, test } from 'vitest';
import { ENTRY_KINDS, type EntryDraft, entryInput } from '../log/entry.ts';
import { entryLine } from './entry-line.ts';
import { KIND_WORDS } from './kind-words.ts';

type WithoutFrame<D> = D extends unknown ? Omit<D, 'id' | 'on' | 'zone'> : never;

const items = [
  { id: 'oil', item: { name: 'Engine oil' } },
  { id: 'brake', item: { name: 'Brake fluid, flush' } },
];
const line = (draft: WithoutFrame<EntryDraft>) => {
  const entry = entryInput.parse({ id: 'e1', on: '2026-05-02', zone: 'Europe/London', ...draft });
  const { title, detail } = entryLine(entry, items, { 'set-1': 'Sprint pads' });
  return `${title} | ${detail}`;
};

test('entryLine() gives figures back letter for letter, the unit beside them', () => {
  expect(line({ kind: 'odometer', odometer: { text: '38 412', unit: 'mi' } })).toBe(
    'Odometer | 38 412 mi',
  );
  expect(
    line({
      kind: 'fuel',
      volume: { text: '41,70', unit: 'l' },
      full: true,
      octane: 98,
      odometer: { text: '038412', unit: 'km' },
    }),
  ).toBe('Fuel | 41,70 L, filled up, 98 octane, odometer 038412 km');
});

test('entryLine() says a level as it was read and how it was read', () => {
  const condition = { state: 'hotStopped', minutesAfterStop: 5 } as const;
  expect(line({ kind: 'oilCheck', level: { how: 'fraction', fraction: 0.75 }, condition })).toBe(
    'Oil check | three quarters, read hot, 5 minutes after stopping',
  );
  expect(line({ kind: 'oilCheck', level: { how: 'fraction', fraction: 0.55 } })).toBe(
    'Oil check | about half (0.55 of the way from MIN to MAX)',
  );
  expect(line({ kind: 'oilCheck', level: { how: 'fromMax', litres: -0.5 } })).toBe(
    'Oil check | 0.5 L below MAX',
  );
  expect(line({ kind: 'oilCheck', level: { how: 'none' } })).toBe('Oil check | none on the stick');
});

test('entryLine() keeps an oil change and oil added apart', () => {
  expect(line({ kind: 'oilTopUp', volume: { text: '1', unit: 'usQt' }, toMax: true })).toBe(
    'Oil added | 1 US qt, to MAX',
  );
  expect(
    line({
      kind: 'oilChange',
      filled: { text: '6.0', unit: 'l' },
      filterRenewed: false,
      grade: '5W-40',
    }),
  ).toBe('Oil change | 6.0 L filled, filter kept, 5W-40');
});

test('entryLine() names the use, its amount and its place', () => {
  expect(
    line({
      kind: 'session',
      use: 'circuit',
      sessions: 4,
      venue: 'Ashcombe Ring',
      distance: { text: '100', unit: 'km' },
      hours: 1.6,
      oilTempPeak: { text: '121', unit: 'c' },
    }),
  ).toBe('Circuit | 4 sessions, at Ashcombe Ring, 100 km, 1.6 h, oil up to 121 °C');
  expect(line({ kind: 'session', use: 'autocross' })).toBe('Autocross | 1 session');
  expect(
    line({ kind: 'session', use: 'circuit', driver: 'Tam', remarks: 'Clean stint, backed off.' }),
  ).toBe('Circuit | 1 session, driven by Tam. Clean stint, backed off.');
  expect(line({ kind: 'drive', use: 'touring', until: '2026-05-09' })).toBe(
    'Road trip | until 9 May 2026',
  );
  expect(line({ kind: 'strip', passes: [{}, {}], launches: 3, driver: 'Ines' })).toBe(
    'Drag strip | 2 passes, 3 launches, driven by Ines',
  );
  expect(line({ kind: 'strip', passes: [{}], launches: 1 })).toBe('Drag strip | 1 pass');
});

test('entryLine() names what was serviced and says where a name is gone', () => {
  expect(
    line({ kind: 'service', items: ['brake', 'oil'], parts: ['fluid, 1 L'], byWhom: 'the club' }),
  ).toBe('Service | Brake fluid, flush and Engine oil, parts: fluid, 1 L, by the club');
  expect(line({ kind: 'service', items: ['gone', 'oil'] })).toBe(
    'Service | Engine oil and an item no longer watched',
  );
});

test('entryLine() says when an old instrument left no value', () => {
  expect(
    line({ kind: 'meterReplaced', meter: 'odometer', newFirst: { text: '12,050', unit: 'mi' } }),
  ).toBe('Odometer replaced | old value not known, new one first at 12,050 mi');
});

test('entryLine() leaves the note to the note', () => {
  expect(line({ kind: 'note', note: 'Smells of fuel.' })).toBe('Note | ');
});

test('entryLine() never shows an id that has no name', () => {
  const drafts: WithoutFrame<EntryDraft>[] = [
    { kind: 'fit', component: 'id-7', change: 'on' },
    { kind: 'measure', component: 'id-7' },
    { kind: 'session', use: 'circuit', tyreSet: 'id-7', event: 'id-7' },
    { kind: 'service', items: ['id-7'], job: 'id-7' },
    { kind: 'answer', notice: 'id-7', answer: 'done' },
    { kind: 'finding', what: 'x', severity: 'watch', resolvedBy: 'id-7', gear: 'id-7' },
  ];
  for (const draft of drafts) expect(line(draft)).not.toContain('id-7');
});

test('KIND_WORDS calls every kind by a name of its own', () => {
  const words = ENTRY_KINDS.map((kind) => KIND_WORDS[kind]);
  expect(new Set(words).size).toBe(ENTRY_KINDS.length);
});

test.each<[WithoutFrame<EntryDraft>, string]>([
  [
    { kind: 'fluid', which: 'coolant', added: { text: '0.3', unit: 'l' } },
    'Fluid | coolant, 0.3 L added',
  ],
  [
    { kind: 'inspection', purpose: 'road', result: 'conditional', validTo: '2027-05-01' },
    'Inspection | road, passed with conditions, good through 1 May 2027',
  ],
  [
    {
      kind: 'measure',
      pads: [{ corner: 'frontLeft', inner: { text: '7.5', unit: 'mm' } }],
      batteryV: 12.6,
    },
    'Measurements | pad front left inner 7.5 mm, battery 12.6 V',
  ],
  [
    { kind: 'wheels', change: 'torqued', which: ['rearLeft'], torque: { text: '120', unit: 'nm' } },
    'Wheels | tightened to torque, rear left, 120 Nm',
  ],
  [
    { kind: 'finding', what: 'weep at the gearbox', where: 'rearRight', severity: 'watch' },
    'Finding | weep at the gearbox, rear right, watch',
  ],
  [{ kind: 'incident', what: 'overRev' }, 'Incident | engine over-revved'],
  [
    { kind: 'layUp', until: '2027-03-01', keysAt: 'the board' },
    'Lay-up | until 1 March 2027, keys: the board',
  ],
  [{ kind: 'handover', what: 'lent', who: 'Ines' }, 'Handover | lent to Ines'],
  [
    {
      kind: 'fit',
      component: 'set-1',
      change: 'on',
      positions: ['frontLeft', 'frontRight'],
      condition: 'new',
      bedding: 'notBedded',
    },
    'Parts fitted | Sprint pads, fitted, front left and front right, new, not bedded yet',
  ],
  [{ kind: 'fit', component: 'set-9', change: 'off' }, 'Parts fitted | taken off'],
  [
    {
      kind: 'measure',
      component: 'set-1',
      tread: [{ corner: 'rearLeft', groove: 'inner groove', depth: { text: '4,1', unit: 'mm' } }],
    },
    'Measurements | Sprint pads, tread rear left, inner groove, 4,1 mm',
  ],
  [
    {
      kind: 'wheels',
      change: 'off',
      which: ['frontLeft', 'frontRight', 'rearLeft'],
      cold: true,
    },
    'Wheels | taken off, front left, front right and rear left, cold',
  ],
  [
    {
      kind: 'finding',
      what: 'hose cracked',
      severity: 'doNotDrive',
      dueBy: '2026-06-01',
      resolvedBy: 'set-1',
    },
    'Finding | hose cracked, do not drive, to be done by 1 June 2026, dealt with',
  ],
  [
    { kind: 'incident', what: 'off', detail: 'turn 4, backwards' },
    'Incident | off the track, turn 4, backwards',
  ],
  [
    {
      kind: 'layUp',
      lines: [
        { what: 'battery', how: 'disconnected' },
        { what: 'tyres', how: 'blownUp' },
      ],
    },
    'Lay-up | battery disconnected, tyres blown up',
  ],
  [
    { kind: 'wakeUp', lines: [{ what: 'battery', how: 'disconnected' }] },
    'Wake-up | undone: battery',
  ],
  [{ kind: 'wakeUp' }, 'Wake-up | '],
  [
    { kind: 'repair', text: 'valve stem seals', affectsOilUse: true },
    'Repair | valve stem seals, may change how much oil it uses',
  ],
  [
    { kind: 'labReport', laboratory: 'bench in town', figures: { iron: 12, 'fuel %': 0.8 } },
    'Oil analysis | bench in town, iron 12, fuel % 0.8',
  ],
  [{ kind: 'handover', what: 'bought' }, 'Handover | bought'],
  [{ kind: 'handover', what: 'returned', who: 'Tam' }, 'Handover | returned by Tam'],
  [
    { kind: 'answer', notice: 'set-1', answer: 'looked over', checked: ['Tyres', 'Steering'] },
    'Answer | looked over, looked at: Tyres; Steering',
  ],
  [
    {
      kind: 'meterReplaced',
      meter: 'hours',
      oldLast: { text: '812.4', unit: 'h' },
      newFirst: { text: '0', unit: 'h' },
    },
    'Hour meter replaced | old one last at 812.4 h, new one first at 0 h',
  ],
  [
    {
      kind: 'session',
      use: 'circuit',
      tyreSet: 'set-1',
      pressuresHot: { frontLeft: { text: '2.1', unit: 'bar' } },
    },
    'Circuit | 1 session, on Sprint pads, tyres hot: front left 2.1 bar',
  ],
  [{ kind: 'service', items: ['set-1'] }, 'Service | Sprint pads'],
])('entryLine() puts %j in words', (draft, expected) => {
  expect(line(draft)).toBe(expected);
});
