import { addDays, instantAt, startOfDay, todayIn } from '@quartermark/engine/calendar';

/** A garage's clock: where it stands, and when its letter is to be there. */
export type GarageClock = {
  /** IANA name */
  zone: string;
  /** minute of the day at which the letter leaves, 0 to 1439 */
  sendMinute: number;
};

/** 06:00: read before the first key is turned. */
export const SEND_MINUTE_USUAL = 360;

/** Instants are epoch milliseconds, dates civil. */
export type Night = {
  /** the date of the letter: today in the garage's zone */
  date: string;
  /** dates before it without a letter, which this one makes up for; the oldest first */
  missed: string[];
  /** when it may leave: at the garage's hour, or at once where that has passed */
  sendAt: number;
};

/**
 * Whether a letter is to be composed now, and for which date. A date that has had its letter (or was silent)
 * never gets a second one, in whichever zone: after a move to the west the garage waits until its date is a
 * new one. Nights nobody composed in are made up for once, by one letter of today.
 *
 * @param now epoch milliseconds
 * @param last the latest date that had its letter, null: none yet
 * @example nightDue(Date.UTC(2026, 5, 15, 0, 5), '2026-06-14', { zone: 'Etc/UTC', sendMinute: 360 })
 * // { date: '2026-06-15', missed: [], sendAt: Date.UTC(2026, 5, 15, 6) }
 */
export function nightDue(now: number, last: string | null, clock: GarageClock): Night | null {
  const date = todayIn(now, clock.zone);
  if (last !== null && date <= last) return null;
  const missed: string[] = [];
  if (last !== null)
    for (let day = addDays(last, 1); day < date; day = addDays(day, 1)) missed.push(day);
  return { date, missed, sendAt: Math.max(now, sendsAt(date, clock)) };
}

/**
 * The instant from which the next letter is to be composed: the garage's own midnight after the last one.
 * It may lie in the past.
 *
 * @param last the latest date that had its letter
 */
export function nextComposeAt(last: string, zone: string): number {
  return startOfDay(addDays(last, 1), zone);
}

/**
 * The instant at which the letter of a date leaves: at the garage's hour by its clocks. An hour that comes
 * twice is the first of the two, one that is missing is as late as the clocks jump. Never before the date has
 * begun, nor after it is over.
 *
 * @example sendsAt('2026-03-08', { zone: 'America/New_York', sendMinute: 150 }) // 03:30 by its clocks
 */
export function sendsAt(date: string, { zone, sendMinute }: GarageClock): number {
  const start = startOfDay(date, zone);
  const end = startOfDay(addDays(date, 1), zone);
  return Math.max(start, Math.min(instantAt(date, sendMinute, zone), end - 1));
}
