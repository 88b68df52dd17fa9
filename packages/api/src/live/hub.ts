import { listen, SNAPSHOT_CHANNEL } from '@quartermark/db';
import { z } from 'zod';
import type { LiveEvent } from '../views.ts';
import type { Log } from '../world.ts';

/** One line to the database for the whole process, fanned out to everyone who looks on. */
export type LiveHub = {
  /**
   * Events of one garage from this very call on, so that whoever subscribes and then fetches misses
   * nothing. They end when the signal does, with `HubClosed` when the process stops; `leave` in any case.
   */
  subscribe(garageId: string, signal: AbortSignal): Subscription;
  /** ends every subscription, then the line */
  close(): Promise<void>;
};

export type Subscription = { events: AsyncIterable<LiveEvent>; leave: () => void };

/** The process stops; whoever looks on should come back and will find the next one. */
export class HubClosed extends Error {
  override readonly name = 'HubClosed';
  constructor() {
    super('the live line was closed: the server is stopping');
  }
}

const notice = z.union([
  z.object({ g: z.string(), c: z.string(), v: z.number() }),
  // strict, so that half a car's notice is not taken for a garage's
  z.strictObject({ g: z.string() }),
]);

type Queue = { garageId: string; events: LiveEvent[]; wake: () => void };

/** Beyond this many unread events one resync says it all. */
const UNREAD_MAX = 200;

/**
 * @param url direct address of the database, as role `app`
 * @param stopping fires when the process is told to stop
 */
export function liveHub(url: string, stopping: AbortSignal, log: Log): LiveHub {
  const queues = new Set<Queue>();
  const closed = new AbortController();
  const ended = AbortSignal.any([stopping, closed.signal]);
  const push = (queue: Queue, event: LiveEvent) => {
    if (queue.events.length >= UNREAD_MAX) queue.events = [{ kind: 'resync' }];
    else queue.events.push(event);
    queue.wake();
  };
  const onMessage = (payload: string) => {
    const read = notice.safeParse(parsed(payload));
    if (!read.success) {
      log.warn({ payload }, 'a live notice could not be read');
      return;
    }
    const told = read.data;
    const event: LiveEvent =
      'c' in told ? { kind: 'car', carId: told.c, version: told.v } : { kind: 'garage' };
    for (const queue of queues) if (queue.garageId === told.g) push(queue, event);
  };
  const onResync = () => {
    for (const queue of queues) push(queue, { kind: 'resync' });
  };
  // opened by the first who looks on, not by a build that only imports this
  let line: ReturnType<typeof listen> | undefined;

  return {
    subscribe(garageId, signal) {
      line ??= listen(url, SNAPSHOT_CHANNEL, onMessage, onResync);
      const queue: Queue = { garageId, events: [], wake: () => {} };
      queues.add(queue);
      return {
        events: drain(queue, AbortSignal.any([signal, ended]), ended),
        leave: () => {
          queues.delete(queue);
        },
      };
    },
    async close() {
      closed.abort();
      await line?.close();
    },
  };
}

async function* drain(
  queue: Queue,
  over: AbortSignal,
  ended: AbortSignal,
): AsyncGenerator<LiveEvent, void> {
  const stop = () => queue.wake();
  over.addEventListener('abort', stop);
  try {
    while (!over.aborted) {
      const event = queue.events.shift();
      if (event) yield event;
      else
        await new Promise<void>((resolve) => {
          queue.wake = resolve;
          if (over.aborted || queue.events.length > 0) resolve();
        });
    }
    if (ended.aborted) throw new HubClosed();
  } finally {
    over.removeEventListener('abort', stop);
  }
}

function parsed(payload: string): unknown {
  try {
    return JSON.parse(payload);
  } catch {
    return null;
  }
}
