import { and, eq } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { command } from '../schema.ts';

export type CommandRow = typeof command.$inferSelect;

/** What was asked under this id and what was answered; null if nothing was. */
export async function findCommand(
  tx: Tx,
  garageId: string,
  commandId: string,
): Promise<CommandRow | null> {
  const [found] = await tx
    .select()
    .from(command)
    .where(and(eq(command.garageId, garageId), eq(command.commandId, commandId)));
  return found ?? null;
}
