import { type GearRow, readGear } from '@quartermark/db';
import type { Writing } from '../command/run-command.ts';
import { notFoundHere, refuse } from '../refused.ts';
import { stale } from '../stale.ts';

/**
 * The piece as it stands, if it may be changed from `baseRevision`.
 *
 * @throws Refused `notFound`, `removed` or `conflict`
 */
export async function standingGear(
  { tx, garage }: Writing,
  gearId: string,
  baseRevision: number,
): Promise<GearRow> {
  const row = await readGear(tx, garage.id, gearId);
  if (!row) throw notFoundHere('set, tool or person', 'gearId');
  if (row.removedAt)
    throw refuse(
      'removed',
      'gearId',
      'This was removed and stays so; what you wrote is still in the form. Add it as a new one.',
    );
  if (row.revision !== baseRevision)
    throw await stale(tx, garage.id, 'This was', baseRevision, row);
  return row;
}
