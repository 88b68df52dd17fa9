import { expect, test } from 'vitest';
import { carBook, km, type Line } from '../../test/car-book.ts';
import { analyseBook } from '../readers/index.ts';
import { mayLayAside, urgentFact, urgentKey, urgentOf } from './urgent-fact.ts';

const hose: Line = {
  kind: 'finding',
  on: '2026-06-12',
  what: 'Brake hose cracked',
  where: 'rearLeft',
  severity: 'doNotDrive',
};
const pedal: Line = {
  kind: 'incident',
  on: '2026-06-13',
  what: 'softPedal',
  detail: 'twice, in the last zone',
};
const wheels: Line = { kind: 'wheels', on: '2026-06-14', change: 'off' };
const dry: Line = {
  kind: 'oilCheck',
  on: '2026-06-11',
  odometer: km(40_000),
  level: { how: 'none' },
};

const of = (...lines: Line[]) => urgentOf(analyseBook(carBook(lines)));

test('urgentOf() names the worst of what forbids driving, and counts the rest', () => {
  expect(of(pedal, hose, wheels)).toEqual({
    stop: 'doNotDrive',
    oil: null,
    since: '2026-06-12',
    what: 'do not drive, Brake hose cracked, rear left, since 12 June 2026, and one more',
  });
  expect(of(pedal)?.what).toBe('soft brake pedal on 13 June 2026, not looked over yet');
  expect(of(wheels)).toMatchObject({
    stop: 'wheelsOff',
    since: '2026-06-14',
    what: 'wheels off on 14 June 2026, torque not on record since',
  });
});

test('urgentOf() tells oil that cannot wait, alone or beside what stops the car', () => {
  expect(of(dry)).toEqual({
    stop: null,
    oil: 'none',
    since: '2026-06-11',
    what: 'oil none on the stick',
  });
  expect(of(dry, wheels)).toMatchObject({ oil: 'none', since: '2026-06-14' });
  expect(of(dry, wheels)?.what).toMatch(/torque not on record since; oil none on the stick$/);
});

test('urgentOf() is silent where nothing of the kind is on record', () => {
  expect(of()).toBeNull();
  expect(of({ ...hose, severity: 'beforeHardUse' })).toBeNull();
  expect(of({ ...wheels, change: 'torqued' })).toBeNull();
});

test('urgentOf() passes over a car that waits, and tells of a lent one what forbids driving alone', () => {
  const laidUp = analyseBook(
    carBook([hose, wheels], { layUps: [{ id: 'w', start: '2026-06-13' }] }),
  );
  expect(laidUp.status).toBe('laidUp');
  expect(urgentOf(laidUp)).toBeNull();
  const lent: Line = { kind: 'handover', on: '2026-06-14', what: 'lent' };
  expect(of(hose, lent)?.stop).toBe('doNotDrive');
  expect(of(wheels, dry, lent)).toBeNull();
  const sold: Line = { ...lent, what: 'sold' };
  expect(of(hose, sold)).toBeNull();
});

test('urgentFact() tells the stop though nothing else of the car can be read', () => {
  const bare = { status: 'inUse', matters: null, oil: null, lookedOn: null } as const;
  expect(urgentFact({ ...bare, stop: 'doNotDrive' })).toEqual({
    stop: 'doNotDrive',
    oil: null,
    since: null,
    what: 'do not drive',
  });
  expect(urgentFact({ ...bare, stop: 'inPieces' })).toBeNull();
});

test('what forbids driving cannot be laid aside, and what can comes back when it changes', () => {
  const asides = [hose, pedal, wheels, dry].map((line) => {
    const fact = of(line);
    return fact && mayLayAside(fact);
  });
  expect(asides).toEqual([false, false, true, true]);
  const key = (...lines: Line[]) => {
    const fact = of(...lines);
    return fact && urgentKey(fact);
  };
  expect(key(wheels)).toBe(key(wheels, { kind: 'note', on: '2026-06-14', note: 'x' }));
  expect(key(wheels)).not.toBe(key(wheels, dry));
  expect(key(dry)).not.toBe(key({ ...dry, on: '2026-06-12' }));
});
