import { createHash } from 'node:crypto';
import {
  carsTonight,
  findSecretKey,
  listEvents,
  listLayUpsSince,
  listPlannedLayUps,
  NotYours,
  readGarage,
  readPublished,
  type SecretKeyRow,
  standingFeed,
  type Tx,
  withGarage,
  writePublished,
} from '@quartermark/db';
import { type LinkOf, linkAddress } from '@quartermark/digest';
import {
  calendarFeed,
  type FeedCar,
  type FeedOf,
  feedEntries,
  revise,
} from '@quartermark/digest/feed';
import { addDays, todayIn } from '@quartermark/engine/calendar';
import { eventInput } from '@quartermark/engine/log';
import type { World } from '../world.ts';

/** What is over longer stays in nobody's calendar. */
const SINCE_DAYS = 366;

/**
 * Gives a member's calendar of a garage to whoever has its address. What is not there, was revoked, or belongs to
 * somebody who is no member any more is told apart by nobody.
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
  const secret = /^(.+)\.ics$/.exec(name)?.[1] ?? '';
  const key = await findSecretKey(world.db, 'feed', secret);
  const text = key && (await calendarOf(world, key, origin));
  if (text === null) return new Response('There is no calendar at this address.\n', NOT_THERE);
  const tag = `"${createHash('sha256').update(text).digest('base64url')}"`;
  const headers = { etag: tag, 'cache-control': 'private, no-cache' };
  if (request.headers.get('if-none-match') === tag)
    return new Response(null, { status: 304, headers });
  return new Response(text, {
    headers: { ...headers, 'content-type': 'text/calendar; charset=utf-8' },
  });
}

const NOT_THERE = {
  status: 404,
  headers: { 'content-type': 'text/plain; charset=utf-8', 'cache-control': 'no-store' },
};

async function calendarOf(
  world: World,
  { garageId, userId, subjectId }: SecretKeyRow,
  origin: string,
): Promise<string | null> {
  try {
    const actor = { kind: 'user', userId } as const;
    return await withGarage(world.db, actor, garageId, async (tx) => {
      // two fetches at once would each count a change of their own
      const feed = await standingFeed(tx, garageId, userId, { lock: true });
      if (feed?.id !== subjectId) return null;
      const found = await feedOf(world, tx, garageId);
      if (found === null) return null;
      const entries = feedEntries(found.of, linkAddress(origin, garageId) satisfies LinkOf);
      const before = await readPublished(tx, garageId, feed.id);
      const revised = revise(entries, before, world.clock.now().getTime());
      const known = new Map(before.map((one) => [one.uid, one.print]));
      const changed = revised.published.filter(({ uid, print }) => known.get(uid) !== print);
      await writePublished(tx, feed, changed);
      return calendarFeed(found.name, revised.entries);
    });
  } catch (error) {
    if (error instanceof NotYours) return null;
    throw error;
  }
}

async function feedOf(
  world: World,
  tx: Tx,
  garageId: string,
): Promise<{ of: FeedOf; name: string } | null> {
  const row = await readGarage(tx, garageId);
  if (row === null) return null;
  const today = todayIn(world.clock.now(), row.zone);
  const since = addDays(today, -SINCE_DAYS);
  const [layUps, planned, events] = await Promise.all([
    listLayUpsSince(tx, garageId, since),
    listPlannedLayUps(tx, garageId, since),
    listEvents(tx, garageId, since),
  ]);
  const cars: FeedCar[] = [];
  for await (const page of carsTonight(tx, row, today, NO_COMPLAINT, { verdicts: false }))
    for (const { id, name, unit, known } of page)
      cars.push({
        id,
        name,
        unit,
        known,
        layUps: [...layUps, ...planned]
          .filter(({ carId }) => carId === id)
          .map((one) => ({ id: one.id, since: one.startOn, until: one.endOn })),
      });
  const dated = events.flatMap(({ id, body }) => {
    const event = eventInput.safeParse(body).data;
    if (event === undefined) return [];
    const { name, start, end = start } = event;
    return [{ id, name, start, end, cars: event.cars }];
  });
  return { of: { garage: garageId, cars, events: dated, member: { cars: 'all' } }, name: row.name };
}

/** No book is opened, so there is nothing that could not be read. */
const NO_COMPLAINT = () => {};
