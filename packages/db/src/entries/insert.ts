import type { EntryInput } from '@quartermark/engine/log';
import type { Tx } from '../connect.ts';
import { entry, entryRevision } from '../schema.ts';
import { gearIdOf } from './gear-id-of.ts';
import type { EntryRow } from './read.ts';

export type NewEntry = {
  garageId: string;
  /** the whole entry; its id, day, kind and car become columns */
  body: EntryInput;
  /** from `nextRecorded` */
  recorded: number;
  at: Date;
  by: string;
  commandId: string;
};

/** @returns the row; null if the id is in use in this garage, by a tombstone too */
export async function insertEntry(tx: Tx, added: NewEntry): Promise<EntryRow | null> {
  const { garageId, body, recorded, at, by, commandId } = added;
  const [row] = await tx
    .insert(entry)
    .values({
      garageId,
      id: body.id,
      carId: body.car ?? null,
      gearId: gearIdOf(body),
      recorded,
      on: body.on,
      kind: body.kind,
      body,
      recordedAt: at,
      recordedBy: by,
    })
    .onConflictDoNothing({ target: [entry.garageId, entry.id] })
    .returning();
  if (!row) return null;
  await tx
    .insert(entryRevision)
    .values({ garageId, entryId: row.id, revision: 1, body, at, by, commandId });
  return row;
}
