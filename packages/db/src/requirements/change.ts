import type { ReadyFor, Requirements } from '@quartermark/engine/log';
import { and, eq, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { requirementSet } from '../readiness-schema.ts';

export type RequirementsChange = {
  garageId: string;
  use: ReadyFor;
  /** 0 where the garage never had its own */
  baseRevision: number;
  /** null: the usual ones again */
  body: Requirements | null;
  at: Date;
  by: string;
};

/** @returns the new revision; null if they are past `baseRevision` */
export async function changeRequirements(
  tx: Tx,
  change: RequirementsChange,
): Promise<number | null> {
  const { garageId, use, baseRevision, body, at, by } = change;
  const changed = { body, changedAt: at, changedBy: by };
  if (baseRevision === 0) {
    const made = await tx
      .insert(requirementSet)
      .values({ garageId, use, ...changed })
      .onConflictDoNothing()
      .returning({ revision: requirementSet.revision });
    return made[0]?.revision ?? null;
  }
  const [row] = await tx
    .update(requirementSet)
    .set({ ...changed, revision: sql`${requirementSet.revision} + 1` })
    .where(
      and(
        eq(requirementSet.garageId, garageId),
        eq(requirementSet.use, use),
        eq(requirementSet.revision, baseRevision),
      ),
    )
    .returning({ revision: requirementSet.revision });
  return row?.revision ?? null;
}
