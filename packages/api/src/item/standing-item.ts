import { type ItemRow, readItem } from '@quartermark/db';
import type { Writing } from '../command/run-command.ts';
import { notFoundHere, refuse } from '../refused.ts';
import { stale } from '../stale.ts';

/**
 * The item as it stands, if it may be changed from `baseRevision`.
 *
 * @throws Refused `notFound`, `removed` or `conflict`
 */
export async function standingItem(
  { tx, garage }: Writing,
  itemId: string,
  baseRevision: number,
): Promise<ItemRow> {
  const row = await readItem(tx, garage.id, itemId);
  if (!row) throw notFoundHere('service item', 'itemId');
  if (row.removedAt)
    throw refuse(
      'removed',
      'itemId',
      'This item was removed and stays so; what you wrote is still in the form. Add it as a new one.',
    );
  if (row.revision !== baseRevision)
    throw await stale(tx, garage.id, 'The item was', baseRevision, row);
  return row;
}
