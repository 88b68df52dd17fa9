import { type ReadyFor, type Requirements, requirements } from '@quartermark/engine/log';
import { and, asc, eq } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { requirementSet } from '../readiness-schema.ts';

export type RequirementsRow = typeof requirementSet.$inferSelect;

/** What the garage asks in place of the usual, and uses whose own were taken back (`body` null). */
export function listRequirements(tx: Tx, garageId: string): Promise<RequirementsRow[]> {
  return tx
    .select()
    .from(requirementSet)
    .where(eq(requirementSet.garageId, garageId))
    .orderBy(asc(requirementSet.use));
}

export async function readRequirements(
  tx: Tx,
  garageId: string,
  use: ReadyFor,
): Promise<RequirementsRow | null> {
  const [found] = await tx
    .select()
    .from(requirementSet)
    .where(and(eq(requirementSet.garageId, garageId), eq(requirementSet.use, use)));
  return found ?? null;
}

/**
 * What a garage asks; null: the usual.
 *
 * @throws Error where it cannot be read: to ask the usual instead could ask less
 */
export function requirementsOf(row: RequirementsRow | null): Requirements | null {
  if (row === null || row.body === null) return null;
  const parsed = requirements.safeParse(row.body);
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  throw new Error(
    `could not read what garage ${row.garageId} asks for ${row.use}: ${issue?.path.map(String).join('.') ?? ''}: ${issue?.message ?? 'unreadable'}; write it anew in the settings`,
  );
}
