import { describe, expect, test } from 'vitest';
import { askedCar } from '../../../test/asked-car.ts';
import { carBook, km, type Line } from '../../../test/car-book.ts';
import { type EventDraft, eventInput } from '../../log/event.ts';
import { analyseBook } from '../../readers/analyse-book.ts';
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
const look = (on: string, fraction: number, odometer: number): Line => ({
  kind: 'oilCheck',
  on,
  level: { how: 'fraction', fraction },
  odometer: km(odometer),
});
const toMax = (on: string, litres: string, odometer: number): Line => ({
  kind: 'oilTopUp',
  on,
  volume: { text: litres, unit: 'l' },
  toMax: true,
  odometer: km(odometer),
});
/** 0.3 L on 1,000 km of road. */
const onTheRoad: Line[] = [
  look('2026-01-10', 1, 10_000),
  look('2026-02-10', 0.7, 11_000),
  toMax('2026-02-10', '0.3', 11_000),
  look('2026-03-10', 0.7, 12_000),
  toMax('2026-03-10', '0.3', 12_000),
  look('2026-04-10', 0.55, 13_500),
  toMax('2026-04-10', '0.45', 13_500),
];
const circuit = (on: string, odometer: number): Line => ({
  kind: 'session',
  use: 'circuit',
  on,
  time: '12:00',
  distance: km(200),
  odometer: km(odometer),
});
const profile = { oilSpanL: 1, oilGrade: '5W-40', oilApproval: 'X 1', octane: 98 };
const oilOf = (lines: readonly Line[], event = asked(), more = {}) =>
  takeAlong(askedCar(carBook(lines, { profile: { ...profile, ...more } })), event).oil;
const hard: Line[] = [
  ...onTheRoad,
  circuit('2026-05-02', 13_700),
  look('2026-05-02', 0.8, 13_700),
  toMax('2026-05-02', '0.2', 13_700),
  circuit('2026-05-16', 13_900),
  look('2026-05-17', 0.8, 13_900),
];

describe('takeAlong() of oil', () => {
  test('takeAlong() says what is missing to MAX, used there and on the way, and how sure', () => {
    const oil = oilOf(hard);
    const { level, roadRate, hardRate } = analyseBook(carBook(hard, { profile })).oil;
    const likely = Math.max(0, -level.p50) + 0.2 * roadRate.p50 + 0.2 * hardRate.p50;
    expect(oil).toMatchObject({ measured: true, grade: '5W-40', approval: 'X 1' });
    expect(oil.likelyL).toBeCloseTo(likely, 5);
    expect(oil.cautiousL ?? 0).toBeGreaterThan(likely + 0.05);
    expect(oil.evidence).toEqual(['e11']);
    // driven since the look of 17 May, so more is missing by now than was read
    expect(oil.reason).toBe(
      'Likely 0.6 L, no more than 1 L nine times in ten: 0.4 L to MAX now, 0.2 L there and 0.1 L on the way there and back.',
    );
  });

  test('takeAlong() leaves the way out on a trailer, and says so where nobody said how far it is', () => {
    const driven = oilOf(hard);
    const trailered = oilOf(hard, asked({ travel: { distance: km(100), trailered: ['car'] } }));
    const unsaid = oilOf(hard, asked({ travel: undefined }));
    expect(trailered.likelyL ?? 9).toBeLessThan(driven.likelyL ?? 0);
    expect(trailered.reason).not.toMatch(/way/);
    expect(unsaid.likelyL).toBe(trailered.likelyL);
    expect(unsaid.reason).toMatch(/The way is not counted: nobody said how far it is\./);
  });

  test('takeAlong() shows no rate of hard use that was only assumed', () => {
    const none = { likelyL: null, cautiousL: null, measured: false };
    expect(oilOf(onTheRoad)).toMatchObject(none);
    expect(oilOf(onTheRoad).reason).toMatch(/never measured on this car.*Take a bottle along/);
    // logged, but nobody looked at the stick since, or not by the car's procedure
    const unseen = [...onTheRoad, circuit('2026-05-02', 13_700)];
    expect(oilOf(unseen)).toMatchObject(none);
    const cold = { ...look('2026-05-03', 0.8, 13_700), condition: { state: 'cold' } } as Line;
    const by = { dipstick: { state: 'hotIdle' }, sump: 'dry' };
    expect(oilOf([...unseen, cold], asked(), by)).toMatchObject(none);
    expect(oilOf([...unseen, look('2026-05-03', 0.8, 13_700)])).toMatchObject({ measured: true });
  });

  test('takeAlong() needs only the rates that the event asks for', () => {
    const trip = { sort: 'roadTrip', use: { distance: km(800) } } as const;
    expect(oilOf(onTheRoad, asked(trip))).toMatchObject({ measured: true });
    const strip = asked({ sort: 'dragStrip', use: { launches: 6 } });
    expect(oilOf(hard, strip)).toMatchObject({ measured: false, likelyL: null });
    expect(oilOf(hard, strip).reason).toMatch(/drag strip was never measured/);
    const run: Line = { kind: 'strip', on: '2026-05-20', passes: [{}, {}, {}, {}] };
    const seen = [...hard, run, look('2026-05-21', 0.7, 13_950)];
    expect(oilOf([...hard, run], strip)).toMatchObject({ measured: false });
    expect(oilOf(seen, strip)).toMatchObject({ measured: true });
    const { stripPerRun, roadRate, level } = analyseBook(carBook(seen, { profile })).oil;
    expect(oilOf(seen, strip).likelyL).toBeCloseTo(
      Math.max(0, -level.p50) + 0.2 * roadRate.p50 + 6 * (stripPerRun?.p50 ?? 0),
      5,
    );
  });

  test('takeAlong() asks for readings where there are too few, and for the use where nobody said it', () => {
    const few = oilOf([look('2026-05-02', 0.8, 10_000)]);
    expect(few).toMatchObject({ measured: false, likelyL: null, grade: '5W-40' });
    expect(few.reason).toMatch(/Too few readings yet.*common practice/);
    const unsaid = oilOf(hard, asked({ use: undefined }));
    expect(unsaid).toMatchObject({ measured: true, likelyL: null, cautiousL: null });
    expect(unsaid.reason).toMatch(/Nobody said what it does there/);
    expect(oilOf(onTheRoad, asked({ use: undefined }))).toMatchObject({ measured: false });
    expect(oilOf(hard, asked(), { drive: 'electric' }).reason).toBe('It has no engine oil.');
  });

  test('takeAlong() speaks in the bottles of the garage, and of a span nobody gave', () => {
    const book = carBook(hard, { profile: { ...profile, oilSpanL: undefined } });
    const car = askedCar(book, { distance: 'mi', volume: 'usQt' });
    const { reason } = takeAlong(car, asked()).oil;
    expect(reason).toMatch(/US qt nine times in ten: .* US qt there/);
    expect(reason).not.toMatch(/\d L\b/);
    expect(reason).toMatch(/between MIN and MAX is taken to be/);
  });

  test('takeAlong() counts drag-strip kilometres without runs as road, as the ledger does', () => {
    const { roadRate, level } = analyseBook(carBook(onTheRoad, { profile })).oil;
    const event = asked({ sort: 'dragStrip', use: { distance: km(100) } });
    const likely = Math.max(0, -level.p50) + 0.3 * roadRate.p50;
    expect(oilOf(onTheRoad, event).likelyL).toBeCloseTo(likely, 5);
  });

  test('takeAlong() says where a rate is rough', () => {
    const trip = asked({ sort: 'roadTrip', use: { distance: km(800) } });
    const few = onTheRoad.slice(0, 2);
    expect(analyseBook(carBook(few, { profile })).oil.status).toBe('weak');
    expect(oilOf(few, trip).reason).toMatch(/Rough, so far\.$/);
    expect(oilOf(onTheRoad, trip).reason).not.toMatch(/Rough/);
  });
});
