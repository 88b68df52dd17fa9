import { describe, expect, test } from 'vitest';
import { carBook, km, type Line } from '../../test/car-book.ts';
import { needOf } from '../../test/need-of.ts';
import { analyseBook } from '../readers/index.ts';
import { carReadiness, usualRequirements } from '../readiness/index.ts';
import type { CarReadiness, Need } from '../readiness/result.ts';
import { goOutAgain } from './go-out-again.ts';

const saidIn = { distance: 'km', volume: 'l' } as const;
const check = (on: string, odo: number, fraction: number): Line => ({
  kind: 'oilCheck',
  on,
  odometer: km(odo),
  level: { how: 'fraction', fraction, step: 0.25 },
});
const LOGGED: Line[] = [
  check('2026-03-01', 40_000, 1),
  check('2026-03-20', 40_900, 0.75),
  check('2026-04-20', 41_900, 0.5),
  { kind: 'oilTopUp', on: '2026-04-20', time: '18:00', volume: { text: '0.5', unit: 'l' } },
  check('2026-06-14', 42_400, 1),
];

/** By the rules themselves. */
function ask(...lines: Line[]) {
  const book = carBook(lines, { profile: { oilSpanL: 1 } });
  const asked = { book, parts: [], drivers: [], past: [], acceptances: [], saidIn };
  const road = carReadiness(asked, null, usualRequirements('road'));
  return goOutAgain(road, analyseBook(book), saidIn);
}

/** By needs made by hand. */
const road = (...needs: Partial<Need>[]): CarReadiness => ({
  car: 'car',
  use: 'road',
  event: null,
  verdict: { word: 'ready', by: null },
  needs: needs.map(needOf),
});
const bare = analyseBook(carBook([]));

describe('goOutAgain()', () => {
  test('goOutAgain() tells oil, wear and wheels where nothing on record is in the way', () => {
    const analysis = analyseBook(
      carBook(
        [
          ...LOGGED,
          { kind: 'wheels', on: '2026-06-14', odometer: km(42_400), change: 'torqued' },
          { kind: 'odometer', on: '2026-06-15', odometer: km(42_412) },
        ],
        { profile: { oilSpanL: 1 } },
      ),
    );
    const pads = { kind: 'pads', title: 'Front pads', margin: { value: 3.1, unit: 'mm' } } as const;
    const told = goOutAgain(road({ kind: 'oilLevel' }, pads), analysis, saidIn);
    expect(told.words).toMatch(
      /^Nothing on record is in the way: oil [a-zA-Z ]+ by the ledger, Front pads 3\.1 mm left, wheels torqued 12 km ago\.$/,
    );
    expect(told.mark).toBe('ready');
  });

  test('goOutAgain() says what is not on record, and marks it so', () => {
    const told = ask(...LOGGED);
    expect(told.mark).toBe('readyUnknown');
    expect(told.words).toMatch(
      /^Nothing on record is in the way: oil .* by the ledger\. Not on record: /,
    );
    expect(told.words).toMatch(/Brake pads; Tyres; Wheel torque\.$/);
    expect(ask().words).toMatch(/^Nothing on record is in the way\. Not on record: Oil level; /);
  });

  test('goOutAgain() tells the worst of what is in the way first, whatever its place in the log', () => {
    const told = ask(
      ...LOGGED,
      { kind: 'wheels', on: '2026-06-15', change: 'off' },
      { kind: 'incident', on: '2026-06-15', what: 'softPedal' },
      {
        kind: 'finding',
        on: '2026-06-15',
        what: 'Brake hose cracked',
        where: 'rearLeft',
        severity: 'doNotDrive',
      },
    );
    expect(told.mark).toBe('notReady');
    expect(told.words).toMatch(
      /^In the way: do not drive, Brake hose cracked, rear left, since 15 June 2026\. Soft brake pedal on 15 June 2026, not looked over yet\. Wheels were off on 15 June 2026/,
    );
  });

  test('goOutAgain() counts and names what goes beyond three', () => {
    const open = { status: 'notMet', weight: 'blocking', reason: 'It is so.' } as const;
    const told = goOutAgain(
      road(
        { ...open, kind: 'bedding', title: 'Pads, bedding' },
        { ...open, kind: 'openJob', title: 'Oil drained' },
        { ...open, kind: 'wheels', title: 'Wheels off' },
        { ...open, kind: 'incident', title: 'Soft brake pedal' },
      ),
      bare,
      saidIn,
    );
    expect(told.words).toBe(
      'In the way: It is so. It is so. And two more: Oil drained; Pads, bedding.',
    );
  });

  test('goOutAgain() calls advice what it is, and names what its reason is about', () => {
    const told = goOutAgain(
      road({
        kind: 'oilLook',
        weight: 'advice',
        status: 'metAfterWork',
        title: 'Look at the stick',
        reason: 'Last looked at 12 days ago.',
      }),
      bare,
      saidIn,
    );
    expect(told).toEqual({
      mark: 'afterWork',
      words: 'See to it first: Look at the stick, last looked at 12 days ago.',
    });
  });

  test('goOutAgain() tells findings for before hard use, though they keep no car off the road', () => {
    const hose: Line = {
      kind: 'finding',
      on: '2026-06-12',
      what: 'Brake hose weeps',
      severity: 'beforeHardUse',
    };
    const told = ask(...LOGGED, hose);
    expect(told.words).toContain('Before hard use: Brake hose weeps, since 12 June 2026.');
    expect(told.mark).toBe('afterWork');
  });

  test('goOutAgain() tells a limit without which no car is ready', () => {
    const reason = 'Overdue: 12 months passed on 2 June 2026.';
    const limit = { kind: 'limit', status: 'metAfterWork', title: 'Brake fluid', reason } as const;
    expect(goOutAgain(road(limit), bare, saidIn).words).toMatch(
      /^In the way: Brake fluid, overdue: 12 months passed on 2 June 2026\./,
    );
  });

  test('goOutAgain() passes over what is nobody’s question then, and never says safe', () => {
    const limit = { kind: 'limit', weight: 'advice', status: 'notMet', title: 'Coolant' } as const;
    expect(goOutAgain(road(limit), bare, saidIn).words).not.toContain('Coolant');
    for (const lines of [[], LOGGED]) expect(ask(...lines).words).not.toMatch(/\bsafe/i);
  });
});
