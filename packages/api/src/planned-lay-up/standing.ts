import { type PlannedLayUpRow, readPlannedLayUp } from '@quartermark/db';
import type { Writing } from '../command/run-command.ts';
import { notFoundHere, refuse } from '../refused.ts';
import { stale } from '../stale.ts';
import { layUpOf } from './view-of.ts';

/**
 * The planned lay-up as it stands, if it may be changed from `baseRevision`.
 *
 * @throws Refused `notFound`, `removed` or `conflict`
 */
export async function standingPlannedLayUp(
  { tx, garage }: Writing,
  layUpId: string,
  baseRevision: number,
): Promise<PlannedLayUpRow> {
  const row = await readPlannedLayUp(tx, garage.id, layUpId);
  if (!row) throw notFoundHere('planned lay-up', 'layUpId');
  if (row.removedAt)
    throw refuse(
      'removed',
      'layUpId',
      'This lay-up is no longer planned; what you wrote is still in the form. Plan it as a new one.',
    );
  if (row.revision !== baseRevision)
    throw await stale(tx, garage.id, 'The planned lay-up was', baseRevision, {
      ...row,
      body: layUpOf(row),
    });
  return row;
}
