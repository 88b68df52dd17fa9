import { and, eq, inArray } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { photo } from '../schema.ts';

export type NewPhoto = typeof photo.$inferInsert;

/** @returns false if a photo of this id is there already */
export async function insertPhoto(tx: Tx, row: NewPhoto): Promise<boolean> {
  const made = await tx.insert(photo).values(row).onConflictDoNothing().returning({ id: photo.id });
  return made.length === 1;
}

export type Picture = { type: string; bytes: Uint8Array };

/** One picture, in full or small; null if there is none of this id in the garage. */
export async function readPicture(
  tx: Tx,
  garageId: string,
  id: string,
  small: boolean,
): Promise<Picture | null> {
  const [found] = await tx
    .select({ type: photo.type, bytes: small ? photo.small : photo.picture })
    .from(photo)
    .where(and(eq(photo.garageId, garageId), eq(photo.id, id)));
  return found ?? null;
}

/** Width and height in pixels of the large picture; null if there is none of this id in the garage. */
export async function readPhotoSize(
  tx: Tx,
  garageId: string,
  id: string,
): Promise<{ width: number; height: number } | null> {
  const [found] = await tx
    .select({ width: photo.width, height: photo.height })
    .from(photo)
    .where(and(eq(photo.garageId, garageId), eq(photo.id, id)));
  return found ?? null;
}

/** Which of these photos the garage has. */
export async function knownPhotos(
  tx: Tx,
  garageId: string,
  ids: readonly string[],
): Promise<Set<string>> {
  if (ids.length === 0) return new Set();
  const rows = await tx
    .select({ id: photo.id })
    .from(photo)
    .where(and(eq(photo.garageId, garageId), inArray(photo.id, [...ids])));
  return new Set(rows.map(({ id }) => id));
}
