import { eventInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { cornersOf, emptyCar, emptyMeasured } from './debrief-fields.ts';
import { type CarAbout, readCar } from './debrief-parts.ts';

const event = eventInput.parse({
  name: 'Circuit day',
  sort: 'circuit',
  start: '2026-06-13',
  cars: ['c'],
  use: { sessions: 5 },
});
const about: CarAbout = {
  carId: 'c',
  eventId: 'ev',
  event,
  zone: 'Europe/London',
  today: '2026-06-15',
  volumeUnit: 'l',
  recorded: [],
  idOf: (key) => `id ${key}`,
};
const nothing = emptyCar({ unit: 'km', volumeUnit: 'l' });
const went = { ...nothing, went: 'yes' } as const;
const common = { on: '2026-06-13', zone: 'Europe/London', car: 'c' };

test('readCar() reads nothing of a car nobody has spoken of, however much was planned', () => {
  expect(readCar(nothing, about)).toEqual({ parts: [], problems: {} });
});

test('readCar() takes what is missing of the plan once somebody says that it went', () => {
  expect(readCar(went, about).parts).toEqual([
    {
      key: 'c:use:2026-06-13',
      entry: {
        ...common,
        id: 'id c:use:2026-06-13',
        kind: 'session',
        use: 'circuit',
        sessions: 5,
        event: 'ev',
      },
    },
  ]);
});

test('readCar() writes an answer to the event for a car that stayed at home', () => {
  const { parts } = readCar({ ...nothing, went: 'no' }, about);
  expect(parts.map(({ entry }) => entry)).toEqual([
    { ...common, id: 'id c:stayed', kind: 'answer', notice: 'ev', answer: 'did not go' },
  ]);
});

test('readCar() asks what a car did of which nothing is said and nothing is on record', () => {
  const uses = { '2026-06-13': { count: '', distance: null, hours: '' } };
  expect(readCar({ ...went, uses }, about)).toEqual({
    parts: [],
    problems: { 'c:car': { 'entry.use': 'Say what it did there, or that it did not go.' } },
  });
});

test('readCar() makes one entry of oil added and the level after it', () => {
  const added = { text: '0,5', unit: 'l' };
  const { parts } = readCar({ ...went, added, level: 'half' }, about);
  expect(parts.map(({ entry }) => entry.kind)).toEqual(['session', 'oilTopUp']);
  expect(parts[1]?.entry).toMatchObject({
    volume: added,
    levelAfter: { how: 'fraction', fraction: 0.5 },
    dayOrder: 'afterDriving',
  });
  const { parts: looked } = readCar({ ...went, level: 'half' }, about);
  expect(looked[1]?.entry).toMatchObject({ kind: 'oilCheck', level: { fraction: 0.5 } });
});

test('readCar() makes an entry of each measured part, finding and odometer, and leaves out empty rows', () => {
  const pads = emptyMeasured('pads', cornersOf(['front']));
  const first = pads.pads[0];
  if (first) first.inner = { text: '7.5', unit: 'mm' };
  const tyres = emptyMeasured('tyres', cornersOf([]));
  const found = {
    what: 'Weeping damper',
    corner: '',
    place: '',
    severity: 'watch',
    dueBy: '',
  } as const;
  const blank = { ...found, what: '', severity: '' } as const;
  const { parts } = readCar(
    {
      ...went,
      odometer: { text: '41,200', unit: 'km' },
      measured: { p: pads, t: tyres },
      findings: [blank, found],
    },
    about,
  );
  expect(parts.map(({ key, entry }) => [key, entry.kind])).toEqual([
    ['c:use:2026-06-13', 'session'],
    ['c:odometer', 'odometer'],
    ['c:measure:p', 'measure'],
    ['c:finding:1', 'finding'],
  ]);
  expect(parts[2]?.entry).toMatchObject({
    component: 'p',
    pads: [{ corner: 'frontLeft', inner: { text: '7.5', unit: 'mm' } }],
  });
});

test('readCar() says what is wrong by line and path, and reads the other lines', () => {
  const uses = { '2026-06-13': { count: 'many', distance: null, hours: '' } };
  const { parts, problems } = readCar(
    { ...went, uses, odometer: { text: 'x', unit: 'km' }, level: 'max' },
    about,
  );
  expect(parts.map(({ key }) => key)).toEqual(['c:oil']);
  expect(problems['c:use:2026-06-13']).toEqual({
    'entry.sessions': 'Say how many sessions; one or more.',
  });
  expect(problems['c:odometer']).toHaveProperty(['entry.odometer.text']);
});

test('readCar() writes passes at a drag strip, and one drive for a trip of several days', () => {
  const strip = { ...event, sort: 'dragStrip', use: { launches: 2 } } as const;
  expect(readCar(went, { ...about, event: strip }).parts[0]?.entry).toMatchObject({
    kind: 'strip',
    passes: [{}, {}],
  });
  const use = { distance: { text: '600', unit: 'km' as const } };
  const trip = { ...event, sort: 'roadTrip', end: '2026-06-14', use } as const;
  expect(readCar(went, { ...about, event: trip }).parts.map(({ entry }) => entry)).toEqual([
    expect.objectContaining({
      kind: 'drive',
      use: 'touring',
      distance: { text: '600', unit: 'km' },
      until: '2026-06-14',
    }),
  ]);
});

test.each([
  [['front'], ['frontLeft', 'frontRight']],
  [['rearLeft'], ['rearLeft']],
  [['somewhere'], ['frontLeft', 'frontRight', 'rearLeft', 'rearRight']],
])('cornersOf() %j', (positions, corners) => {
  expect(cornersOf(positions)).toEqual(corners);
});
