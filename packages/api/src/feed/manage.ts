import { randomUUID } from 'node:crypto';
import {
  makeFeed as makeRow,
  makeSecret,
  revokeFeed as revokeRow,
  standingFeed,
} from '@quartermark/db';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { runCommand } from '../command/run-command.ts';
import type { FeedView, FeedWritten } from '../letter-views.ts';
import { mustNotBeDemo } from '../post/must-keep.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const feedViewInput = z.strictObject({ garageId: id });
export const feedCommandInput = z.strictObject(commandFields);

type FeedCommand = z.output<typeof feedCommandInput>;

/** Whether the asker has a private calendar address for this garage, and since when. */
export function feedView(
  world: World,
  asker: Asker,
  { garageId }: z.output<typeof feedViewInput>,
): Promise<FeedView> {
  return inGarage(world, asker, garageId, async (tx) => {
    const feed = await standingFeed(tx, garageId, asker.userId);
    return { made: feed?.madeAt.toISOString() ?? null };
  });
}

/**
 * Makes a private calendar address, in place of the one before. It is told this once: only its hash is stored, and
 * not even with the answer, so that whoever sends the same again is told none.
 */
export async function makeFeed(
  world: World,
  asker: Asker,
  input: FeedCommand,
): Promise<FeedWritten> {
  const { secret, hash } = makeSecret();
  let done = false;
  const written = await runCommand(world, asker, 'feed.make', input, async (writing) => {
    const { tx, garage, now, by } = writing;
    mustNotBeDemo(garage);
    const former = await standingFeed(tx, garage.id, by, { lock: true });
    if (former) await revokeRow(tx, former, now);
    const feedId = randomUUID();
    await makeRow(tx, { garageId: garage.id, id: feedId, userId: by, hash, at: now });
    done = true;
    return { id: feedId, revision: 1, version: 0 };
  });
  return { ...written, path: done ? `/api/feed/${secret}.ics` : null };
}

/** Takes the address back: it opens nothing from now on. */
export function revokeFeed(world: World, asker: Asker, input: FeedCommand): Promise<Written> {
  return runCommand(world, asker, 'feed.revoke', input, async ({ tx, garage, now, by }) => {
    const feed = await standingFeed(tx, garage.id, by, { lock: true });
    if (feed) await revokeRow(tx, feed, now);
    return { id: garage.id, revision: 0, version: 0 };
  });
}
