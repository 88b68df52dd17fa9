import type { GarageRole, GarageRow } from '@quartermark/db';
import { refuse } from '../refused.ts';

/** @throws Refused where somebody does not run the garage: its post is the owner's and the administrators' */
export function mustKeep(role: GarageRole): void {
  if (role === 'owner' || role === 'admin') return;
  throw refuse(
    'notAllowed',
    null,
    'The garage’s post is set by its owner and its administrators; ask one of them.',
  );
}

/** @throws Refused in the demo garage, which nothing leaves */
export function mustNotBeDemo({ demo }: Pick<GarageRow, 'demo'>): void {
  if (!demo) return;
  throw refuse(
    'notAllowed',
    null,
    'Nothing leaves the demo garage; make a garage of your own for letters by mail, a webhook or a calendar.',
  );
}
