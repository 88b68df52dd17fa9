import type { SpecSheet } from '@quartermark/engine/log';
import { and, eq, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { spec } from '../schema.ts';

export type SpecRow = typeof spec.$inferSelect;

/** A car's spec sheet; null while nobody has written one. */
export async function readSpec(tx: Tx, garageId: string, carId: string): Promise<SpecRow | null> {
  const [found] = await tx
    .select()
    .from(spec)
    .where(and(eq(spec.garageId, garageId), eq(spec.carId, carId)));
  return found ?? null;
}

export type SpecChange = {
  garageId: string;
  carId: string;
  /** 0 for the first sheet */
  baseRevision: number;
  body: SpecSheet;
  at: Date;
  by: string;
};

/** @returns the new revision; null if the sheet is past `baseRevision` */
export async function changeSpec(tx: Tx, change: SpecChange): Promise<number | null> {
  const { garageId, carId, baseRevision, body, at, by } = change;
  const changed = { body, changedAt: at, changedBy: by };
  if (baseRevision === 0) {
    const made = await tx
      .insert(spec)
      .values({ garageId, carId, ...changed })
      .onConflictDoNothing()
      .returning({ revision: spec.revision });
    return made[0]?.revision ?? null;
  }
  const [row] = await tx
    .update(spec)
    .set({ ...changed, revision: sql`${spec.revision} + 1` })
    .where(and(eq(spec.garageId, garageId), eq(spec.carId, carId), eq(spec.revision, baseRevision)))
    .returning({ revision: spec.revision });
  return row?.revision ?? null;
}
