import { randomUUID } from 'node:crypto';
import {
  carsBehindDay,
  complainTo,
  type GarageTonight,
  garageTonight,
  insertDigest,
  type LetterReader,
  lastSaid,
  letterReaders,
  lockLetterDay,
  type PostSettingRow,
  readGarage,
  readPost,
  setLetterDay,
  type Tx,
  tonightOf,
  withGarage,
} from '@quartermark/db';
import { compose, type Letter, type Said } from '@quartermark/digest';
import {
  type Night,
  nextComposeAt,
  nightDue,
  SEND_MINUTE_USUAL,
  sendsAt,
} from '@quartermark/digest/hours';
import { todayIn } from '@quartermark/engine/calendar';
import type { Shop } from '../shop.ts';
import { storeLetters } from './store-letters.ts';

const JOB = { kind: 'job' } as const;

/** A letter with whose it is. */
export type OwnLetter = { reader: LetterReader; letter: Letter };

/** What is written of a garage's night. */
export type Composed = {
  garageId: string;
  name: string;
  /** nothing leaves the house of a demo garage */
  demo: boolean;
  night: Night;
  letters: OwnLetter[];
  post: PostSettingRow | null;
};

type Seen = Omit<Composed, 'letters' | 'night'> & {
  zone: string;
  letterDate: string | null;
  /** cars that can be worked out and do not stand in the present day yet */
  behind: number;
};

/**
 * Composes the letters of one garage for its present civil date, once: the digest's row is inserted with them in one
 * transaction, and whoever comes second finds it. Before the cars stand in their new day it waits, but no longer
 * than until the letter's hour: then what is not worked out yet is told as that. Only the first letter of a garage
 * waits longer: its cars have just been added.
 */
export async function composeGarage(shop: Shop, garageId: string): Promise<void> {
  const { db, clock } = shop;
  const now = clock.now();
  const seen = await look(shop, garageId);
  if (seen === null) return;
  const { zone, letterDate, behind, post } = seen;
  const hours = { zone, sendMinute: post?.sendMinute ?? SEND_MINUTE_USUAL };
  const night = nightDue(now.getTime(), letterDate, hours);
  if (night === null) {
    // only where a date has had its letters is there none to compose now
    const composeAt = new Date(nextComposeAt(letterDate ?? '', zone));
    await withGarage(db, JOB, garageId, async (tx) => {
      const day = await lockLetterDay(tx, garageId);
      if (day?.letterDate === letterDate && day.zone === zone)
        await setLetterDay(tx, garageId, { letterDate, composeAt });
    });
    return;
  }
  const mayWait = letterDate === null || now.getTime() < sendsAt(night.date, hours);
  if (behind > 0 && mayWait) return;
  const letters = await lettersOf(shop, garageId, night.date);
  await store(shop, { ...seen, night, letters }, seen);
}

/** What decides whether there are letters to compose; null: there is no such garage, or it has no day yet. */
async function look({ db, clock }: Shop, garageId: string): Promise<Seen | null> {
  return withGarage(db, JOB, garageId, async (tx) => {
    const [row, day, post] = await Promise.all([
      readGarage(tx, garageId),
      lockLetterDay(tx, garageId),
      readPost(tx, garageId),
    ]);
    if (row === null || day === null) return null;
    const { zone, letterDate } = day;
    const { due } = await carsBehindDay(tx, garageId, todayIn(clock.now(), zone));
    const behind = due.length;
    return { garageId, name: row.name, demo: row.demo, post, zone, letterDate, behind };
  });
}

async function lettersOf(shop: Shop, garageId: string, date: string): Promise<OwnLetter[]> {
  const read = await withGarage(shop.db, JOB, garageId, (tx) => readAll(shop, tx, garageId, date), {
    isolation: 'repeatable read',
    readOnly: true,
  });
  if (read === null) return [];
  const { tonight, readers, last } = read;
  return readers.flatMap((reader) => {
    const letter = compose(tonightOf(tonight, reader, last.get(reader.userId) ?? []));
    return letter === null ? [] : [{ reader, letter }];
  });
}

type Read = { tonight: GarageTonight; readers: LetterReader[]; last: Map<string, Said[]> };

async function readAll(
  { log }: Shop,
  tx: Tx,
  garageId: string,
  date: string,
): Promise<Read | null> {
  const row = await readGarage(tx, garageId);
  if (row === null) return null;
  const [readers, last] = await Promise.all([letterReaders(tx, garageId), lastSaid(tx, garageId)]);
  return { tonight: await garageTonight(tx, row, date, complainTo(log)), readers, last };
}

async function store(shop: Shop, composed: Composed, seen: Seen): Promise<void> {
  const { db, clock, reached, log, origin } = shop;
  const { garageId, night, letters } = composed;
  const stored = await withGarage(db, JOB, garageId, async (tx) => {
    const day = await lockLetterDay(tx, garageId);
    // moved to another zone, or composed by somebody else meanwhile
    if (day === null || day.zone !== seen.zone || day.letterDate !== seen.letterDate) return false;
    const now = clock.now();
    const made = await insertDigest(tx, {
      garageId,
      date: night.date,
      composedAt: now,
      sendAt: new Date(night.sendAt),
      missed: night.missed.length,
    });
    if (made) await storeLetters(tx, composed, { origin, now, newId: randomUUID });
    const composeAt = new Date(nextComposeAt(night.date, seen.zone));
    await setLetterDay(tx, garageId, { letterDate: night.date, composeAt });
    await reached('composed');
    return made;
  });
  if (stored) log.debug({ garageId, date: night.date, letters: letters.length }, 'composed');
}
