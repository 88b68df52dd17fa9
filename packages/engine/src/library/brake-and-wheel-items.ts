import type { Limit } from '../log/item.ts';
import { distance, HARD_ONLY, months, onCircuits, onDragStrips, ROAD_ONLY } from './limits.ts';
import { askFor, type Proposal, propose, type Wanted } from './proposal.ts';

/** Brakes, wheels and tyres, of every car. */
export function brakeAndWheelItems(wanted: Wanted): Proposal[] {
  return [
    brakeFluid(wanted),
    ...bleeding(wanted),
    pads(wanted),
    discs(wanted),
    ...wheels(wanted),
    tyres(wanted),
  ];
}

/**
 * Sessions are those of plain DOT 4, the careful value; a person with high-temperature fluid raises
 * them to 18. A car said to do no circuits gets the shorter months with its first session.
 */
function brakeFluid({ does }: Wanted): Proposal {
  const circuits = does('circuit');
  const sessions: Limit = {
    measure: 'sessions',
    value: 5,
    weights: { ...HARD_ONLY, autocross: 0.3 },
  };
  return propose(
    'brakeFluid',
    {
      name: 'Brake fluid',
      role: 'brakeFluid',
      leadDays: 3,
      triggers: { incidents: ['softPedal'] },
      ...(!circuits && {
        severe: {
          classes: ['circuit'],
          measure: 'sessions',
          share: 0.1,
          limits: [{ measure: 'months', value: 12 }],
        },
      }),
    },
    [months(circuits ? 12 : 24), sessions],
    'Five circuit sessions are for plain DOT 4; with high-temperature fluid 18 are common. A soft pedal makes it due at once. Never mix silicone and glycol fluid.',
  );
}

function bleeding({ does }: Wanted): Proposal[] {
  if (!does('circuit')) return [];
  return [
    propose(
      'brakeBleed',
      { name: 'Brakes, bleed' },
      [months(3)],
      'And before a circuit day whenever the pedal asks for it. The pedal must be firm before the car moves.',
    ),
  ];
}

function pads(wanted: Wanted): Proposal {
  return propose(
    'padsLook',
    { name: 'Brake pads, look and measure', role: 'pads', leadDays: 7 },
    [distance(wanted, 10_000, 6000, ROAD_ONLY), months(6), ...onCircuits(wanted, { sessions: 5 })],
    'Start a circuit day above about half or 6 mm, end it above 3 mm.',
  );
}

function discs(wanted: Wanted): Proposal {
  const weighed = wanted.profile.discMaterial === 'carbonCeramic';
  return propose(
    weighed ? 'discsWeigh' : 'discsLook',
    {
      name: weighed ? 'Brake discs, weigh' : 'Brake discs, look and measure',
      leadDays: 14,
    },
    [months(12), ...onCircuits(wanted, { sessions: 25 })],
    weighed
      ? 'Carbon-ceramic discs are judged by mass: the least one stands on the disc.'
      : 'The least thickness stands on the disc. Look for cracks that reach an edge.',
  );
}

function wheels(wanted: Wanted): Proposal[] {
  const centre = wanted.profile.wheelFixing === 'centreLock';
  return [
    propose(
      'wheelFasteners',
      {
        name: centre ? 'Centre-lock nuts, torque' : 'Wheel fasteners, torque',
        role: 'wheelFasteners',
        warnDays: 0,
        triggers: { wheelsOff: true },
      },
      [
        months(12),
        ...onCircuits(wanted, { sessions: 5, autocross: 5 }),
        ...onDragStrips(wanted, 6),
      ],
      centre
        ? 'Before every day on a circuit or drag strip and whenever a wheel was off, by the maker’s own procedure.'
        : 'Before every day on a circuit or drag strip and whenever a wheel was off. Cold, star order, the manual’s torque. Check again after the first session and at 80 to 160 km.',
    ),
    askFor(
      'wheelFastenersRenew',
      {
        name: {
          centreLock: 'Centre-lock nuts, renew',
          stud: 'Wheel studs, renew',
          bolt: 'Wheel bolts, renew',
          notSaid: 'Wheel bolts or studs, renew',
        }[wanted.profile.wheelFixing ?? 'notSaid'],
        leadDays: 7,
      },
      'They stretch with every tightening. The maker says when they are used up.',
    ),
  ];
}

function tyres(wanted: Wanted): Proposal {
  return propose(
    'tyresLook',
    { name: 'Tyres, tread and cracks', role: 'tyres', leadDays: 14 },
    [distance(wanted, 10_000, 6000, ROAD_ONLY), months(6), ...onCircuits(wanted, { sessions: 5 })],
    'Legal floors: 1.6 mm in the EU, 2/32 in in the US, which is a little less.',
  );
}
