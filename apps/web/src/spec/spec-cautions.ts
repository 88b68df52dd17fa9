import type { CarProfile, SpecGroup } from '@quartermark/engine/log';

/*
 * Cautions are common practice, written in our own words; the maker's manual decides, and each list
 * says so.
 */

/** What can hurt somebody who works by a group of the sheet; empty where nothing special does. */
export function groupCautions(group: SpecGroup, profile: CarProfile): string[] {
  if (group === 'jacking') return liftingCautions(profile);
  if (group === 'torques') return torqueCautions(profile);
  return [];
}

function liftingCautions({ airSuspension, drive }: CarProfile): string[] {
  return [
    'Lift at the maker’s points only, on firm and level ground, with the wheels that stay down chocked.',
    'Nobody goes under a car that a jack alone holds: stands, or a lift with the locks loaded on every post.',
    ...(airSuspension ? ['Switch the air suspension off or to its lifting mode first.'] : []),
    ...(drive === 'hybrid' || drive === 'electric'
      ? ['Mind the battery under the floor; high voltage is for those trained in it.']
      : []),
  ];
}

function torqueCautions({ wheelFixing }: CarProfile): string[] {
  return [
    wheelFixing === 'centreLock'
      ? 'A centre lock has a procedure of its own: follow the manual’s, with its tool and its safety pin.'
      : 'Wheels: cold, threads dry, in the manual’s order, the right seat for the wheel.',
    'Check the wheels again after the first session or a short drive. Never loosen hot fasteners.',
  ];
}
