import { distance, months, onCircuits } from './limits.ts';
import { askFor, type Proposal, propose, type Wanted } from './proposal.ts';

const AFTER_A_KNOCK = { incidents: ['off' as const, 'contact' as const] };

/** What every car has, whatever drives it. The oil level is no item: its readings are a log of their own. */
export function wholeCarItems(wanted: Wanted): Proposal[] {
  const look = (key: string, name: string, why: string) =>
    propose(
      key,
      { name, triggers: AFTER_A_KNOCK },
      [months(12), ...onCircuits(wanted, { sessions: 25 })],
      why,
    );
  return [
    look('hosesLook', 'Hoses and clamps, look', 'Look for cracks, swelling and rubbing.'),
    look('bearingsLook', 'Wheel bearings, look', 'Play and noise, wheel by wheel.'),
    look(
      'bootsLook',
      'Boots and ball joints, look',
      'A torn boot lets water in long before the joint is heard.',
    ),
    look('mountsLook', 'Mounts and bushes, look', 'Engine, gearbox and suspension.'),
    propose(
      'alignment',
      { name: 'Wheel alignment', triggers: AFTER_A_KNOCK },
      [distance(wanted, 20_000, 12_000, { circuit: 15, autocross: 8, strip: 1 }), months(12)],
      'And after every off, contact or work on the suspension.',
    ),
    propose('battery', { name: '12 V battery, test' }, [months(12)], 'Best before winter.'),
    askFor('cabinFilter', { name: 'Cabin filter' }, 'By the manual.'),
    ...(wanted.profile.airSuspension
      ? [
          propose(
            'airSuspension',
            { name: 'Air suspension, leak look' },
            [months(12)],
            'Switch it to lifting mode before jacking; the manual says how.',
          ),
        ]
      : []),
    askFor(
      'roadInspection',
      { name: 'Road inspection', warnDays: 42 },
      'The date on the paper.',
      'label',
    ),
    askFor('insurance', { name: 'Insurance', warnDays: 42 }, 'The date on the paper.', 'label'),
  ];
}
