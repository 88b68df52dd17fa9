import {
  complainTo,
  garageTonight,
  lastLetterDate,
  lastSaid,
  letterReaders,
  readGarage,
  readPostShown,
  type Tx,
  tonightOf,
} from '@quartermark/db';
import {
  compose,
  htmlPart,
  isLetterDay,
  isPaused,
  type LetterWish,
  linkAddress,
} from '@quartermark/digest';
import { nightDue, SEND_MINUTE_USUAL, sendsAt } from '@quartermark/digest/hours';
import { addDays } from '@quartermark/engine/calendar';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { garageViewOf } from '../garage/view-of.ts';
import type { TonightView } from '../letter-views.ts';
import { notFoundHere } from '../refused.ts';
import type { Asker, World } from '../world.ts';

export const letterTonightInput = z.strictObject({ garageId: id });

/** The asker's next letter as it would be if it were composed now, by what is on record now. Writes nothing. */
export function letterTonight(
  world: World,
  asker: Asker,
  { garageId }: z.output<typeof letterTonightInput>,
): Promise<TonightView> {
  return inGarage(world, asker, garageId, (tx) => tonight(world, tx, garageId, asker.userId), {
    isolation: 'repeatable read',
    readOnly: true,
  });
}

async function tonight(world: World, tx: Tx, garageId: string, userId: string) {
  const row = await readGarage(tx, garageId);
  if (!row) throw notFoundHere('garage', 'garageId');
  const now = world.clock.now();
  const garage = garageViewOf(row, now);
  const { today, zone } = garage;
  const [[reader], said, done, post] = await Promise.all([
    letterReaders(tx, garageId, userId),
    lastSaid(tx, garageId),
    lastLetterDate(tx, garageId),
    readPostShown(tx, garageId),
  ]);
  if (!reader) throw notFoundHere('garage', 'garageId');
  const clock = { zone, sendMinute: post?.sendMinute ?? SEND_MINUTE_USUAL };
  const night = nightDue(now.getTime(), done, clock);
  // what is known now, told on the day of the letter
  const date = night?.date ?? addDays(done ?? today, 1);
  const all = { ...(await garageTonight(tx, row, today, complainTo(world.log))), today: date };
  const letter = compose(tonightOf(all, reader, said.get(userId) ?? []));
  const leaves = sendsAt(date, clock);
  const shared = {
    garage,
    date,
    composed: night === null,
    sendsAt: leaves > now.getTime() ? new Date(leaves).toISOString() : null,
  };
  if (letter === null)
    return { ...shared, letter, html: null, why: whyNone(reader.wish, date) } satisfies TonightView;
  const { said: _said, ...shown } = letter;
  const html = htmlPart(letter, linkAddress(ORIGIN_SHOWN, garageId));
  return { ...shared, letter: shown, html, why: null } satisfies TonightView;
}

/** A preview's links are not followed out of it. */
const ORIGIN_SHOWN = 'https://garage.invalid';

function whyNone(wish: LetterWish, date: string): NonNullable<TonightView['why']> {
  if (isPaused(wish.pausedUntil, date)) return 'paused';
  return isLetterDay(wish, date) ? 'silent' : 'notTonight';
}
