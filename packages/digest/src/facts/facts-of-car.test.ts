import { describe, expect, it } from 'vitest';
import { carOf, lineOf, oilOf, standingFor } from '../../test/lines.ts';
import type { CarTonight } from './car-tonight.ts';
import { factsOfCar } from './facts-of-car.ts';

const TODAY = '2026-06-15';
const EVENT = { id: 'e1', name: 'Track day', start: '2026-06-20', end: '2026-06-21' };
const factsOf = (car: CarTonight) => factsOfCar(car, TODAY);
const idsOf = (car: CarTonight) => factsOf(car).map(({ id }) => id);
const over = { state: 'overdue', overdueSince: '2026-06-10' } as const;

describe('factsOfCar()', () => {
  it('has nothing of a car of which nothing is asked', () => {
    expect(factsOf(carOf({ known: { lines: [lineOf()] } }))).toEqual([]);
  });

  it('names what is overdue by what it was last done, so that done again it is another fact', () => {
    const ids = (lastDone: string | null) =>
      idsOf(carOf({ known: { lines: [lineOf({ ...over, lastDone })] } }));
    expect([ids('2024-06-09'), ids('2026-06-14'), ids(null)]).toEqual([
      ['c1/overdue/fluid:2024-06-09'],
      ['c1/overdue/fluid:2026-06-14'],
      ['c1/overdue/fluid:never'],
    ]);
  });

  it('has an overdue item as worse where something happened to it', () => {
    const grade = (line: Parameters<typeof lineOf>[0]) =>
      factsOf(carOf({ known: { lines: [lineOf({ ...over, ...line })] } }))[0]?.grade;
    expect(grade({})).toBe(0);
    expect(grade({ reasonCode: 'trigger', cause: { code: 'softPedal', on: '2026-06-13' } })).toBe(
      1,
    );
  });

  it.each([
    ['in time', {}, 0],
    ['parts too late', { parts: { kind: 'orderBy', day: '2026-06-10', feasible: false } }, 1],
    ['likely past it', { readingNeeded: true }, 2],
  ] as const)('grades what is due soon: %s', (_name, line, grade) => {
    const facts = factsOf(carOf({ known: { lines: [lineOf({ state: 'dueSoon', ...line })] } }));
    expect(facts).toMatchObject([{ kind: 'dueSoon', grade }]);
  });

  it.each([
    [{ on: '2026-06-12', expected: '2026-06-18' }, 0, '2026-06-18'],
    [{ on: '2026-06-12' }, 0, '2026-06-19'],
    [{ on: '2026-06-12' }, 20, '2026-07-02'],
  ])('is quiet of what was ordered (%j, %i days) until %s', (order, leadDays, until) => {
    const line = lineOf({
      state: 'dueSoon',
      leadDays,
      parts: { kind: 'ordered', order, late: false },
    });
    expect(factsOf(carOf({ known: { lines: [line] } }))[0]?.quiet).toEqual({
      because: 'ordered',
      until,
      grade: 0,
    });
  });

  it('is not quiet of parts that come too late', () => {
    const parts = {
      kind: 'ordered',
      order: { on: '2026-06-12', expected: '2026-07-18' },
      late: true,
    } as const;
    expect(
      factsOf(carOf({ known: { lines: [lineOf({ state: 'dueSoon', parts })] } })),
    ).toMatchObject([{ quiet: null, grade: 1 }]);
  });

  it('takes the farthest of what was put off, of that fact alone', () => {
    const fact = 'c1/overdue/fluid:2024-06-09';
    const putOffs = [
      { fact, until: '2026-06-16', grade: 0 },
      { fact, until: '2026-06-20', grade: 0 },
      { fact: 'c1/dueSoon/fluid:2024-06-09', until: '2026-12-31', grade: 9 },
    ];
    expect(factsOf(carOf({ putOffs, known: { lines: [lineOf(over)] } }))[0]?.quiet?.until).toBe(
      '2026-06-20',
    );
  });

  it.each(['laidUp', 'inPieces', 'away'] as const)(
    'has only papers and the battery of a car that is %s',
    (status) => {
      const lines = [
        lineOf({ id: 'oil', name: 'Engine oil', ...over }),
        lineOf({ id: 'paper', name: 'Insurance', binding: 'date', ...over }),
        lineOf({ id: 'battery', name: 'Battery, charge', state: 'dueSoon' }),
        lineOf({ id: 'cooling', name: 'Battery and motor coolant', state: 'dueSoon' }),
      ];
      const oil = {
        ...oilOf('2025-10-01', '2026-06-15'),
        notices: [
          { id: 'n', kind: 'useRisen', entry: 'x', on: '2026-06-01', answer: null } as const,
        ],
      };
      expect(idsOf(carOf({ known: { lane: { status }, lines, oil } }))).toEqual([
        'c1/overdue/paper:2024-06-09',
        'c1/dueSoon/battery:2024-06-09',
      ]);
    },
  );

  it('has nothing of a sold car', () => {
    const car = carOf({
      failedSince: TODAY,
      events: [standingFor(EVENT, { word: 'notInTime', by: null })],
      known: { lane: { status: 'sold' }, lines: [lineOf(over)] },
    });
    expect(factsOf(car)).toEqual([]);
  });

  it.each([
    ['2026-06-08', []],
    ['2026-06-07', ['c1/missedLook/look 2026-06-07']],
    [null, ['c1/missedLook/never']],
  ])('misses a look after a week: last on %s', (looked, ids) => {
    expect(idsOf(carOf({ known: { oil: oilOf(looked, TODAY) } }))).toEqual(ids);
  });

  it('asks no look where nobody looks every week, nor of an electric car', () => {
    expect(idsOf(carOf({ known: { oil: oilOf('2025-10-01', null) } }))).toEqual([]);
    expect(idsOf(carOf({ known: { oil: null } }))).toEqual([]);
  });

  it('tells a low level once, and no missed look beside it', () => {
    const low = { id: 'low', kind: 'low', entry: 'x', on: '2026-06-01', answer: null } as const;
    const oil = { ...oilOf('2026-06-01', TODAY), notices: [low] };
    const urgent = {
      stop: null,
      oil: 'low',
      since: '2026-06-01',
      what: 'oil low, or may be',
    } as const;
    expect(idsOf(carOf({ known: { oil } }))).toEqual(['c1/oilNotice/low']);
    expect(idsOf(carOf({ known: { oil, urgent } }))).toEqual(['c1/urgent/_low_2026-06-01']);
  });

  it('has no notice that somebody answered', () => {
    const answer = { entry: 'y', on: TODAY, words: 'It was read wrong' };
    const notices = [{ id: 'n', kind: 'useRisen', entry: 'x', on: '2026-06-01', answer } as const];
    expect(idsOf(carOf({ known: { oil: { ...oilOf(TODAY, TODAY), notices } } }))).toEqual([]);
  });

  it.each([
    ['2026-06-29', true],
    ['2026-06-30', false],
  ])('has the verdict for an event that begins on %s: %s', (start, told) => {
    const event = { ...EVENT, start, end: start };
    const car = carOf({
      events: [standingFor(event, { word: 'notInTime', by: null }, ['Tyres', 'Tyres'])],
    });
    expect(factsOf(car)).toMatchObject(
      told ? [{ id: 'c1/verdict/e1', grade: 3, open: ['Tyres'] }] : [],
    );
  });

  it('has no verdict once the event is over, and one of a laid-up car that was entered', () => {
    const past = { ...EVENT, start: '2026-06-13', end: '2026-06-14' };
    const verdict = { word: 'notInTime', by: null } as const;
    expect(idsOf(carOf({ events: [standingFor(past, verdict)] }))).toEqual([]);
    expect(
      idsOf(
        carOf({ events: [standingFor(EVENT, verdict)], known: { lane: { status: 'laidUp' } } }),
      ),
    ).toEqual(['c1/verdict/e1']);
  });

  it('says that a car failed, or is still of yesterday', () => {
    expect(factsOf(carOf({ known: null, failedSince: '2026-06-12' }))).toMatchObject([
      { kind: 'notWorkedOut', since: '2026-06-12' },
    ]);
    expect(factsOf(carOf({ known: { asOf: '2026-06-14' } }))).toMatchObject([
      { kind: 'notWorkedOut', since: '2026-06-14' },
    ]);
  });

  it('lets nobody put off what forbids driving', () => {
    const urgent = (stop: 'doNotDrive' | 'wheelsOff') => ({
      stop,
      oil: null,
      since: '2026-06-14',
      what: 'wheels off',
    });
    const quiet = (stop: 'doNotDrive' | 'wheelsOff') =>
      factsOf(
        carOf({
          known: { urgent: urgent(stop) },
          putOffs: [{ fact: `c1/urgent/${stop}__2026-06-14`, until: '2026-06-20', grade: 0 }],
        }),
      )[0]?.quiet;
    expect(quiet('doNotDrive')).toBeNull();
    expect(quiet('wheelsOff')).toMatchObject({ until: '2026-06-20' });
  });
});
