import type { Limit } from '../log/item.ts';
import { distance, months, onCircuits, onDragStrips } from './limits.ts';
import { askFor, type Proposal, propose, type Wanted } from './proposal.ts';

/**
 * Items of a combustion engine.
 *
 * Oil: 12,000 km at weight 12 is 25 sessions of 40 km, the distance that a session without one is taken
 * to have; by hours (0.40 h at 110 km/h, 44 km) the same limit is 22.7 sessions. So distance lies 9 %
 * under hours and sessions, and the three agree within 10 %. The same holds for all items with a
 * distance that circuits count towards.
 */
export function engineItems(wanted: Wanted): Proposal[] {
  if (wanted.profile.drive === 'electric') return [];
  return [...oil(wanted), ...ignition(wanted), ...breathing(wanted), ...belts(wanted)];
}

function oil(wanted: Wanted): Proposal[] {
  const { profile } = wanted;
  const limits: [Limit, ...Limit[]] = [
    distance(wanted, 12_000, 7500, { touring: 1, circuit: 12, autocross: 6, strip: 3 }),
    months(12),
    ...onCircuits(wanted, { hours: 10, sessions: 25, autocross: 0.25 }),
    ...onDragStrips(wanted, profile.induction === 'forced' ? 25 : 40),
  ];
  const triggers = { incidents: ['overheating' as const] };
  const shared = { triggers, leadDays: 3 };
  const items = [
    propose(
      'engineOil',
      { name: 'Engine oil', role: 'engineOil', ...shared },
      limits,
      'Circuit use counts twelve times, because heat and fuel in the oil age it. The manual’s own interval wins where it is shorter. If the manual names an oil temperature above which the oil is due at once, add it.',
    ),
    propose(
      'oilFilter',
      { name: 'Oil filter', role: 'oilFilter', ...shared },
      limits,
      'Renewed with the oil.',
    ),
  ];
  if (profile.sump !== 'dry') return items;
  return [
    ...items,
    askFor(
      'drySump',
      { name: 'Dry-sump hoses and tank screen' },
      'Hoses age and the screen catches what the engine sheds. The manual, or whoever built the system, gives the interval.',
    ),
  ];
}

/**
 * Spark plugs count 15 times on circuits, not twice: at twice, 40,000 km would be 90 track days and
 * 80,000 km 180. Fifteen makes it 12 and 24, so that a car that lives on circuits is looked at within
 * a season or two.
 */
function ignition(wanted: Wanted): Proposal[] {
  const { induction, fuel } = wanted.profile;
  if (fuel === 'diesel')
    return [askFor('glowPlugs', { name: 'Glow plugs' }, 'The manual says when, if at all.')];
  const weights = { circuit: 15, autocross: 8, strip: 4 };
  const forced = induction === 'forced';
  const limit = forced
    ? distance(wanted, 40_000, 25_000, weights)
    : distance(wanted, 80_000, 50_000, weights);
  return [
    propose(
      'sparkPlugs',
      { name: 'Spark plugs', leadDays: 7 },
      [limit],
      forced
        ? 'Forced induction wears the gap faster. Use the heat range that the manual gives.'
        : 'Use the gap and the heat range that the manual gives.',
    ),
  ];
}

function breathing({ profile }: Wanted): Proposal[] {
  const items = [
    askFor('airFilter', { name: 'Air filter' }, 'By the manual; sooner after dust.'),
    askFor('fuelFilter', { name: 'Fuel filter' }, 'By the manual. Some sit in the tank for life.'),
    propose(
      'coolantFrost',
      { name: 'Coolant, freezing point', warnDays: 30 },
      [months(12)],
      'Measure it before winter.',
    ),
    askFor(
      'coolant',
      { name: 'Coolant', triggers: { incidents: ['overheating'] } },
      'Makers give anything from 24 to 120 months: the manual decides. Never open a hot system.',
    ),
  ];
  if (profile.induction !== 'forced') return items;
  return [
    ...items,
    askFor(
      'chargerOil',
      { name: 'Supercharger oil' },
      'Only where the supercharger has oil of its own. The manual gives the interval.',
    ),
  ];
}

function belts({ profile }: Wanted): Proposal[] {
  const items = [
    askFor(
      'timingBelt',
      { name: 'Timing belt or chain', leadDays: 14 },
      'A belt that breaks can take the engine with it: the manual’s distance and age, whichever comes first.',
    ),
    askFor('accessoryBelt', { name: 'Accessory belt' }, 'The manual’s distance and age.'),
  ];
  if (profile.induction !== 'forced') return items;
  return [
    ...items,
    askFor('chargerBelt', { name: 'Supercharger belt' }, 'Only where a belt drives it.'),
  ];
}
