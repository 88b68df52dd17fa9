import { describe, expect, it } from 'vitest';
import { type Drafted, entriesOf, gearBook, km } from '../../test/gear-book.ts';
import type { GearDraft } from '../log/gear.ts';
import type { ItemDraft } from '../log/item.ts';
import { isAmountLimit } from '../wear/result.ts';
import { analyseGear } from './analyse-gear.ts';

const newTyres = { kind: 'component', name: 'Set', sort: 'tyreSet', condition: 'new' } as const;
const usedTyres = { ...newTyres, condition: 'used' } as const;
const fit = { kind: 'fit', component: 'set' } as const;
const circuit = { kind: 'session', use: 'circuit' } as const;
const known = (amount: number) => ({ amount, known: true });
const atLeast = (amount: number) => ({ amount, known: false });
const look: ItemDraft & { id: string } = {
  id: 'look',
  name: 'Tread',
  limits: [
    { measure: 'sessions', value: 10 },
    { measure: 'km', value: 5000, unit: 'km', weights: { circuit: 10 } },
  ],
};

function analyse(drafts: readonly Drafted[], gear: GearDraft = newTyres, items = [look]) {
  return analyseGear(gearBook({ gear, asOf: '2026-06-01', entries: entriesOf(drafts), items }));
}
const accrued = (analysed: ReturnType<typeof analyse>, id = 'look') =>
  analysed.analysis.items
    .find((it) => it.id === id)
    ?.limits.filter(isAmountLimit)
    .map((limit) => (limit.known ? known(limit.accrued) : atLeast(limit.accrued)));
const codes = (analysed: ReturnType<typeof analyse>) =>
  analysed.analysis.flags.map(({ code, entry, other }) => [code, entry, ...(other ? [other] : [])]);

describe('analyseGear() of a set moved between two cars', () => {
  // By hand. On A from 1,000 to 1,600 km: 600 km, of which 3 sessions 270 km, so 330 km of road.
  // On B from 50,000 to 50,400 km: 400 km, of which 2 sessions 120 km, so 280 km of road. What A and B
  // did before and after does not count. Weighted by 10 on circuits: 330 + 280 + 10 x 390 = 4,510 km.
  const drafts: Drafted[] = [
    { kind: 'odometer', on: '2026-03-01', car: 'a', odometer: km(800) },
    { kind: 'odometer', on: '2026-03-01', car: 'b', odometer: km(49_000) },
    { ...fit, on: '2026-04-01', change: 'on', car: 'a', odometer: km(1000) },
    { ...circuit, on: '2026-04-05', car: 'a', sessions: 3, distance: km(270) },
    {
      kind: 'measure',
      component: 'set',
      on: '2026-04-10',
      tread: [{ corner: 'frontLeft', groove: 'inner', depth: { text: '6.1', unit: 'mm' } }],
    },
    { kind: 'odometer', on: '2026-04-11', car: 'a', odometer: km(1600), time: '11:00' },
    { ...fit, on: '2026-04-11', change: 'moved', car: 'b', odometer: km(50_000), time: '12:00' },
    { ...circuit, on: '2026-04-20', car: 'b', sessions: 2, distance: km(120) },
    { ...fit, on: '2026-05-01', change: 'off', car: 'b', odometer: km(50_400) },
    {
      kind: 'measure',
      component: 'set',
      on: '2026-05-02',
      tread: [{ corner: 'frontLeft', depth: { text: '4', unit: 'mm' } }],
    },
    { kind: 'odometer', on: '2026-05-20', car: 'a', odometer: km(2000) },
    { kind: 'odometer', on: '2026-05-20', car: 'b', odometer: km(52_000) },
  ];

  it('sums both parts and nothing else', () => {
    const analysed = analyse(drafts);
    expect(analysed.life?.distanceKm).toEqual(known(1000));
    expect(analysed.life?.sessions).toEqual(known(5));
    expect(analysed.life?.launches).toEqual(known(0));
    expect(analysed.life?.fitted).toBeNull();
    expect(accrued(analysed)).toEqual([known(5), known(4510)]);
    expect(analysed.analysis.flags).toEqual([]);
  });

  it('keeps its measurements with the use it had then', () => {
    // on 10 April, one day before A read 1,600: 9 of the 10 days of its 330 road km, and 270
    expect(analyse(drafts).life?.measured).toEqual([
      {
        entry: 'e4',
        on: '2026-04-10',
        readings: [
          {
            what: 'tread',
            corner: 'frontLeft',
            groove: 'inner',
            where: 'front left, inner',
            mm: 6.1,
            g: null,
          },
        ],
        sessionsThen: 3,
        kmThen: 567,
      },
      {
        entry: 'e9',
        on: '2026-05-02',
        readings: [
          { what: 'tread', corner: 'frontLeft', groove: null, where: 'front left', mm: 4, g: null },
        ],
        sessionsThen: 5,
        kmThen: 1000,
      },
    ]);
  });

  it('rests on the entries of both cars, in order', () => {
    const [item] = analyse(drafts).analysis.items;
    expect(item?.evidence).toEqual(['e2', 'e3', 'e5', 'e6', 'e7', 'e8']);
    expect(item?.service).toBe('2026-04-01');
  });
});

describe('analyseGear() on the day of a fit', () => {
  const day = (fitted: object, used: object): Drafted[] => [
    { kind: 'odometer', on: '2026-03-01', car: 'a', odometer: km(800) },
    { ...fit, on: '2026-04-01', change: 'on', car: 'a', ...fitted },
    { ...circuit, on: '2026-04-01', car: 'a', ...used },
  ];
  const sessions = (drafts: Drafted[]) => analyse(drafts).life?.sessions.amount;

  it('counts by time, else before driving or after, else a session as before the fit, and says so', () => {
    expect(sessions(day({ time: '09:00' }, { time: '10:00' }))).toBe(1);
    expect(sessions(day({ time: '11:00' }, { time: '10:00' }))).toBe(0);
    expect(sessions(day({ dayOrder: 'beforeDriving' }, {}))).toBe(1);
    expect(sessions(day({ dayOrder: 'afterDriving' }, { time: '18:00' }))).toBe(0);
    expect(codes(analyse(day({ dayOrder: 'beforeDriving' }, {})))).toEqual([]);
    const assumed = analyse(day({}, {}));
    expect(assumed.life?.sessions.amount).toBe(0);
    expect(codes(assumed)).toEqual([['fitOrderAssumed', 'e1', 'e2']]);
  });
});

describe('analyseGear() and what is not known', () => {
  const season: Drafted[] = [
    { kind: 'odometer', on: '2026-03-01', car: 'a', odometer: km(800) },
    { ...fit, on: '2026-04-01', change: 'on', car: 'a', odometer: km(1000) },
    { ...circuit, on: '2026-04-05', car: 'a', sessions: 3, distance: km(150) },
    { kind: 'odometer', on: '2026-05-01', car: 'a', odometer: km(1400) },
  ];

  it('has nothing on record for the items of a used part, and at least for its life', () => {
    const analysed = analyse(season, usedTyres);
    expect(analysed.life?.sessions).toEqual(atLeast(3));
    expect(analysed.life?.distanceKm).toEqual(atLeast(400));
    expect(analysed.analysis.items[0]).toMatchObject({
      state: 'unknown',
      reasonCode: 'noBaseline',
    });
  });

  it('counts a used part from its starting point: at least, unless that says the history is complete', () => {
    const from = (historyComplete: boolean) => [
      { ...look, baseline: { on: '2026-02-01', historyComplete } },
    ];
    expect(accrued(analyse(season, usedTyres, from(false)))).toEqual([atLeast(3), atLeast(1750)]);
    expect(accrued(analyse(season, usedTyres, from(true)))).toEqual([known(3), known(1750)]);
  });

  it('knows all since a service once the part is on a car in the log', () => {
    const service: Drafted = { kind: 'service', on: '2026-04-03', gear: 'set', items: ['look'] };
    expect(accrued(analyse([...season, service], usedTyres))?.[0]).toEqual(known(3));
  });

  it('knows no distance where the car was not read before the part went on', () => {
    const fitted: Drafted = { ...fit, on: '2026-04-01', change: 'on', car: 'a' };
    const unread = [fitted, ...season.slice(2)];
    const { life } = analyse(unread);
    expect(life?.sessions).toEqual(known(3));
    expect(life?.distanceKm.known).toBe(false);
  });

  it('knows no distance across an exchange without the old value, while it is on that car', () => {
    const swap: Drafted = {
      kind: 'meterReplaced',
      on: '2026-04-20',
      car: 'a',
      meter: 'odometer',
      newFirst: km(0),
    };
    const after: Drafted = { kind: 'odometer', on: '2026-04-25', car: 'a', odometer: km(50) };
    const withGap = [...season.slice(0, 3), swap, after];
    expect(analyse(withGap).life?.distanceKm.known).toBe(false);
    expect(analyse(withGap).life?.sessions).toEqual(known(3));
    expect(accrued(analyse(withGap))?.map((it) => it.known)).toEqual([true, false]);
    const offBefore: Drafted = {
      ...fit,
      on: '2026-04-10',
      change: 'off',
      odometer: km(1200),
      car: 'a',
    };
    expect(analyse([...withGap, offBefore]).life?.distanceKm.known).toBe(true);
  });

  it('doubts all totals of a part that the log has in two places', () => {
    const elsewhere: Drafted = { ...fit, on: '2026-04-20', change: 'on', car: 'b' };
    const analysed = analyse([...season, elsewhere]);
    expect(analysed.life?.sessions).toEqual(atLeast(3));
    expect(analysed.life?.windows.map(({ conflict }) => conflict)).toEqual([true, true]);
    expect(codes(analysed)).toEqual([['fitConflict', 'e4', 'e1']]);
  });

  it('knows no total while the book of one of its cars is missing', () => {
    const book = gearBook({ gear: newTyres, asOf: '2026-06-01', entries: entriesOf(season) });
    expect(analyseGear({ ...book, cars: [] }).life?.sessions).toEqual(atLeast(0));
  });

  it('says nothing of a used part that was never fitted, and zero of a new one', () => {
    expect(analyse([], usedTyres).life?.sessions).toEqual({ amount: null, known: false });
    expect(analyse([], { ...newTyres, since: '2026-05-01' }).life?.sessions).toEqual(known(0));
  });
});

describe('analyseGear() of a part made new', () => {
  it('begins a new life at the last fit that says new, and keeps the windows before', () => {
    const analysed = analyse(
      [
        { kind: 'odometer', on: '2026-03-01', car: 'a', odometer: km(800) },
        { ...fit, on: '2026-04-01', change: 'on', car: 'a', odometer: km(1000) },
        { ...circuit, on: '2026-04-05', car: 'a', sessions: 3 },
        { ...fit, on: '2026-04-10', change: 'on', car: 'a', condition: 'new' },
        { ...circuit, on: '2026-04-15', car: 'a', sessions: 2 },
      ],
      usedTyres,
    );
    expect(analysed.life?.sessions).toEqual(known(2));
    expect(analysed.life?.newSince).toBe('2026-04-10');
    expect(analysed.life?.windows).toHaveLength(2);
    expect(accrued(analysed)?.[0]).toEqual(known(2));
  });

  it('does not know the earlier life of a new part that is first heard of when it is moved', () => {
    const analysed = analyse([{ ...fit, on: '2026-04-01', change: 'moved', car: 'a' }]);
    expect(analysed.life?.sessions).toEqual(atLeast(0));
    expect(codes(analysed)).toEqual([['fitNotOn', 'e0']]);
  });
});

describe('analyseGear() and sessions that name a set', () => {
  it('says where a session names a set that was not on', () => {
    const analysed = analyse([
      { kind: 'odometer', on: '2026-03-01', car: 'a', odometer: km(800) },
      { ...circuit, on: '2026-03-05', car: 'a', tyreSet: 'set' },
      { ...fit, on: '2026-04-01', change: 'on', car: 'a' },
      { ...circuit, on: '2026-04-05', car: 'a', tyreSet: 'set' },
      { ...circuit, on: '2026-04-06', car: 'a', tyreSet: 'other' },
      { ...circuit, on: '2026-03-07', car: 'a', tyreSet: 'set', removed: true },
    ]);
    expect(codes(analysed)).toEqual([['setNotOn', 'e1']]);
    expect(analysed.life?.sessions).toEqual(known(2));
  });

  it('leaves out what lies ahead, and says so', () => {
    const analysed = analyse([
      { ...fit, on: '2026-04-01', change: 'on', car: 'a' },
      { ...fit, on: '2026-06-02', change: 'off', car: 'a' },
    ]);
    expect(analysed.life?.fitted?.car).toBe('a');
    expect(codes(analysed)).toEqual([['future', 'e1']]);
  });
});

describe('analyseGear() and what makes an item due at once', () => {
  const knock: ItemDraft & { id: string } = { ...look, triggers: { incidents: ['contact'] } };
  const contact = { kind: 'incident', what: 'contact', car: 'a' } as const;
  const onA: Drafted[] = [
    { kind: 'odometer', on: '2026-03-01', car: 'a', odometer: km(800) },
    { ...fit, on: '2026-04-01', time: '12:00', change: 'on', car: 'a' },
    { ...fit, on: '2026-04-20', time: '12:00', change: 'off', car: 'a' },
  ];
  const item = (extra: Drafted[], own = knock) =>
    analyse([...onA, ...extra], newTyres, [own]).analysis.items[0];

  it('is an incident on its car while it was there, until the item is done', () => {
    const during: Drafted = { ...contact, on: '2026-04-10' };
    expect(item([during])).toMatchObject({
      state: 'overdue',
      reasonCode: 'trigger',
      trigger: { entry: 'e3', on: '2026-04-10', code: 'contact' },
    });
    const done: Drafted = { kind: 'service', on: '2026-04-11', gear: 'set', items: ['look'] };
    expect(item([during, done])).toMatchObject({ state: null, service: '2026-04-11' });
    expect(item([{ ...during, what: 'overheating' }])?.state).toBeNull();
    expect(item([{ ...during, removed: true }])?.state).toBeNull();
  });

  it('is none before or after, nor on another car; on a day of a fit it is, unless times tell', () => {
    const state = (extra: object) => item([{ ...contact, on: '2026-04-20', ...extra }])?.state;
    expect(state({ on: '2026-03-31' })).toBeNull();
    expect(state({ on: '2026-04-21' })).toBeNull();
    expect(state({ on: '2026-04-10', car: 'b' })).toBeNull();
    expect(state({ time: '12:01' })).toBeNull();
    expect(state({ time: '11:59' })).toBe('overdue');
    expect(state({})).toBe('overdue');
  });

  it('leaves a one-off of a new part to be done', () => {
    const once = { ...look, once: true };
    expect(item([], once)?.reasonCode).toBeNull();
    const done: Drafted = { kind: 'service', on: '2026-04-11', gear: 'set', items: ['look'] };
    expect(item([done], once)).toMatchObject({ state: 'fine', reasonCode: 'doneOnce' });
  });
});

describe('analyseGear() of equipment and people', () => {
  const wrench: GearDraft = { kind: 'equipment', name: 'Torque wrench', sort: 'torqueWrench' };
  const calibration = (baseline?: object) => [
    {
      id: 'cal',
      name: 'Calibration',
      limits: [{ measure: 'months', value: 12 }],
      ...baseline,
    } as typeof look,
  ];

  it('judges calendar limits from a service of the tool, or one on a car that names the item', () => {
    const none = analyse([], wrench, calibration());
    expect(none.life).toBeNull();
    expect(none.analysis.items[0]).toMatchObject({ state: 'unknown', reasonCode: 'noBaseline' });
    const own = analyse(
      [{ kind: 'service', on: '2025-05-02', gear: 'set', items: ['cal'] }],
      wrench,
      calibration(),
    );
    expect(own.analysis.items[0]).toMatchObject({ state: 'overdue', service: '2025-05-02' });
    const onCar = analyse(
      [{ kind: 'service', on: '2026-05-02', car: 'a', items: ['cal', 'oil'] }],
      wrench,
      calibration({ baseline: { on: '2025-05-02' } }),
    );
    expect(onCar.analysis.items[0]).toMatchObject({ state: null, service: '2026-05-02' });
  });

  it('takes a label by its day', () => {
    const helmet = (value: string) => [
      { id: 'h', name: 'Helmet', limits: [{ measure: 'date', value }] } as typeof look,
    ];
    const state = (value: string) =>
      analyse([], { kind: 'person', name: 'A' }, helmet(value)).analysis.items[0]?.state;
    expect(state('2026-05-31')).toBe('overdue');
    expect(state('2026-06-10')).toBe('dueSoon');
    expect(state('2030-06-10')).toBeNull();
  });

  it('never calls an amount known that nothing counts', () => {
    const cycles = [{ ...look, baseline: { on: '2026-01-01', historyComplete: true } }];
    expect(analyse([], wrench, cycles).analysis.items[0]).toMatchObject({
      state: 'unknown',
      reasonCode: 'lowerBound',
    });
  });
});
