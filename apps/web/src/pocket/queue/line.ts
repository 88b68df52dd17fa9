import type { Written } from '@quartermark/api/client';
import type { EntryInput } from '@quartermark/engine/log';
import { rememberSent } from '../sheet/sent-ticks.ts';
import {
  type Command,
  concernOf,
  type EntryCommand,
  isStuck,
  isTick,
  type NewCommand,
  type NewEntryCommand,
  type NewPhoto,
  type WaitingPhoto,
  type WhyStuck,
} from './command.ts';
import type { PocketDb } from './store.ts';

/** The commands that wait, in the order of making. */
export function listCommands(db: PocketDb): Promise<Command[]> {
  return db.getAll('commands');
}

export function photosOf(db: PocketDb, entryId: string): Promise<WaitingPhoto[]> {
  return db.getAllFromIndex('photos', 'entryId', entryId);
}

/**
 * Writes a command and its photos down, all of it or nothing. Only when this has come back may anybody
 * be told that it is saved.
 *
 * @throws what IndexedDB threw, such as a QuotaExceededError
 */
export async function putInLine(
  db: PocketDb,
  asked: NewCommand,
  photos: readonly NewPhoto[] = [],
): Promise<Command> {
  const entry = isTick(asked) ? null : asked.input.entry;
  const command = {
    ...asked,
    ...(entry && { entryId: entry.id }),
    state: 'waiting' as const,
    tries: asked.mayBeDone ? 1 : 0,
    mayBeDone: asked.mayBeDone ?? false,
    waited: asked.mayBeDone ?? false,
    refusal: null,
  };
  const tx = db.transaction(['commands', 'photos'], 'readwrite', { durability: 'strict' });
  const { garageId } = asked;
  try {
    // the store gives the place in the line
    const order = await tx.objectStore('commands').add(command as unknown as Command);
    const kept = tx.objectStore('photos');
    if (entry !== null) {
      const entryId = entry.id;
      for (const photo of photos) await kept.put({ ...photo, garageId, entryId, sent: false });
      // those that were laid aside while the entry was being written
      for (const photoId of entry.photos ?? []) {
        const aside = await kept.get(photoId);
        if (aside?.entryId === ASIDE) await kept.put({ ...aside, entryId });
      }
    }
    await tx.done;
    return { ...command, order } as Command;
  } catch (error) {
    giveUp(tx);
    throw error;
  }
}

/** Of a photo whose entry is still being written. */
const ASIDE = '';
/** A form that was left so long ago is not come back to. */
const ASIDE_MAX_MS = 7 * 86_400_000;

/**
 * Keeps a photo until its entry is put in line; drops what was laid aside long ago and never saved.
 *
 * @throws what IndexedDB threw
 */
export async function layAside(
  db: PocketDb,
  photo: NewPhoto & { garageId: string },
  nowMs: number,
): Promise<void> {
  const tx = db.transaction('photos', 'readwrite', { durability: 'strict' });
  try {
    for (const photoId of await tx.store.index('entryId').getAllKeys(ASIDE))
      if (nowMs - madeMs(photoId) > ASIDE_MAX_MS) await tx.store.delete(photoId);
    await tx.store.put({ ...photo, entryId: ASIDE, sent: false });
    await tx.done;
  } catch (error) {
    giveUp(tx);
    throw error;
  }
}

/** When an id of ours was made: the first 48 bits of a UUID of version 7 (RFC 9562, 5.7). */
const madeMs = (id: string) => Number.parseInt(id.replaceAll('-', '').slice(0, 12), 16);

/** Lets nothing of a transaction stand; it may have ended by itself already. */
function giveUp(tx: { abort: () => void; done: Promise<void> }): void {
  tx.done.catch(() => {});
  try {
    tx.abort();
  } catch {
    // it was over, so that nothing of it stands
  }
}

/**
 * The next one to be sent: the first after `after` that waits and has nothing before it about the same
 * thing that is stuck or was passed over.
 */
export async function nextInLine(db: PocketDb, after: number): Promise<Command | null> {
  const held = new Set<string>();
  for (const command of await listCommands(db)) {
    const concern = concernOf(command);
    if (command.order > after && !isStuck(command) && !held.has(concern)) return command;
    // what was not sent holds what comes later about the same thing
    held.add(concern);
  }
  return null;
}

/** Changes one command where it still stands; null where it has gone meanwhile. */
async function change(
  db: PocketDb,
  order: number,
  how: (command: Command) => Command,
): Promise<Command | null> {
  const tx = db.transaction('commands', 'readwrite', { durability: 'strict' });
  const found = await tx.store.get(order);
  const changed = found ? how(found) : null;
  if (changed) await tx.store.put(changed);
  await tx.done;
  return changed;
}

/** Notes, before the server is asked, that it is asked: from here on the command may be done. */
export const markSending = (db: PocketDb, order: number) =>
  change(db, order, (command) => ({
    ...command,
    state: 'sending',
    tries: command.tries + 1,
    mayBeDone: true,
  }));

/** No answer came, or one that says nothing of the command: it waits on. */
export const markWaiting = (db: PocketDb, order: number) =>
  change(db, order, (command) => ({ ...command, state: 'waiting' }));

/** Notes of everything in the line that it could not be sent when it was made. */
export async function markWaited(db: PocketDb): Promise<void> {
  const tx = db.transaction('commands', 'readwrite');
  for (const command of await tx.store.getAll())
    if (!isStuck(command) && !command.waited) await tx.store.put({ ...command, waited: true });
  await tx.done;
}

/** The server was asked and did not do it. */
export const markRefused = (db: PocketDb, order: number, refusal: WhyStuck) =>
  change(db, order, (command) => ({
    ...command,
    state: refusal.code === 'conflict' ? 'conflict' : 'refused',
    mayBeDone: false,
    refusal,
  }));

/** It is done: it leaves the line with its photos, and the next on the entry rests on its result. */
export async function settle(db: PocketDb, order: number, written: Written): Promise<void> {
  const stores = ['commands', 'photos', 'kept'] as const;
  const tx = db.transaction(stores, 'readwrite', { durability: 'strict' });
  const commands = tx.objectStore('commands');
  const settled = await commands.get(order);
  if (settled) {
    await commands.delete(order);
    if (isTick(settled)) await rememberSent(tx.objectStore('kept'), settled.input.tick);
    else {
      const later = await ofEntry(commands, settled.entryId);
      // the next one only: what comes after it rests on what it makes
      const [next] = later;
      if (next && next.verb !== 'entry.record' && next.input.baseRevision === null)
        await commands.put({
          ...next,
          input: { ...next.input, baseRevision: written.revision },
        } as Command);
      if (later.length === 0) await dropPhotos(tx.objectStore('photos'), settled.entryId);
    }
  }
  await tx.done;
}

type CommandStore = { index(name: 'entryId'): { getAll(entryId: string): Promise<Command[]> } };

/** Only what is about an entry carries an entry's id, so the index holds nothing else. */
async function ofEntry(commands: CommandStore, entryId: string): Promise<EntryCommand[]> {
  const found = await commands.index('entryId').getAll(entryId);
  return found.filter((one): one is EntryCommand => !isTick(one));
}

type PhotoStore = {
  index(name: 'entryId'): { getAllKeys(entryId: string): Promise<string[]> };
  delete(photoId: string): Promise<void>;
};

async function dropPhotos(photos: PhotoStore, entryId: string): Promise<void> {
  for (const photoId of await photos.index('entryId').getAllKeys(entryId))
    await photos.delete(photoId);
}

export async function markPhotoSent(db: PocketDb, photoId: string): Promise<void> {
  const tx = db.transaction('photos', 'readwrite');
  const photo = await tx.store.get(photoId);
  if (photo) await tx.store.put({ ...photo, sent: true });
  await tx.done;
}

/** Takes a command out of the line with what rests on it and its photos; a tick alone. @returns false: it has gone */
export async function takeOut(db: PocketDb, order: number): Promise<boolean> {
  const tx = db.transaction(['commands', 'photos'], 'readwrite', { durability: 'strict' });
  const commands = tx.objectStore('commands');
  const found = await commands.get(order);
  if (found && isTick(found)) await commands.delete(order);
  else if (found) {
    const same = await ofEntry(commands, found.entryId);
    for (const one of same) if (one.order >= order) await commands.delete(one.order);
    const left = same.some((one) => one.order < order);
    if (!left) await dropPhotos(tx.objectStore('photos'), found.entryId);
  }
  await tx.done;
  return found !== undefined;
}

/**
 * Undoes a recording, wherever it is: still in line, it leaves it and was never said to anybody; asked for
 * or done already, a removal follows it.
 *
 * @param undoing the removal, should one be needed; it rests on the first revision
 */
export async function undoRecord(
  db: PocketDb,
  order: number,
  undoing: Pick<NewEntryCommand, 'commandId' | 'garageId' | 'madeAt'> & { entry: EntryInput },
): Promise<'takenOut' | 'removalFollows'> {
  const { entry, ...rest } = undoing;
  const tx = db.transaction(['commands', 'photos'], 'readwrite', { durability: 'strict' });
  const commands = tx.objectStore('commands');
  const found = await commands.get(order);
  const gone = found !== undefined && !found.mayBeDone;
  if (gone) {
    // with what was changed on it since
    for (const key of await commands.index('entryId').getAllKeys(entry.id))
      await commands.delete(key);
    await dropPhotos(tx.objectStore('photos'), entry.id);
  } else {
    const removal = {
      ...rest,
      verb: 'entry.remove',
      input: { entry, baseRevision: found ? null : 1 },
      entryId: entry.id,
      state: 'waiting',
      tries: 0,
      mayBeDone: false,
      waited: false,
      refusal: null,
    };
    await commands.add(removal as unknown as Command);
  }
  await tx.done;
  return gone ? 'takenOut' : 'removalFollows';
}

/** Sends another thing in a command's place: it goes back into the line under a new id. */
export const askInstead = (
  db: PocketDb,
  order: number,
  commandId: string,
  how: (command: Command) => Partial<Command>,
) =>
  change(
    db,
    order,
    (command) =>
      ({
        ...command,
        ...how(command),
        commandId,
        state: 'waiting',
        mayBeDone: false,
        waited: false,
        tries: 0,
        madeAt: new Date().toISOString(),
        refusal: null,
      }) as Command,
  );

/** The entry of a command with something changed in it. */
export function withEntry(command: EntryCommand, entry: EntryInput): Partial<Command> {
  return { entryId: entry.id, input: { ...command.input, entry } } as Partial<Command>;
}
