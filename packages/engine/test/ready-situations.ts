import type { CarAsked } from '../src/readiness/index.ts';
import { ITEMS, pieceOf, readyCar } from './ready-car.ts';

const mm = (text: string) => ({ text, unit: 'mm' as const });

// Each written down by hand before it was asked: what stands in the way, the verdict at the circuit on Saturday,
// and for the road today, 15 June.
export const SITUATIONS: [
  what: string,
  car: CarAsked,
  id: string,
  circuit: string,
  road: string,
][] = [
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

/** The car of one of them. @throws Error for words that stand nowhere */
export function situation(words: string): CarAsked {
  const found = SITUATIONS.find(([what]) => what.includes(words));
  if (found === undefined) throw new Error(`no situation says "${words}"`);
  return found[1];
}
