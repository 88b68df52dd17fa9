import { describe, expect, it } from 'vitest';
import { circuitDay, DRIVER, ITEMS, pieceOf, readyCar } from '../../test/ready-car.ts';
import type { Requirements } from '../log/requirements.ts';
import type { CarAsked, EventAsked } from './asked.ts';
import { carReadiness } from './assess.ts';
import type { Need } from './result.ts';
import { usualRequirements } from './usual-requirements.ts';

const mm = (text: string) => ({ text, unit: 'mm' as const });

function atCircuit(
  car: CarAsked,
  event: EventAsked = circuitDay(),
  more: Partial<Requirements> = {},
) {
  return carReadiness(car, event, { ...usualRequirements('circuit'), ...more });
}
const onTheRoad = (car: CarAsked) => carReadiness(car, null, usualRequirements('road'));
const needOf = (needs: readonly Need[], id: string) => needs.find((need) => need.id === id);
const open = (needs: readonly Need[]) =>
  needs.flatMap(({ status, weight, id }) => (status === 'met' || weight === 'advice' ? [] : [id]));

describe('a car of which nothing is missing', () => {
  it('is ready for the circuit day and for the road, by the log', () => {
    const circuit = atCircuit(readyCar());
    expect(open(circuit.needs)).toEqual([]);
    expect(circuit.verdict).toEqual({ word: 'ready', by: null });
    expect(onTheRoad(readyCar()).verdict).toEqual({ word: 'ready', by: null });
  });
});

// Each written down by hand before it was asked: what stands in the way, the verdict at the circuit on Saturday,
// and for the road today, 15 June.
const SITUATIONS: [what: string, car: CarAsked, id: string, circuit: string, road: string][] = [
  [
    'oil drained and nothing filled',
    readyCar({
      lines: [
        {
          id: 'drained',
          kind: 'oilChange',
          on: '2026-06-15',
          drained: { text: '6', unit: 'l' },
          filterRenewed: false,
        },
      ],
    }),
    'openJob:drained',
    'canBeReady',
    'notInTime',
  ],
  [
    'a pad set that is not bedded',
    readyCar({
      lines: [
        {
          id: 'pads-on',
          kind: 'fit',
          on: '2026-06-01',
          component: 'pads',
          change: 'on',
          positions: ['front'],
          condition: 'new',
          bedding: 'notBedded',
        },
      ],
    }),
    'bedding:pads',
    'canBeReady',
    // advice on the road
    'ready',
  ],
  [
    'a soft pedal that nobody looked into',
    readyCar({ lines: [{ id: 'soft', kind: 'incident', on: '2026-06-13', what: 'softPedal' }] }),
    'incident:soft',
    'canBeReady',
    'notInTime',
  ],
  [
    'an odometer read 156 days ago',
    readyCar({
      without: ['one', 'look'],
      lines: [{ kind: 'oilCheck', on: '2026-06-14', level: { how: 'fraction', fraction: 0.75 } }],
    }),
    'odometer',
    'notOnRecord',
    'notOnRecord',
  ],
  [
    'a do-not-drive finding',
    readyCar({
      lines: [
        {
          id: 'hose',
          kind: 'finding',
          on: '2026-06-14',
          what: 'Brake hose cracked',
          where: 'rearLeft',
          severity: 'doNotDrive',
        },
      ],
    }),
    'doNotDrive:hose',
    'canBeReady',
    'notInTime',
  ],
  [
    'a finding before hard use',
    readyCar({
      lines: [
        {
          id: 'boot',
          kind: 'finding',
          on: '2026-06-14',
          what: 'Boot torn',
          severity: 'beforeHardUse',
        },
      ],
    }),
    'finding:boot',
    'canBeReady',
    'ready',
  ],
  [
    'wheels off',
    readyCar({ lines: [{ id: 'off', kind: 'wheels', on: '2026-06-14', change: 'off' }] }),
    'wheels',
    'canBeReady',
    'notInTime',
  ],
  [
    'wheels never torqued on record',
    readyCar({ without: ['torqued', 'rechecked'] }),
    'torque',
    'notOnRecord',
    'ready',
  ],
  [
    'none on the stick',
    readyCar({
      lines: [{ id: 'dry', kind: 'oilCheck', on: '2026-06-15', level: { how: 'none' } }],
    }),
    'oilLevel',
    'canBeReady',
    'notInTime',
  ],
  [
    'pads that end below three millimetres',
    readyCar({
      lines: [
        {
          id: 'measured-2',
          kind: 'measure',
          on: '2026-06-06',
          component: 'pads',
          pads: [{ corner: 'frontLeft', inner: mm('4.5'), outer: mm('4.6') }],
        },
      ],
    }),
    'pads:pads',
    'canBeReady',
    // 4.5 mm are enough for the road as it stands
    'ready',
  ],
  [
    'tread below the law’s',
    readyCar({
      lines: [
        {
          id: 'tread-2',
          kind: 'measure',
          on: '2026-06-06',
          component: 'tyres',
          tread: [{ corner: 'frontLeft', depth: mm('1.5') }],
        },
      ],
    }),
    'tyres:tyres',
    'canBeReady',
    'canBeReady',
  ],
  [
    'pads and tyres that nobody wrote down',
    readyCar({ parts: [] }),
    'pads',
    'notOnRecord',
    'ready',
  ],
  [
    'brake fluid overdue',
    readyCar({
      items: ITEMS.map((item) =>
        item.id === 'fluid' ? { ...item, limits: [{ measure: 'days', value: 10 }] } : item,
      ),
    }),
    'limit:fluid',
    'canBeReady',
    'canBeReady',
  ],
  [
    'brake fluid never on record',
    readyCar({
      lines: [
        { id: 'served', kind: 'service', on: '2026-06-01', items: ['oil'], historyComplete: true },
      ],
    }),
    'limit:fluid',
    'notOnRecord',
    'notOnRecord',
  ],
  [
    'brake fluid that nobody watches',
    readyCar({ items: ITEMS.filter(({ id }) => id !== 'fluid') }),
    'watched:brakeFluid',
    'notOnRecord',
    'ready',
  ],
  [
    'a helmet that runs out before the day',
    readyCar({
      drivers: [
        pieceOf(
          'driver',
          { kind: 'person', name: 'Jenna Holt-Brae' },
          [{ id: 'helmet', name: 'Helmet', limits: [{ measure: 'date', value: '2026-06-19' }] }],
          [],
        ),
      ],
    }),
    'safetyGear:driver:helmet',
    'canBeReady',
    'ready',
  ],
  [
    'an event that is over with nothing on record',
    readyCar({
      past: [
        {
          id: 'may',
          name: 'Circuit day in May',
          sort: 'circuit',
          start: '2026-05-16',
          end: '2026-05-16',
          onRecord: false,
        },
      ],
    }),
    'lastEvent:may',
    'notOnRecord',
    'notOnRecord',
  ],
  [
    'a lay-up over the day',
    readyCar({ layUps: [{ id: 'winter', start: '2026-06-10' }] }),
    'here',
    'canBeReady',
    'canBeReady',
  ],
];

describe('one thing missing', () => {
  it.each(SITUATIONS)('%s stops it, or is advice', (_what, car, id, circuit, road) => {
    const atDay = atCircuit(car);
    expect(needOf(atDay.needs, id)).toMatchObject({ weight: 'blocking' });
    expect(open(atDay.needs)).toContain(id);
    expect(atDay.verdict.word).toBe(circuit);
    expect(onTheRoad(car).verdict.word).toBe(road);
    // whatever is missing says why, and what is to be done
    const need = needOf(atDay.needs, id);
    expect(need?.reason).toMatch(/\.$/);
    expect(need?.remedy?.what).toBeTruthy();
  });
});

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
    ['openJob:drained', SITUATIONS[0]?.[1]],
    ['incident:soft', SITUATIONS[2]?.[1]],
    ['doNotDrive:hose', SITUATIONS[4]?.[1]],
    ['wheels', SITUATIONS[6]?.[1]],
    ['torque', SITUATIONS[7]?.[1]],
  ])('%s cannot be taken upon anybody', (id, car) => {
    const { verdict, needs } = atCircuit({ ...(car as CarAsked), acceptances: accept(id) });
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
    const car = SITUATIONS[1]?.[1] as CarAsked;
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
