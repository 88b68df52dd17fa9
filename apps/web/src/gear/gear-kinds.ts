import type { EntryKind, GearKind } from '@quartermark/engine/log';

/** What is written down of a piece by itself; what is done to it on a car is recorded of the car. */
const OF_ANY = ['finding', 'inspection', 'repair', 'note'] as const satisfies readonly EntryKind[];

/** Kinds of entries that have a form for a piece without a car. */
export function gearKinds(kind: GearKind): readonly EntryKind[] {
  return kind === 'component' ? [...OF_ANY, 'measure'] : OF_ANY;
}
