import { describe, expect, it } from 'vitest';
import { entriesOf } from '../../test/gear-book.ts';
import { fitProblem } from './fit-problem.ts';
import { fitWindows, foldFits } from './fit-windows.ts';

const fit = { kind: 'fit', component: 'set' } as const;
const on = { ...fit, change: 'on' } as const;
const off = { ...fit, change: 'off' } as const;
const moved = { ...fit, change: 'moved' } as const;

const brief = (entries: ReturnType<typeof entriesOf>) =>
  fitWindows(entries).map(({ car, positions, start, end, conflict }) => [
    `${car} ${positions.join('+')}`.trim(),
    start,
    end,
    ...(conflict ? ['conflict'] : []),
  ]);
const codes = (entries: ReturnType<typeof entriesOf>) =>
  foldFits(entries).flags.map(({ code, entry, other }) => [code, entry, ...(other ? [other] : [])]);

describe('fitWindows()', () => {
  it('opens at on, closes at off, whatever order they come in', () => {
    const entries = entriesOf([
      { ...off, on: '2026-05-01' },
      { ...on, on: '2026-04-01', car: 'a', positions: ['rear'] },
      { ...on, on: '2026-05-10', car: 'b' },
    ]);
    expect(brief(entries)).toEqual([
      ['a rear', '2026-04-01', '2026-05-01'],
      ['b', '2026-05-10', null],
    ]);
    expect(codes(entries)).toEqual([]);
  });

  it('leaves removed entries and other kinds out', () => {
    const entries = entriesOf([
      { ...on, on: '2026-04-01', car: 'a' },
      { ...off, on: '2026-04-02', removed: true },
      { kind: 'note', note: 'off', on: '2026-04-03', gear: 'set' },
    ]);
    expect(brief(entries)).toEqual([['a', '2026-04-01', null]]);
  });

  it('swaps on one day by time, and by what was recorded first where there is none', () => {
    const timed = entriesOf([
      { ...on, on: '2026-04-10', time: '15:00', car: 'b' },
      { ...on, on: '2026-04-01', car: 'a' },
      { ...off, on: '2026-04-10', time: '14:00', car: 'a' },
    ]);
    const untimed = entriesOf([
      { ...on, on: '2026-04-01', car: 'a' },
      { ...off, on: '2026-04-10', car: 'a' },
      { ...on, on: '2026-04-10', car: 'b' },
    ]);
    for (const entries of [timed, untimed]) {
      expect(brief(entries)).toEqual([
        ['a', '2026-04-01', '2026-04-10'],
        ['b', '2026-04-10', null],
      ]);
      expect(codes(entries)).toEqual([]);
    }
  });

  it('moves to new positions on the same car, or to another', () => {
    const entries = entriesOf([
      { ...on, on: '2026-04-01', car: 'a', positions: ['front'] },
      { ...moved, on: '2026-04-02', positions: ['rear'] },
      { ...moved, on: '2026-04-03', car: 'b' },
    ]);
    expect(brief(entries)).toEqual([
      ['a front', '2026-04-01', '2026-04-02'],
      ['a rear', '2026-04-02', '2026-04-03'],
      ['b', '2026-04-03', null],
    ]);
    expect(codes(entries)).toEqual([]);
  });

  it('keeps both facts where it is put on elsewhere while on, and counts in one place at a time', () => {
    const entries = entriesOf([
      { ...on, on: '2026-04-01', car: 'a' },
      { ...on, on: '2026-04-10', car: 'b' },
      { ...off, on: '2026-04-20', car: 'a' },
    ]);
    expect(brief(entries)).toEqual([
      ['a', '2026-04-01', '2026-04-10', 'conflict'],
      ['b', '2026-04-10', null, 'conflict'],
    ]);
    expect(codes(entries)).toEqual([
      ['fitConflict', 'e1', 'e0'],
      ['fitNotOn', 'e2'],
    ]);
  });

  it('takes the same fit said twice as one, and one that says new as a new part in its place', () => {
    const twice = entriesOf([
      { ...on, on: '2026-04-01', car: 'a', positions: ['Front', 'rear'] },
      { ...on, on: '2026-04-10', car: 'a', positions: ['rear', 'front'] },
    ]);
    expect(brief(twice)).toEqual([['a Front+rear', '2026-04-01', null]]);
    const renewed = entriesOf([
      { ...on, on: '2026-04-01', car: 'a', positions: ['front'] },
      { ...on, on: '2026-04-10', car: 'a', condition: 'new' },
    ]);
    expect(brief(renewed)).toEqual([
      ['a front', '2026-04-01', '2026-04-10'],
      ['a front', '2026-04-10', null],
    ]);
    expect(codes([...twice])).toEqual([]);
    expect(codes(renewed)).toEqual([]);
  });

  it('says what does not fit together', () => {
    const entries = entriesOf([
      { ...off, on: '2026-04-01', car: 'a' },
      { ...on, on: '2026-04-02' },
      { ...moved, on: '2026-04-03' },
      { ...moved, on: '2026-04-04', car: 'b' },
    ]);
    expect(codes(entries)).toEqual([
      ['fitNotOn', 'e0'],
      ['fitWithoutCar', 'e1'],
      ['fitWithoutCar', 'e2'],
      ['fitNotOn', 'e3'],
    ]);
    expect(brief(entries)).toEqual([['b', '2026-04-04', null]]);
  });
});

describe('fitProblem()', () => {
  const windows = fitWindows(
    entriesOf([
      { ...on, on: '2026-04-01', car: 'a', positions: ['front'] },
      { ...off, on: '2026-04-10', time: '14:00' },
    ]),
  );
  const problem = (draft: Parameters<typeof entriesOf>[0][number]) => {
    const [entry] = entriesOf([draft], 'n');
    if (entry === undefined) throw new Error('no entry');
    return fitProblem(windows, entry);
  };
  const onA = { code: 'alreadyFitted', car: 'a', since: '2026-04-01' };

  it('refuses to put on elsewhere what the log has on', () => {
    expect(problem({ ...on, on: '2026-04-05', car: 'b' })).toEqual(onA);
    expect(problem({ ...on, on: '2026-04-10', time: '13:59', car: 'b' })).toEqual(onA);
    expect(problem({ ...on, on: '2026-04-05', car: 'a', positions: ['rear'] })).toEqual(onA);
    expect(problem({ ...on, on: '2026-04-01', car: 'b' })).toEqual(onA);
  });

  it('has nothing against it before, after, in the same place, or when it is moved', () => {
    expect(problem({ ...on, on: '2026-03-31', car: 'b' })).toBeNull();
    expect(problem({ ...on, on: '2026-04-01', dayOrder: 'beforeDriving', car: 'b' })).toBeNull();
    expect(problem({ ...on, on: '2026-04-10', time: '14:00', car: 'b' })).toBeNull();
    expect(problem({ ...on, on: '2026-04-05', car: 'a' })).toBeNull();
    expect(problem({ ...moved, on: '2026-04-05', car: 'b' })).toBeNull();
    expect(
      problem({
        kind: 'odometer',
        on: '2026-04-05',
        car: 'b',
        odometer: { text: '1', unit: 'km' },
      }),
    ).toBeNull();
  });
});
