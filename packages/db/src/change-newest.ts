import { and, eq, sql } from 'drizzle-orm';
import type { PgColumn, PgTable } from 'drizzle-orm/pg-core';
import type { Tx } from './connect.ts';

/** Who changes something, when, and on top of which revision. */
export type Change = {
  garageId: string;
  /** 0: there was nothing before */
  baseRevision: number;
  at: Date;
  by: string;
};

type Newest = PgTable & { revision: PgColumn };

/**
 * Writes something of which only the newest form is kept.
 *
 * @param key columns of the table that name the row
 * @param set columns to be written; what is left out stays as it is
 * @returns the new revision; null if the row is past `baseRevision`
 */
export async function changeNewest<T extends Newest>(
  tx: Tx,
  table: T,
  key: Partial<T['$inferInsert']>,
  { baseRevision, at, by }: Change,
  set: Partial<T['$inferInsert']>,
): Promise<number | null> {
  const columns = table as unknown as Record<string, PgColumn>;
  const changed = { ...set, changedAt: at, changedBy: by };
  const revision = { revision: table.revision };
  if (baseRevision === 0) {
    const made = await tx
      .insert<PgTable>(table)
      .values({ ...key, ...changed })
      .onConflictDoNothing()
      .returning(revision);
    return revisionOf(made);
  }
  const same = Object.entries(key).map(([name, value]) => eq(columns[name] as PgColumn, value));
  const made = await tx
    .update<PgTable>(table)
    .set({ ...changed, revision: sql`${table.revision} + 1` })
    .where(and(...same, eq(table.revision, baseRevision)))
    .returning(revision);
  return revisionOf(made);
}

const revisionOf = ([row]: readonly { revision: unknown }[]) =>
  row === undefined ? null : Number(row.revision);
