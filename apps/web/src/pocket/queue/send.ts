import type { EntryView, Refusal, Written } from '@quartermark/api/client';
import { refusalWords } from '../../client/refusal-words.ts';
import { arrivedOtherwise } from './arrived-otherwise.ts';
import { type Command, isTick, type WaitingPhoto } from './command.ts';
import {
  markPhotoSent,
  markRefused,
  markSending,
  markWaited,
  markWaiting,
  nextInLine,
  photosOf,
  settle,
} from './line.ts';
import type { PocketDb } from './store.ts';

/** The ways to the server. Each throws what the tRPC client throws. */
export type Doors = {
  /** Throws where the server cannot be reached: known before anything is asked, nothing is in doubt. */
  knock: () => Promise<void>;
  /** @param queued it is sent later than it was made, so nobody is there to be asked */
  command: (command: Command, queued: boolean) => Promise<Written>;
  entry: (where: { garageId: string; entryId: string }) => Promise<EntryView>;
  photo: (photo: WaitingPhoto) => Promise<void>;
};

/** How a pass through the line ended. */
export type PassEnd = 'allSent' | 'noSignal' | 'signedOut';

/** Sent longer after its making than this, a command counts as one that waited. */
const AT_ONCE_MS = 5_000;
/** After so many answers that the server failed, a command stays for the person to decide. */
const TRIES_MAX = 5;

type Outcome =
  | { kind: 'done'; written: Written }
  | { kind: 'refused'; refusal: Refusal }
  | { kind: 'failed'; message: string }
  | { kind: 'noAnswer' };

/**
 * Goes through the line once, in the order of making, one after the other, the photos of an entry before
 * the entry. Stops where no answer comes; a refused one stays behind, and what concerns others goes
 * on.
 *
 * @param nowMs this phone's clock
 * @param changed told after each step, so that screens follow
 */
export async function sendLine(
  db: PocketDb,
  doors: Doors,
  nowMs: () => number,
  changed: () => void = () => {},
): Promise<PassEnd> {
  const end = await throughTheLine(db, doors, nowMs, changed);
  if (end !== 'allSent') await markWaited(db);
  return end;
}

async function throughTheLine(
  db: PocketDb,
  doors: Doors,
  nowMs: () => number,
  changed: () => void,
): Promise<PassEnd> {
  let passedOver = false;
  let after = Number.NEGATIVE_INFINITY;
  for (;;) {
    const command = await nextInLine(db, after);
    if (command === null) return passedOver ? 'noSignal' : 'allSent';
    // once a pass: what was never asked for can still be taken back without a trace
    if (after === Number.NEGATIVE_INFINITY && !(await answers(doors))) return 'noSignal';
    after = command.order;
    const end = await sendOne(db, doors, command, nowMs());
    changed();
    if (end === 'signedOut' || end === 'noSignal') return end;
    if (end === 'passOver') passedOver = true;
  }
}

const answers = ({ knock }: Doors) =>
  knock().then(
    () => true,
    () => false,
  );

async function sendOne(
  db: PocketDb,
  doors: Doors,
  command: Command,
  nowMs: number,
): Promise<'next' | 'passOver' | 'signedOut' | 'noSignal'> {
  const { order } = command;
  const late = Math.abs(nowMs - Date.parse(command.madeAt)) > AT_ONCE_MS;
  const queued = command.waited || command.tries > 0 || late;
  const marked = await markSending(db, order);
  // another tab has settled it
  if (marked === null) return 'next';
  const outcome = await attempt(db, doors, marked, queued);
  switch (outcome.kind) {
    case 'done':
      await settle(db, order, outcome.written);
      return 'next';
    case 'refused':
      if (outcome.refusal.code === 'signedOut') {
        await markWaiting(db, order);
        return 'signedOut';
      }
      await markRefused(db, order, outcome.refusal);
      return 'next';
    case 'failed':
      if (marked.tries < TRIES_MAX) {
        await markWaiting(db, order);
        return 'passOver';
      }
      await markRefused(db, order, { code: 'serverFailed', field: null, message: outcome.message });
      return 'next';
    case 'noAnswer':
      await markWaiting(db, order);
      return 'noSignal';
  }
}

async function attempt(
  db: PocketDb,
  doors: Doors,
  command: Command,
  queued: boolean,
): Promise<Outcome> {
  try {
    await sendPhotos(db, doors, command);
    return { kind: 'done', written: await doors.command(command, queued) };
  } catch (error) {
    const outcome = outcomeOf(error);
    const { kind } = outcome;
    if (kind !== 'refused' || outcome.refusal.code !== 'idInUse' || command.verb !== 'entry.record')
      return outcome;
    return arrivedOtherwise(doors, command, outcome.refusal).then(
      (written): Outcome => ({ kind: 'done', written }),
      outcomeOf,
    );
  }
}

async function sendPhotos(db: PocketDb, doors: Doors, command: Command): Promise<void> {
  if (isTick(command) || command.verb === 'entry.remove') return;
  for (const photo of await photosOf(db, command.entryId)) {
    if (photo.sent) continue;
    await doors.photo(photo);
    await markPhotoSent(db, photo.photoId);
  }
}

function outcomeOf(error: unknown): Outcome {
  const { refusal, message } = refusalWords(error);
  if (refusal) return { kind: 'refused', refusal };
  const answered = typeof error === 'object' && error !== null && 'data' in error && error.data;
  return answered ? { kind: 'failed', message } : { kind: 'noAnswer' };
}
