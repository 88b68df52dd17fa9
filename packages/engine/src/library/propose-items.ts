import type { CarProfile } from '../log/book.ts';
import type { UseClass } from '../log/item.ts';
import type { DistanceUnit } from '../log/units.ts';
import { brakeAndWheelItems } from './brake-and-wheel-items.ts';
import { drivelineItems } from './driveline-items.ts';
import { engineItems } from './engine-items.ts';
import { distance, months, onCircuits } from './limits.ts';
import { askFor, type Proposal, propose, type Wanted } from './proposal.ts';
import { wholeCarItems } from './whole-car-items.ts';

function wantedOf(profile: CarProfile, unit: DistanceUnit, uses: readonly UseClass[]): Wanted {
  return { profile, unit, does: (use) => uses.includes(use) };
}

/**
 * The items a car of this kind is usually watched by, for a person to take, change or leave. Nothing
 * here knows the car: the maker's manual wins over every value.
 *
 * @param profile what is known of the car; what is not said is proposed with the more careful value
 * @param unit unit of its odometer; distances are round in it
 * @param uses what the car is used for; none named counts as road
 * Source: common practice, no published source, unless an item names another.
 */
export function proposeItems(
  profile: CarProfile,
  unit: DistanceUnit,
  uses: readonly UseClass[],
): Proposal[] {
  const wanted = wantedOf(profile, unit, uses);
  return [
    ...engineItems(wanted),
    ...drivelineItems(wanted),
    ...brakeAndWheelItems(wanted),
    ...wholeCarItems(wanted),
  ];
}

/**
 * One-off looks after work: done once, they are over. To be added with the day of the work as their
 * starting point.
 *
 * @param unit unit of the car's odometer
 */
export function proposeFollowUps(
  profile: CarProfile,
  unit: DistanceUnit,
  uses: readonly UseClass[],
): Proposal[] {
  const wanted = wantedOf(profile, unit, uses);
  const once = { once: true, warnDays: 0 } as const;
  return [
    propose(
      'wheelRecheck',
      { name: 'Wheels, check the torque again', role: 'wheelFasteners', ...once },
      [distance(wanted, 100, 60, {}), ...onCircuits(wanted, { sessions: 1 })],
      'After wheels were off: after the first session, and at 80 to 160 km on the road. Wheels cold.',
    ),
    propose(
      'leakLook',
      { name: 'Look for leaks', ...once },
      [distance(wanted, 50, 30, {}), months(1)],
      'After oil, coolant, fuel or brake work: after about 50 km. Car safe on its stands, engine cold.',
    ),
    ...(profile.drive === 'electric'
      ? []
      : [
          askFor(
            'runInOil',
            { name: 'Run-in oil', role: 'engineOil', ...once },
            'For a new or rebuilt engine: whoever built it says after what distance.',
          ),
        ]),
  ];
}
