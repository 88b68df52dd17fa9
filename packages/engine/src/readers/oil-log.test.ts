import fc from 'fast-check';
import { expect, test } from 'vitest';
import { oilLog } from './oil-log.ts';

const car = { id: 'c', spanL: 1 };
const reading = (at: string, level: unknown, more = {}) => ({
  at,
  kind: 'reading',
  level,
  ...more,
});

test('oilLog() takes the last level in the order of the log, not of the list', () => {
  const entries = [reading('2026-03-02', 0.5), reading('2026-03-01', 0.75)];
  expect(oilLog({ car, entries }).oil.lastReading).toEqual({
    entry: 0,
    level: 0.5,
    condition: null,
    offProcedure: false,
  });
});

test('oilLog() names an entry by its id where it has one', () => {
  const entries = [reading('2026-03-02', 0.5, { id: 'morning' })];
  expect(oilLog({ car, entries }).oil.lastReading?.entry).toBe('morning');
});

test('oilLog() drops a top-up with an unusable volume as a whole, its levels too', () => {
  const entries = [
    reading('2026-03-01', 0.5),
    { at: '2026-03-02', kind: 'topUp', volumeL: -3, levelAfter: 0.9 },
  ];
  const { oil } = oilLog({ car, entries });
  expect(oil.lastReading?.level).toBe(0.5);
  expect(oil.notes).toEqual([
    'top-up with an unusable volume -3: left out as a whole (2026-03-02)',
  ]);
});

test.each([7.5, -0.6, null, 'full', Number.NaN])('oilLog() notes that %s is no level', (level) => {
  const { oil } = oilLog({ car, entries: [reading('2026-03-01', level)] });
  expect(oil.lastReading).toBeNull();
  expect(oil.notes).toHaveLength(1);
});

test.each([-0.5, 1.6, 'none'])('oilLog() takes %s for a level', (level) => {
  const { oil } = oilLog({ car, entries: [reading('2026-03-01', level)] });
  expect(oil).toMatchObject({ lastReading: { level }, notes: [] });
});

test('oilLog() leaves out removed entries and those after asOf', () => {
  const entries = [
    reading('2026-03-01', 0.5),
    reading('2026-03-02', 0.6, { deleted: true }),
    reading('2026-03-03', 0.7),
    reading('2026-03-04', 0.8),
  ];
  const { asOf, oil } = oilLog({ car, entries, asOf: { at: '2026-03-03' } });
  expect(asOf).toBe('2026-03-03');
  expect(oil.lastReading?.level).toBe(0.7);
});

test('oilLog() lets a time in asOf end the day early, an untimed entry counting as noon', () => {
  const entries = [reading('2026-03-03T08:00', 0.7), reading('2026-03-03', 0.8)];
  expect(oilLog({ car, entries, asOf: { at: '2026-03-03T11:00' } }).oil.lastReading?.level).toBe(
    0.7,
  );
  expect(oilLog({ car, entries, asOf: { at: '2026-03-03T12:00' } }).oil.lastReading?.level).toBe(
    0.8,
  );
});

test('oilLog() judges a cold reading of a dry sump off its procedure', () => {
  const entries = [reading('2026-03-01', 0.2, { condition: { state: 'cold' } })];
  const dry = { ...car, drySump: true };
  expect(oilLog({ car: dry, entries }).oil.lastReading?.offProcedure).toBe(true);
});

test('oilLog() says when the span is not known or the odometer goes back', () => {
  const entries = [
    reading('2026-03-01', 0.5, { odometerKm: 900 }),
    reading('2026-03-02', 0.5, { odometerKm: 800 }),
  ];
  expect(oilLog({ car: { id: 'c' }, entries }).oil.notes).toEqual([
    'span not known: 1.0 L assumed',
    'odometer 800 km is lower than before: not used (2026-03-02)',
  ]);
});

test.each([-5, 1e308, '80', Number.NaN])(
  'oilLog() notes that %s is no distance of a use',
  (distanceKm) => {
    const use = { at: '2026-03-02', kind: 'use', useClass: 'circuit' };
    const day = (more: object) => [
      reading('2026-03-01', 0.9),
      { ...use, ...more },
      reading('2026-03-03', 0.5),
    ];
    const { notes, ...found } = oilLog({ car, entries: day({ distanceKm }) }).oil;
    expect(notes).toEqual([
      expect.stringMatching(/^distanceKm .* is no amount: not used \(2026-03-02\)$/),
    ]);
    expect({ ...found, notes: [] }).toEqual(oilLog({ car, entries: day({}) }).oil);
  },
);

test('oilLog() gives the same reading for every shuffling of entries that carry recorded', () => {
  const at = '2026-03-01';
  const entries = [
    reading(at, 0.25, { recorded: 1, id: 'a', odometerKm: 500 }),
    { at, kind: 'topUp', volumeL: 0.5, recorded: 2, id: 'b', odometerKm: 500 },
    reading(at, 0.75, { recorded: 3, id: 'c', odometerKm: 500 }),
    reading(at, 0.7, { recorded: 'x', id: 'd' }),
    { at, kind: 'use', useClass: 'road', recorded: 5, id: 'e' },
    { at, kind: 'odometerReplaced', odometerKm: 5, recorded: 6, id: 'f' },
  ];
  const expected = oilLog({ car, entries }).oil;
  fc.assert(
    fc.property(fc.shuffledSubarray(entries, { minLength: entries.length }), (shuffled) => {
      expect(oilLog({ car, entries: shuffled }).oil).toEqual(expected);
    }),
  );
});
