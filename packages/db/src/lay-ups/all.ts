import { and, asc, eq, gte, isNull, or } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { layUp } from '../schema.ts';
import type { LayUpRow } from './list.ts';

/** Storage windows of all cars that end on a day or later, open ones among them, earliest first. */
export function listLayUpsSince(tx: Tx, garageId: string, since: string): Promise<LayUpRow[]> {
  return tx
    .select()
    .from(layUp)
    .where(
      and(
        eq(layUp.garageId, garageId),
        isNull(layUp.removedAt),
        or(isNull(layUp.endOn), gte(layUp.endOn, since)),
      ),
    )
    .orderBy(asc(layUp.startOn), asc(layUp.id));
}
