import { describe, expect, test } from 'vitest';
import { askedCar } from '../../../test/asked-car.ts';
import { carBook, km, type Line } from '../../../test/car-book.ts';
import { type EventDraft, eventInput } from '../../log/event.ts';
import { takeAlong } from './take-along.ts';

const asked = (more: Partial<EventDraft> = {}) => ({
  id: 'e',
  event: eventInput.parse({
    name: 'Day',
    sort: 'circuit',
    start: '2026-06-20',
    cars: ['car'],
    use: { sessions: 5 },
    travel: { distance: km(100) },
    ...more,
  }),
});
const circuit = (on: string, odometer: number): Line => ({
  kind: 'session',
  use: 'circuit',
  on,
  time: '12:00',
  distance: km(200),
  odometer: km(odometer),
});
const profile = { octane: 98 };
const fill = (on: string, odometer: number | null, litres: number, full = true): Line => ({
  kind: 'fuel',
  on,
  time: '18:00',
  volume: { text: String(litres), unit: 'l' },
  full,
  ...(odometer !== null && { odometer: km(odometer) }),
});
/** 9 L on 100 km of road, 40 L on 100 km of circuit. */
const filled: Line[] = [
  fill('2026-04-01', 10_000, 50),
  fill('2026-04-08', 10_400, 36),
  circuit('2026-04-12', 10_700),
  fill('2026-04-15', 10_900, 107),
  fill('2026-04-20', 11_300, 36),
  fill('2026-04-22', null, 20, false),
  fill('2026-04-25', 11_600, 7),
  circuit('2026-05-02', 11_900),
  fill('2026-05-03', 11_900, 89),
];
const fuelOf = (lines: readonly Line[], event = asked(), more = {}) =>
  takeAlong(askedCar(carBook(lines, { profile: { ...profile, ...more } })), event).fuel;

describe('takeAlong() of fuel', () => {
  test('takeAlong() tells road from hard use by the fill-ups, partial ones with the next full one', () => {
    const fuel = fuelOf(filled);
    // 200 km there at 40 L, 200 km of road at 9 L
    expect(fuel.likelyL).toBeCloseTo(98, 6);
    expect(fuel.cautiousL).toBeCloseTo(98, 6);
    expect(fuel.octane).toBe(98);
    expect(fuel.evidence).toEqual(['e0', 'e1', 'e3', 'e4', 'e5', 'e6', 'e8']);
    expect(fuel.reason).toBe(
      'Likely 98 L, no more than 98 L nine times in ten: 80 L there and 18 L on the way there and back, by 5 stretches between full tanks. In cans: approved ones only, as the law and the organiser allow (common practice).',
    );
  });

  test('takeAlong() asks for full tanks where there are fewer than four stretches', () => {
    const fuel = fuelOf(filled.slice(0, 4));
    expect(fuel).toMatchObject({ likelyL: null, cautiousL: null, octane: 98, evidence: [] });
    expect(fuel.reason).toMatch(/^2 stretches between full tanks on record, 4 are needed/);
    expect(fuelOf([]).reason).toMatch(/^No stretch between full tanks/);
    expect(
      fuelOf(filled.map((line) => (line.kind === 'fuel' ? { ...line, full: false } : line)))
        .likelyL,
    ).toBeNull();
  });

  test('takeAlong() says nothing of hard use that the fill-ups do not hold', () => {
    const road: Line[] = [0, 1, 2, 3, 4].map((at) =>
      fill(`2026-04-0${at + 1}`, 10_000 + 400 * at, 36 + (at % 2)),
    );
    expect(fuelOf(road).likelyL).toBeNull();
    expect(fuelOf(road).reason).toMatch(/^No stretch with hard use/);
    const trip = asked({ sort: 'roadTrip', use: { distance: km(1000) } });
    expect(fuelOf(road, trip).likelyL).toBeCloseTo(109.5, 6);
    expect(fuelOf(road, trip).cautiousL ?? 0).toBeGreaterThan(111);
    const odd = filled.map((line) =>
      line.kind === 'fuel' && ['2026-04-15', '2026-05-03'].includes(line.on)
        ? { ...line, volume: { text: '10', unit: 'l' as const } }
        : line,
    );
    expect(fuelOf(odd).reason).toMatch(/do not tell road from hard use/);
  });

  test('takeAlong() says nothing where the fill-ups scatter', () => {
    const litres = [5, 60, 8, 70, 4];
    const wild = litres.map((one, at) => fill(`2026-04-0${at + 1}`, 10_000 + 400 * at, one));
    const trip = asked({ sort: 'roadTrip', use: { distance: km(1000) } });
    expect(fuelOf(wild, trip)).toMatchObject({ likelyL: null, cautiousL: null });
    expect(fuelOf(wild, trip).reason).toMatch(/^What was filled up goes too little with/);
  });

  test('takeAlong() leaves out a stretch that nobody knows the length of', () => {
    const exchanged: Line[] = [
      ...filled,
      { kind: 'meterReplaced', on: '2026-05-10', meter: 'odometer', newFirst: km(0) },
      fill('2026-05-20', 300, 500),
    ];
    expect(fuelOf(exchanged)).toEqual(fuelOf(filled));
    // read ten times too high, so the history sets it aside, and the next fill makes the stretch
    const typo = fill('2026-04-08', 104_000, 36);
    const misread = fuelOf(filled.map((line, at) => (at === 1 ? typo : line)));
    expect(misread.reason).toMatch(/by 4 stretches/);
    expect(misread.likelyL).toBeCloseTo(98, 6);
    const removed = { ...fill('2026-04-21', 11_350, 500), removed: true };
    expect(fuelOf([...filled, removed])).toEqual(fuelOf(filled));
  });

  test('takeAlong() says why it says nothing', () => {
    expect(fuelOf(filled, asked({ use: undefined })).reason).toMatch(/Nobody said what it does/);
    expect(fuelOf(filled, asked(), { drive: 'electric' })).toMatchObject({
      likelyL: null,
      octane: null,
      reason: 'It takes no fuel.',
    });
    const meet = { sort: 'meet', use: undefined } as const;
    expect(fuelOf(filled, asked({ ...meet, travel: undefined }))).toMatchObject({
      likelyL: null,
      reason: 'Nobody said how far it is.',
    });
    expect(fuelOf(filled, asked({ ...meet, travel: { trailered: ['car'] } })).likelyL).toBe(0);
    expect(fuelOf(filled, asked(meet)).likelyL).toBeCloseTo(18, 6);
    expect(fuelOf(filled, asked({ travel: undefined })).reason).toMatch(/The way is not counted/);
  });

  test('takeAlong() buys fuel in gallons where oil is bought in quarts', () => {
    const car = askedCar(carBook(filled), { distance: 'mi', volume: 'usQt' });
    expect(takeAlong(car, asked()).fuel.reason).toMatch(
      /^Likely 26 US gal, no more than 26 US gal/,
    );
  });

  test('takeAlong() takes a tour for road', () => {
    const tour: Line = {
      kind: 'drive',
      use: 'touring',
      on: '2026-04-18',
      time: '12:00',
      distance: km(300),
    };
    expect(fuelOf([...filled, tour]).likelyL).toBeCloseTo(98, 6);
  });
});
