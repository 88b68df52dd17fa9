import { describe, expect, test } from 'vitest';
import { carBook, type Line } from '../../test/car-book.ts';
import { analyseBook } from '../index.ts';
import type { BookDraft } from '../log/index.ts';
import { type Stop, stopOf } from './index.ts';

const winter: BookDraft['layUps'] = [{ id: 'w', start: '2026-01-01' }];
const hand = (on: string, what: 'bought' | 'sold' | 'lent' | 'returned'): Line => ({
  kind: 'handover',
  on,
  what,
});
const status = (lines: readonly Line[], said?: 'inPieces' | 'away' | 'sold', stored = false) =>
  analyseBook(carBook(lines, { profile: { status: said }, ...(stored ? { layUps: winter } : {}) }))
    .status;

describe('carStatus()', () => {
  test('carStatus() says laid up while a storage window covers the day, unless the car is sold', () => {
    expect(status([], undefined, true)).toBe('laidUp');
    expect(status([], 'inPieces', true)).toBe('laidUp');
    expect(status([], 'away', true)).toBe('laidUp');
    expect(status([], 'sold', true)).toBe('sold');
    expect(status([hand('2026-05-01', 'sold')], undefined, true)).toBe('sold');
    expect(status([hand('2026-05-01', 'lent')], undefined, true)).toBe('away');
  });

  test('carStatus() lets a return outdate "away" of the profile, and nothing outdate "in pieces"', () => {
    expect(status([hand('2026-05-01', 'returned')], 'away')).toBe('inUse');
    expect(status([hand('2026-05-01', 'bought')], 'inPieces')).toBe('inPieces');
    expect(status([hand('2026-05-01', 'lent')], 'inPieces')).toBe('away');
  });

  test('carStatus() takes the last handover by the order of the log, and none that was removed or lies ahead', () => {
    const lent = { ...hand('2026-05-01', 'lent'), time: '18:00' } as Line;
    const back = { ...hand('2026-05-01', 'returned'), time: '09:00' } as Line;
    expect(status([lent, back])).toBe('away');
    expect(status([{ ...lent, removed: true }, back])).toBe('inUse');
    expect(status([hand('2026-06-16', 'sold')])).toBe('inUse');
  });
});

describe('stopOf()', () => {
  const hose: Line = { kind: 'finding', on: '2026-06-01', what: 'Hose', severity: 'doNotDrive' };
  const soft: Line = { kind: 'incident', on: '2026-06-01', what: 'softPedal' };
  const off: Line = { kind: 'wheels', on: '2026-06-01', change: 'off' };
  const layUp: Line = {
    kind: 'layUp',
    on: '2026-01-01',
    lines: [{ what: 'exhaust', how: 'plugged' }],
  };
  const stop = (lines: readonly Line[], stored = false): Stop | null => {
    const book = carBook(lines, {
      profile: { status: 'inPieces' },
      ...(stored && { layUps: winter }),
    });
    const { status: found, matters } = analyseBook(book);
    return stopOf(found, matters);
  };

  test('stopOf() names the first that applies', () => {
    expect(stop([layUp, off, soft, hose])).toBe('doNotDrive');
    expect(stop([layUp, off, soft])).toBe('incident');
    expect(stop([layUp, off])).toBe('wheelsOff');
    expect(stop([layUp])).toBe('wakeSteps');
    expect(stop([])).toBe('inPieces');
  });

  test('stopOf() expects the steps of a lay-up while it lasts', () => {
    expect(stop([layUp], true)).toBe(null);
    expect(stop([layUp, off], true)).toBe('wheelsOff');
  });

  test('stopOf() lets a lesser finding pass', () => {
    const { status: found, matters } = analyseBook(
      carBook([{ ...hose, severity: 'beforeHardUse' } as Line]),
    );
    expect(stopOf(found, matters)).toBe(null);
  });
});
