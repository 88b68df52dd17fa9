import { describe, expect, test } from 'vitest';
import { carBook, km, type Line } from '../../test/car-book.ts';
import { analyseBook } from '../index.ts';

const wheels = (lines: readonly Line[]) => analyseBook(carBook(lines)).matters.wheels;
const change = (what: 'off' | 'torqued' | 'rechecked', on: string, more = {}): Line => ({
  kind: 'wheels',
  change: what,
  on,
  ...more,
});
const read = (on: string, value: number): Line => ({ kind: 'odometer', on, odometer: km(value) });
const session: Line = {
  kind: 'session',
  use: 'circuit',
  on: '2026-06-05',
  time: '10:00',
  distance: km(20),
};

describe('wheelsState()', () => {
  test('wheelsState() counts the days of an interval between two readings that come after', () => {
    const lines = [
      read('2026-06-01', 1000),
      change('torqued', '2026-06-05'),
      read('2026-06-11', 2000),
    ];
    // 1,000 km over 10 days; 6 to 11 June come after the torque
    expect(wheels(lines)).toMatchObject({ state: 'recheckDue', sinceKm: 600 });
  });

  test('wheelsState() counts a drag-strip day as a session', () => {
    const strip: Line = { kind: 'strip', on: '2026-06-06', passes: [{}, {}, {}] };
    expect(wheels([change('torqued', '2026-06-05'), strip])).toMatchObject({
      state: 'recheckDue',
      sinceSessions: 1,
    });
  });

  test('wheelsState() asks for the check where the distance since is not known', () => {
    const exchange: Line = {
      kind: 'meterReplaced',
      on: '2026-06-07',
      meter: 'odometer',
      newFirst: km(0),
    };
    const lines = [
      read('2026-06-01', 1000),
      change('torqued', '2026-06-05'),
      exchange,
      read('2026-06-08', 5),
    ];
    expect(wheels(lines)).toMatchObject({ state: 'recheckDue', sinceKm: null });
  });

  test('wheelsState() takes a re-check of wheels that were off as their torque, to be checked again', () => {
    const off = change('off', '2026-06-01');
    const again = change('rechecked', '2026-06-02');
    expect(wheels([off, again]).state).toBe('torqued');
    expect(wheels([off, again, session]).state).toBe('recheckDue');
    const last = change('rechecked', '2026-06-06');
    expect(wheels([off, again, session, last]).state).toBe('rechecked');
  });

  test('wheelsState() begins anew when wheels come off again, and forgets what was removed', () => {
    const lines = [change('torqued', '2026-06-01'), session, change('rechecked', '2026-06-06')];
    const off = change('off', '2026-06-07', { which: ['rearLeft'] });
    expect(wheels([...lines, off])).toMatchObject({
      state: 'off',
      corners: ['rearLeft'],
      entry: 'e3',
    });
    expect(wheels([...lines, { ...off, removed: true }]).state).toBe('rechecked');
    expect(wheels([...lines, { ...off, on: '2026-06-16' }]).state).toBe('rechecked');
  });

  test('wheelsState() names the earliest of the entries where wheels are alike', () => {
    const front = change('off', '2026-06-03', { which: ['frontLeft'] });
    const rear = change('off', '2026-06-01', { which: ['rearLeft'] });
    expect(wheels([front, rear])).toMatchObject({
      corners: ['frontLeft', 'rearLeft'],
      entry: 'e1',
      on: '2026-06-01',
    });
  });
});

describe('wakeSteps()', () => {
  const steps = (lines: readonly Line[]) =>
    analyseBook(carBook(lines)).matters.wakeSteps.map(({ what }) => what);
  const layUp = (on: string, ...what: string[]): Line => ({
    kind: 'layUp',
    on,
    lines: what.map((one) => ({ what: one, how: 'covered' })),
  });
  const wake = (on: string, ...what: string[]): Line => ({
    ...layUp(on, ...what),
    kind: 'wakeUp',
  });

  test('wakeSteps() come from the newest lay-up, and a wake-up before it undoes nothing of it', () => {
    const lines = [
      layUp('2025-01-01', 'Exhaust', 'Seats'),
      wake('2025-04-01', 'Seats'),
      layUp('2026-01-01', 'Seats', 'Battery'),
    ];
    expect(steps(lines)).toEqual(['Seats', 'Battery']);
    expect(steps([...lines, wake('2026-04-01', 'BATTERY ')])).toEqual(['Seats']);
    expect(steps([...lines, wake('2026-04-01')])).toEqual(['Seats', 'Battery']);
  });

  test('wakeSteps() falls back to the lay-up before where the newest was removed', () => {
    const newer = layUp('2026-01-01', 'Battery');
    expect(steps([layUp('2025-01-01', 'Seats'), { ...newer, removed: true }])).toEqual(['Seats']);
  });
});
