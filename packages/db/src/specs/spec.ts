import type { SpecSheet } from '@quartermark/engine/log';
import { and, eq } from 'drizzle-orm';
import { type Change, changeNewest } from '../change-newest.ts';
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

export type SpecChange = Change & { carId: string; body: SpecSheet };

/** @returns the new revision; null if the sheet is past `baseRevision` (0: there was none) */
export function changeSpec(tx: Tx, change: SpecChange): Promise<number | null> {
  const { garageId, carId, body } = change;
  return changeNewest(tx, spec, { garageId, carId }, change, { body });
}
