import type { Tx } from '../connect.ts';
import { command } from '../schema.ts';

/** Leaves the answer beside the command, in the transaction that did the work. */
export async function insertCommand(tx: Tx, row: typeof command.$inferInsert): Promise<void> {
  await tx.insert(command).values(row);
}
