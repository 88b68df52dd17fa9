import type { UrgentFact } from '@quartermark/engine/display';
import { describe, expect, it } from 'vitest';
import { carOf, lineOf, standingFor } from '../../test/lines.ts';
import type { CarTonight } from '../facts/car-tonight.ts';
import { factsOfCar } from '../facts/facts-of-car.ts';
import { compose, type Tonight } from './compose.ts';
import { SETTINGS_USUAL } from './settings.ts';
import type { Said } from './to-tell.ts';

const MONDAY = '2026-06-15';
const THURSDAY = '2026-06-18';
const over = { state: 'overdue', overdueSince: '2026-06-10' } as const;
const FLUID = 'c1/overdue/fluid:2024-06-09';

function letterOf(cars: CarTonight[], asked: Partial<Tonight> = {}) {
  const today = asked.today ?? MONDAY;
  const facts = cars.flatMap((car) => factsOfCar(car, today));
  const garage = { name: 'Hollow Lane', cars: cars.map(({ id }) => id) };
  return compose({
    today,
    facts,
    last: [],
    settings: SETTINGS_USUAL,
    garage,
    member: { cars: 'all' },
    ...asked,
  });
}
const textsOf = (letter: ReturnType<typeof letterOf>) =>
  letter?.lines.map(({ word, text }) => `${word}. ${text}`);
const car = (today: string, lines = [lineOf(over)], of: Parameters<typeof carOf>[0] = {}) =>
  carOf({ ...of, known: { lines } }, today);
const said = (on: string, more: Partial<Said> = {}): Said[] => [
  { fact: FLUID, on, grade: 0, state: 'overdue', ...more },
];

describe('compose()', () => {
  it('stores what it told, and as what', () => {
    expect(letterOf([car(MONDAY)])).toEqual({
      date: MONDAY,
      subject: 'Brindle: Brake fluid overdue',
      heading: 'Hollow Lane, Mon 15 June 2026',
      lines: [
        {
          mark: 'overdue',
          word: 'Overdue',
          text: 'Brindle: Brake fluid, since 10 June',
          link: { to: 'serviceForm', car: 'c1', items: ['fluid'] },
          more: [{ to: 'putOffForm', facts: [FLUID], until: '2026-06-20' }],
          car: 'c1',
          facts: [FLUID],
          why: 'new',
        },
      ],
      rest: null,
      standing: null,
      said: said(MONDAY),
    });
  });

  it('begins with what forbids driving, the worst first, however long it has stood', () => {
    const stopped = (name: string, urgent: UrgentFact) =>
      carOf({ id: name, name, known: { urgent } }, MONDAY);
    const fact = { oil: null, since: '2026-06-14', what: 'do not drive' };
    const letter = letterOf([
      stopped('Thistle', { ...fact, stop: null, oil: 'low', since: '2026-06-01', what: 'oil low' }),
      stopped('Sorrel', { ...fact, stop: 'wheelsOff', since: '2026-06-02', what: 'wheels off' }),
      stopped('Clover', { ...fact, stop: 'incident', since: '2026-06-03', what: 'soft pedal' }),
      stopped('Brindle', { ...fact, stop: 'doNotDrive' }),
    ]);
    const cars = letter?.lines.map(({ car: carId }) => carId);
    expect(cars).toEqual(['Brindle', 'Clover', 'Sorrel', 'Thistle']);
    expect(letter?.subject).toBe('Brindle: do not drive (and 3 more)');
  });

  it('is silent within a week, and tells it again after one only beside something new', () => {
    const last = said('2026-06-08');
    const fresh = lineOf({ id: 'belt', name: 'Belt', ...over, overdueSince: MONDAY });
    expect(letterOf([car(MONDAY)], { last: said('2026-06-09') })).toBeNull();
    expect(letterOf([car(MONDAY)], { last })).toBeNull();
    expect(textsOf(letterOf([car(MONDAY, [lineOf(over), fresh])], { last }))).toEqual([
      'Overdue. Brindle: Belt, since 15 June',
      'Still overdue. Brindle: Brake fluid, since 10 June, 5 days',
    ]);
  });

  it('tells every night how things stand, to whoever wants to hear that nothing is new', () => {
    const settings = { ...SETTINGS_USUAL, onlyIfNew: false };
    const letter = letterOf([car(MONDAY)], { last: said('2026-06-09'), settings });
    expect(letter).toMatchObject({
      subject: 'Nothing new: Hollow Lane',
      lines: [],
      standing: 'Nothing new of your car. Open as before: one is overdue.',
      said: said('2026-06-09'),
    });
    expect(letterOf([carOf()], { settings })?.standing).toBe(
      'Nothing new of your car, by the log.',
    );
    expect(letterOf([], { settings })?.standing).toBe('There is no car here that you may see.');
  });

  it('tells at once what became worse, also of what was put off', () => {
    const putOffs = [{ fact: FLUID, until: '2026-06-20', grade: 0 }];
    const asked = lineOf({ ...over, reasonCode: 'asked' });
    expect(letterOf([car(MONDAY, [lineOf(over)], { putOffs })])).toBeNull();
    expect(
      textsOf(letterOf([car(MONDAY, [asked], { putOffs })], { last: said('2026-06-14') })),
    ).toEqual(['Overdue. Brindle: Brake fluid, to be treated as due now; since 10 June']);
  });

  it('tells after Saturday what was put off until then, once', () => {
    const putOffs = [{ fact: FLUID, until: '2026-06-13', grade: 0 }];
    const sunday = letterOf([car('2026-06-14', [lineOf(over)], { putOffs })], {
      today: '2026-06-14',
      last: said('2026-06-11'),
    });
    expect(textsOf(sunday)).toEqual([
      'Overdue. Brindle: Brake fluid, since 10 June (put off until Sat 13 June)',
    ]);
    expect(
      letterOf([car(MONDAY, [lineOf(over)], { putOffs })], { last: sunday?.said ?? [] }),
    ).toBeNull();
  });

  it('tells what is overdue once although its parts are ordered, and then waits for them', () => {
    const parts = {
      kind: 'ordered',
      order: { on: '2026-06-01', expected: '2026-06-25' },
      late: true,
    } as const;
    const line = lineOf({ ...over, parts });
    expect(textsOf(letterOf([car(MONDAY, [line])]))).toEqual([
      'Overdue. Brindle: Brake fluid, since 10 June; parts ordered 1 June, expected 25 June: arrives after it is likely due',
    ]);
    const settings = { ...SETTINGS_USUAL, onlyIfNew: false };
    expect(letterOf([car(MONDAY, [line])], { last: said('2026-06-01'), settings })?.lines).toEqual(
      [],
    );
  });

  it('offers an order and the coming Saturday as forms', () => {
    const parts = { kind: 'orderBy', day: '2026-06-16', feasible: true } as const;
    const line = lineOf({ state: 'dueSoon', day: '2026-06-20', leadDays: 4, parts });
    expect(letterOf([car(MONDAY, [line])])?.lines[0]?.more).toEqual([
      { to: 'orderForm', car: 'c1', items: ['fluid'] },
      { to: 'putOffForm', facts: ['c1/dueSoon/fluid:2024-06-09'], until: '2026-06-20' },
    ]);
  });

  it('pauses through the day that was said, and says then what came meanwhile', () => {
    const settings = { ...SETTINGS_USUAL, pausedUntil: MONDAY };
    expect(letterOf([car(MONDAY)], { settings })).toBeNull();
    expect(letterOf([car('2026-06-16')], { settings, today: '2026-06-16' })?.lines).toHaveLength(1);
  });

  it('comes once a week to whoever wants that', () => {
    const settings = { ...SETTINGS_USUAL, rhythm: { every: 'week', on: 2 } } as const;
    expect(letterOf([car(MONDAY)], { settings })).toBeNull();
    expect(letterOf([car('2026-06-16')], { settings, today: '2026-06-16' })?.lines).toHaveLength(1);
  });

  describe('on the Thursday before an event weekend', () => {
    const event = (start: string) => ({ id: 'e1', name: 'Track day', start, end: start });
    const going = (start: string) =>
      carOf({ events: [standingFor(event(start), { word: 'ready', by: null })] }, THURSDAY);
    const weekly = { ...SETTINGS_USUAL, rhythm: { every: 'week', on: 1 } } as const;

    it.each([
      ['2026-06-19', 1],
      ['2026-06-21', 1],
      ['2026-06-22', 0],
    ])('tells how the cars stand that go on %s, also who are ready: %i', (start, lines) => {
      const letter = letterOf([going(start)], { today: THURSDAY, settings: weekly });
      expect(letter?.lines.length ?? 0).toBe(lines);
    });
    it('tells whoever hears weekly of the cars that go alone', () => {
      const other = { ...car(THURSDAY), id: 'c2', name: 'Otter' };
      const letter = letterOf([going('2026-06-20'), other], { today: THURSDAY, settings: weekly });
      expect(textsOf(letter)).toEqual(['Ready, by the log. Brindle for Track day on Saturday']);
    });
    it('is silent to whoever does not want it', () => {
      const settings = { ...weekly, beforeEvents: false };
      expect(letterOf([going('2026-06-20')], { today: THURSDAY, settings })).toBeNull();
    });
  });

  it('forgets after a week what is gone, so that what comes and goes is not told each time', () => {
    const last = [...said('2026-06-09'), ...said('2026-06-08', { fact: 'c1/dueSoon/belt:never' })];
    const fresh = lineOf({ id: 'hose', name: 'Hose', ...over });
    expect(letterOf([car(MONDAY, [fresh])], { last })?.said.map(({ fact }) => fact)).toEqual([
      FLUID,
      'c1/overdue/hose:2024-06-09',
    ]);
  });

  it('counts what finds no room in a last line that leads to the list', () => {
    const cars = Array.from({ length: 5 }, (_, at) =>
      carOf({
        id: `c${at}`,
        name: `Car ${at}`,
        known: {
          lines: ['a', 'b'].map((id) =>
            lineOf({
              id,
              name: id,
              ...over,
              overdueSince: id === 'a' ? '2026-06-09' : '2026-06-10',
            }),
          ),
        },
      }),
    );
    const letter = letterOf(cars);
    expect(letter?.lines).toHaveLength(7);
    expect(letter?.rest).toEqual({
      count: 3,
      text: 'And three more things',
      link: { to: 'dueList' },
    });
    expect(letter?.subject).toBe('Car 0: a overdue (and 9 more)');
    expect(letter?.said).toHaveLength(7);
  });
});
