import type { Limit } from '../log/item.ts';
import { distance, months, onCircuits, onDragStrips } from './limits.ts';
import { askFor, type Proposal, propose, type Wanted } from './proposal.ts';

const NO_CLUTCH_PEDAL = /auto|dual|dct|cvt|single speed/i;

/** Gearbox, differential, clutch; of an electric car its reduction gear and its cooling. */
export function drivelineItems(wanted: Wanted): Proposal[] {
  const { drive, gearbox } = wanted.profile;
  const hv = askFor(
    'highVoltage',
    { name: 'High-voltage system check' },
    'Only by people trained for it, at the maker’s interval.',
  );
  if (drive === 'electric')
    return [
      hv,
      askFor('reductionGearOil', { name: 'Reduction gear oil' }, 'By the manual.'),
      askFor(
        'batteryCoolant',
        { name: 'Battery and motor coolant' },
        'By the manual, with its own fluid.',
      ),
    ];
  const pedal = gearbox === undefined || !NO_CLUTCH_PEDAL.test(gearbox);
  return [
    ...gearOils(wanted),
    ...(pedal ? [clutchFluid(gearbox === undefined)] : []),
    ...(drive === 'hybrid' ? [hv] : []),
  ];
}

/** 40,000 km at weight 25 is 40 sessions of 40 km: 16 hours; see the note at the engine oil. */
function gearOils(wanted: Wanted): Proposal[] {
  const limits: [Limit, ...Limit[]] = [
    distance(wanted, 40_000, 25_000, { touring: 1, circuit: 25, autocross: 12, strip: 8 }),
    months(48),
    ...onCircuits(wanted, { hours: 16, sessions: 40, autocross: 0.25 }),
    ...onDragStrips(wanted, 80),
  ];
  return [
    propose(
      'gearboxOil',
      { name: 'Gearbox oil', leadDays: 7 },
      limits,
      'Heat and launches age it. Use the fluid and the level procedure that the manual gives.',
    ),
    propose(
      'differentialOil',
      { name: 'Differential oil', leadDays: 7 },
      limits,
      'With a limited-slip differential, use the additive that the manual names. Skip it where gearbox and differential share one oil.',
    ),
  ];
}

function clutchFluid(ifThereIsOne: boolean): Proposal {
  return propose(
    'clutchFluid',
    { name: 'Clutch fluid', leadDays: 3 },
    [months(24)],
    `${ifThereIsOne ? 'Only where the clutch is hydraulic and has fluid of its own. ' : ''}It takes up water as brake fluid does.`,
  );
}
