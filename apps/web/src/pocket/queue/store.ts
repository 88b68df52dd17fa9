import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Command, WaitingPhoto } from './command.ts';

/** What this browser keeps for the paddock. */
interface Pocket extends DBSchema {
  commands: { key: number; value: Command; indexes: { entryId: string } };
  photos: { key: string; value: WaitingPhoto; indexes: { entryId: string } };
  /** the sheet and the small things that are remembered */
  kept: { key: string; value: unknown };
}

export type PocketDb = IDBPDatabase<Pocket>;

const NAME = 'quartermark-pocket';
const VERSION = 1;

let opened: Promise<PocketDb> | null = null;

/**
 * The store of this browser, opened once. A failed opening is tried again at the next call: storage may
 * have been switched on since.
 *
 * @throws what IndexedDB threw; see `storeTrouble`
 */
export function pocketDb(): Promise<PocketDb> {
  opened ??= openPocket().catch((error: unknown) => {
    opened = null;
    throw error;
  });
  return opened;
}

/** @param name of the database; tests have one each */
export async function openPocket(name = NAME): Promise<PocketDb> {
  const db = await openDB<Pocket>(name, VERSION, {
    upgrade(made) {
      const commands = made.createObjectStore('commands', {
        keyPath: 'order',
        autoIncrement: true,
      });
      commands.createIndex('entryId', 'entryId');
      const photos = made.createObjectStore('photos', { keyPath: 'photoId' });
      photos.createIndex('entryId', 'entryId');
      made.createObjectStore('kept');
    },
    // a newer version in another tab must not wait for this one; the next call opens it anew
    blocking() {
      db.close();
      opened = null;
    },
    terminated() {
      opened = null;
    },
  });
  return db;
}

const FULL =
  'Not saved: this phone has no room left for pages. What you entered is still here. Free some room, or ' +
  'find signal, then press again.';
const CLOSED =
  'Not saved: this browser keeps nothing for pages (a private window, or storage is switched off). What ' +
  'you entered is still here. With signal, press again; without, write it on paper.';

/** Why nothing could be kept, in words that say what to do. */
export function storeTrouble(error: unknown): string {
  const name = error instanceof Error ? error.name : '';
  return name === 'QuotaExceededError' ? FULL : CLOSED;
}
