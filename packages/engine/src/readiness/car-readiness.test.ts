import { describe, expect, it } from 'vitest';
import { circuitDay, DRIVER, ITEMS, pieceOf, readyCar } from '../../test/ready-car.ts';
import { situation } from '../../test/ready-situations.ts';
import type { Requirements } from '../log/requirements.ts';
import type { CarAsked, EventAsked } from './asked.ts';
import { carReadiness } from './assess.ts';
import type { Need } from './result.ts';
import { usualRequirements } from './usual-requirements.ts';

function atCircuit(
  car: CarAsked,
  event: EventAsked = circuitDay(),
  more: Partial<Requirements> = {},
) {
  return carReadiness(car, event, { ...usualRequirements('circuit'), ...more });
}
const needOf = (needs: readonly Need[], id: string) => needs.find((need) => need.id === id);
describe('time and parts', () => {
  const worn = (leadDays: number) =>
    readyCar({
      items: ITEMS.map((item) =>
        item.id === 'oil' ? { ...item, leadDays, limits: [{ measure: 'days', value: 5 }] } : item,
      ),
    });

  it('can be ready on the day the parts come', () => {
    const { verdict, needs } = atCircuit(worn(3));
    expect(verdict).toEqual({ word: 'canBeReady', by: '2026-06-18' });
    // the eve is the 19th: order by the 16th
    expect(needOf(needs, 'limit:oil')?.remedy).toMatchObject({
      leadDays: 3,
      feasible: true,
      parts: { kind: 'orderBy' },
    });
  });

  it('is not in time where the parts take longer than the eve', () => {
    expect(atCircuit(worn(4)).verdict).toEqual({ word: 'canBeReady', by: '2026-06-19' });
    expect(atCircuit(worn(5)).verdict).toEqual({ word: 'notInTime', by: null });
  });

  it('parts on the shelf take no days', () => {
    const car = worn(12);
    const orders = [{ id: 'o', item: 'oil', what: 'Oil', on: '2026-06-10', arrived: '2026-06-12' }];
    const { verdict } = atCircuit({ ...car, book: { ...car.book, orders } as CarAsked['book'] });
    expect(verdict).toEqual({ word: 'canBeReady', by: '2026-06-15' });
  });

  it('an interval shorter than the event cannot be met by any work', () => {
    const items = ITEMS.map((item) =>
      item.id === 'oil' ? { ...item, limits: [{ measure: 'sessions' as const, value: 3 }] } : item,
    );
    expect(atCircuit(readyCar({ items })).verdict.word).toBe('notInTime');
  });
});

describe('until home again', () => {
  const items = [
    ...ITEMS,
    {
      id: 'belt',
      name: 'Belt',
      limits: [
        { measure: 'km' as const, value: 1500, unit: 'km' as const, weights: { circuit: 0 } },
      ],
      baseline: { on: '2026-06-01', odometer: { text: '40840', unit: 'km' as const } },
    },
  ];
  const margin = (event: EventAsked) =>
    needOf(atCircuit(readyCar({ items }), event).needs, 'limit:belt')?.margin?.value ?? Number.NaN;

  it('the way there and back counts for a car that is driven, not for one on a trailer', () => {
    const trailered = circuitDay({
      travel: { distance: { text: '80', unit: 'km' }, trailered: ['car'] },
    });
    // 2 x 80 km, and a little more, since no way is as long as planned
    expect(margin(trailered) - margin(circuitDay())).toBeGreaterThan(160);
    expect(margin(trailered) - margin(circuitDay())).toBeLessThan(220);
    expect(margin(circuitDay())).toBeGreaterThan(0);
  });

  it('a belt that lasts the day but not the way home stops it', () => {
    const far = circuitDay({ travel: { distance: { text: '500', unit: 'km' } } });
    expect(needOf(atCircuit(readyCar({ items }), far).needs, 'limit:belt')?.status).toBe(
      'metAfterWork',
    );
  });
});

describe('what was planned', () => {
  it('is asked for: without it nothing is known of the end', () => {
    const { verdict, needs } = atCircuit(readyCar(), circuitDay({ use: undefined }));
    expect(needOf(needs, 'plannedUse')?.status).toBe('unknown');
    expect(verdict.word).toBe('notOnRecord');
  });

  it('hard use never measured is no ground for fine, and nothing the first day could be kept from by', () => {
    const car = readyCar({
      without: ['one', 'look'],
      lines: [
        {
          kind: 'oilCheck',
          on: '2026-06-14',
          odometer: { text: '41200', unit: 'km' },
          level: { how: 'fraction', fraction: 0.9 },
        },
      ],
    });
    expect(needOf(atCircuit(car).needs, 'oilLasts')).toMatchObject({
      status: 'unknown',
      weight: 'advice',
    });
  });
});

describe('accepting', () => {
  const accept = (need: string) => [
    { acceptanceId: 'a', need, by: 'Jenna Holt-Brae', on: '2026-06-15', because: 'seen by eye' },
  ];

  it('a need that somebody took upon himself no longer counts, and stays visible', () => {
    const { verdict, needs } = atCircuit(
      readyCar({
        without: ['shown'],
        parts: readyCar().parts,
        acceptances: accept('limit:fluid'),
        lines: [
          {
            id: 'served',
            kind: 'service',
            on: '2026-06-01',
            items: ['oil'],
            historyComplete: true,
          },
        ],
      }),
    );
    expect(verdict.word).toBe('ready');
    expect(needOf(needs, 'limit:fluid')?.accepted).toMatchObject({ because: 'seen by eye' });
  });

  it.each([
    ['openJob:drained', situation('oil drained')],
    ['incident:soft', situation('soft pedal')],
    ['doNotDrive:hose', situation('do-not-drive')],
    ['wheels', situation('wheels off')],
    ['torque', situation('never torqued')],
  ])('%s cannot be taken upon anybody', (id, car) => {
    const { verdict, needs } = atCircuit({ ...car, acceptances: accept(id) });
    expect(needOf(needs, id)).toMatchObject({ accepted: null, mayAccept: false });
    expect(verdict.word).not.toBe('ready');
  });
});

describe('requirements', () => {
  it('noise is asked where a limit is set, and unknown where it was never measured', () => {
    const loud = atCircuit(readyCar(), circuitDay(), { noiseDb: 90 });
    expect(needOf(loud.needs, 'noise')).toMatchObject({
      status: 'metAfterWork',
      margin: { value: -2, unit: 'dB' },
    });
    const never = atCircuit(readyCar({ profile: { noiseDb: undefined } }), circuitDay(), {
      noiseDb: 90,
    });
    expect(needOf(never.needs, 'noise')?.status).toBe('unknown');
    expect(needOf(atCircuit(readyCar()).needs, 'noise')).toBeUndefined();
  });

  it('what is not asked does not appear, what is advice does not count', () => {
    const { weights } = usualRequirements('circuit');
    const car = situation('not bedded');
    const off = atCircuit(car, circuitDay(), { weights: { ...weights, bedding: 'off' } });
    expect(needOf(off.needs, 'bedding:pads')).toBeUndefined();
    expect(off.verdict.word).toBe('ready');
    const advice = atCircuit(car, circuitDay(), { weights: { ...weights, bedding: 'advice' } });
    expect(needOf(advice.needs, 'bedding:pads')?.status).toBe('metAfterWork');
    expect(advice.verdict.word).toBe('ready');
  });

  it('nobody named to drive is told, and a person without papers is not on record', () => {
    const { needs } = atCircuit(readyCar({ drivers: [] }));
    expect(needOf(needs, 'drivers')).toMatchObject({ status: 'unknown', weight: 'advice' });
    const bare = pieceOf('driver', { kind: 'person', name: 'Jenna Holt-Brae' }, [], []);
    expect(
      needOf(atCircuit(readyCar({ drivers: [bare, DRIVER] })).needs, 'safetyGear:driver'),
    ).toMatchObject({
      status: 'unknown',
      weight: 'blocking',
    });
  });
});

describe('a set measured once', () => {
  // what they measured new is not written down either
  const pads = { kind: 'component', name: 'Front pads', sort: 'pads', condition: 'new' } as const;
  const once = (inner: string) => {
    const depth = { text: inner, unit: 'mm' as const };
    const car = readyCar({
      without: ['measured-2'],
      lines: [
        {
          id: 'measured',
          kind: 'measure',
          on: '2026-06-06',
          component: 'pads',
          pads: [{ corner: 'frontLeft', inner: depth }],
        },
      ],
    });
    const others = car.parts.filter(({ gear }) => gear.id !== 'pads');
    return { ...car, parts: [...others, pieceOf('pads', pads, [], [car.book])] };
  };

  it('is not on record, and keeps no car from its first day where it is thick enough to begin one', () => {
    const { needs, verdict } = atCircuit(once('9'));
    expect(needOf(needs, 'pads:pads')).toMatchObject({ status: 'unknown', weight: 'advice' });
    expect(verdict.word).toBe('ready');
  });

  it('keeps it where it is thinner than a day should begin with', () => {
    // 6 mm, by common practice
    expect(needOf(atCircuit(once('5.9')).needs, 'pads:pads')).toMatchObject({
      status: 'unknown',
      weight: 'blocking',
    });
  });
});
