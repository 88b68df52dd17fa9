import { createHash } from 'node:crypto';
import { findSecretKey, NotYours, withGarage } from '@quartermark/db';
import type { World } from '../world.ts';
import { calendarOf } from './calendar-of.ts';
import { feedPace } from './pace.ts';

/** One for the process, since its connections are. */
const pace = feedPace();
const WAIT_S = 60;

/**
 * Gives a member's calendar of a garage to whoever has its address. What is not there, was revoked, or belongs to
 * somebody who is no member any more is told apart by nobody. The address is written nowhere.
 *
 * @param name last part of the address: the secret and ".ics"
 * @param origin which the entries' links begin with
 */
export async function answerFeed(
  world: World,
  request: Request,
  name: string,
  origin: string,
): Promise<Response> {
  try {
    const secret = /^(.+)\.ics$/.exec(name)?.[1] ?? '';
    const key = await findSecretKey(world.db, 'feed', secret);
    if (!key) return nowhere();
    const wait = pace.mayAsk(key.subjectId, world.clock.now());
    if (wait !== null) return later(429, wait);
    const { garageId, userId } = key;
    const told = await pace.inTurn(async () => ({
      text: await withGarage(world.db, { kind: 'user', userId }, garageId, (tx) =>
        calendarOf(world, tx, key, origin),
      ),
    }));
    if (told === null) return later(503, WAIT_S);
    return told.text === null ? nowhere() : given(request, told.text);
  } catch (error) {
    if (error instanceof NotYours) return nowhere();
    world.log.error({ err: error }, 'a calendar could not be given');
    return plain(500, 'The calendar could not be read; try again later.\n');
  }
}

/** Kept by whoever asked alone, and asked for anew each time: it may have ended. */
const KEPT = { 'cache-control': 'private, no-cache' };

function given(request: Request, text: string): Response {
  const etag = `"${createHash('sha256').update(text).digest('base64url')}"`;
  const known = (request.headers.get('if-none-match') ?? '').split(',').map((one) => one.trim());
  // weak comparison (RFC 9110, section 13.1.2)
  if (known.some((one) => one === '*' || one.replace(/^W\//, '') === etag))
    return new Response(null, { status: 304, headers: { ...KEPT, etag } });
  const headers = { ...KEPT, etag, 'content-type': 'text/calendar; charset=utf-8' };
  return new Response(text, { headers });
}

const nowhere = () => plain(404, 'There is no calendar at this address.\n');

const later = (status: 429 | 503, seconds: number) =>
  plain(status, `Calendars are asked for too often; ask again in ${seconds} s.\n`, {
    'retry-after': String(seconds),
  });

function plain(status: number, text: string, more: Record<string, string> = {}): Response {
  const headers = { 'content-type': 'text/plain; charset=utf-8', 'cache-control': 'no-store' };
  return new Response(text, { status, headers: { ...headers, ...more } });
}
