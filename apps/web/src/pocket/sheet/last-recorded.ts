import { type PocketDb, pocketDb } from '../queue/store.ts';

const keyOf = (garageId: string) => `recorded:${garageId}`;

/** Notes that something was recorded for a garage on this phone, now by its own clock. */
export async function noteRecorded(garageId: string): Promise<void> {
  try {
    await (await pocketDb()).put('kept', Date.now(), keyOf(garageId));
  } catch {
    // a browser that keeps nothing keeps no sheet either, so nothing can be older
  }
}

/** When something was last recorded on this phone for a garage, in milliseconds; null: never. */
export async function lastRecorded(db: PocketDb, garageId: string): Promise<number | null> {
  // written by `noteRecorded` alone
  return ((await db.get('kept', keyOf(garageId))) as number | undefined) ?? null;
}
