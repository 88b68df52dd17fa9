import { todayIn } from '@quartermark/engine/calendar';

/** Off by more than this, a phone's clock is worth a sentence. */
const WORTH_SAYING_MS = 10 * 60_000;
const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
const DAY_MS = 24 * HOUR_MS;

/** Civil day and minute of an instant in a zone. @example momentIn(Date.UTC(2026, 5, 15, 9), 'Europe/London') // { on: '2026-06-15', time: '10:00' } */
export function momentIn(epochMs: number, zone: string): { on: string; time: string } {
  const time = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).format(epochMs);
  return { on: todayIn(epochMs, zone), time };
}

/**
 * How far the garage's clock is ahead of this phone's, in whole milliseconds.
 *
 * @param at the server's instant, ISO
 * @param askedMs and `answeredMs` the phone's clock before and after; the answer was made between them
 */
export function clockAhead(at: string, askedMs: number, answeredMs: number): number {
  return Math.round(Date.parse(at) - (askedMs + answeredMs) / 2);
}

/**
 * What to say of a phone whose clock is off; null where it is not worth a sentence.
 *
 * @example clockWords(-86_400_000) // "This phone’s clock is a day ahead; entries carry the garage’s day and time."
 */
export function clockWords(aheadMs: number): string | null {
  const off = Math.abs(aheadMs);
  if (off <= WORTH_SAYING_MS) return null;
  // the garage ahead of the phone: the phone is behind
  const side = aheadMs > 0 ? 'behind' : 'ahead';
  return `This phone’s clock is ${lengthWords(off)} ${side}; entries carry the garage’s day and time.`;
}

function lengthWords(ms: number): string {
  if (ms < HOUR_MS) return `${Math.round(ms / MINUTE_MS)} minutes`;
  if (ms < DAY_MS - HOUR_MS / 2) return counted(Math.round(ms / HOUR_MS), 'an hour', 'hours');
  return counted(Math.round(ms / DAY_MS), 'a day', 'days');
}

const counted = (count: number, one: string, many: string) =>
  count === 1 ? one : `${count} ${many}`;
