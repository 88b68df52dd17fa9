import type { AppRouter, Refusal, RefusalCode } from '@quartermark/api/client';
import type { TRPCClient } from '@trpc/client';
import type { Command, WaitingPhoto } from './command.ts';
import type { Doors } from './send.ts';

/** At the edge of a signal a request can hang for minutes; this is how long it may take. */
const COMMAND_LIMIT_MS = 20_000;
const KNOCK_LIMIT_MS = 10_000;
const PHOTO_LIMIT_MS = 120_000;

type Client = TRPCClient<AppRouter>;

/** The server's doors, as a page reaches them. */
export function doorsOf(client: Client): Doors {
  return {
    knock,
    command: (command, queued) => ask(client, command, queued),
    entry: (where) => client.entry.one.query(where, limit(COMMAND_LIMIT_MS)),
    photo: sendPhoto,
  };
}

/** A page that a network shows to whoever is not signed in to it is no answer of ours. */
async function knock(): Promise<void> {
  const response = await fetch('/health', { cache: 'no-store', ...limit(KNOCK_LIMIT_MS) });
  await response.json();
}

const limit = (ms: number) => ({ signal: AbortSignal.timeout(ms) });

function ask(client: Client, command: Command, queued: boolean) {
  const options = limit(COMMAND_LIMIT_MS);
  const { garageId, commandId } = command;
  if (command.verb === 'event.tick') {
    const input = { garageId, commandId, ...command.input.tick };
    return client.event.tick.mutate(input, options);
  }
  const { entryId } = command;
  switch (command.verb) {
    case 'entry.record': {
      const { entry, confirmed } = command.input;
      const input = { garageId, commandId, entry, confirmed: answers(confirmed), queued };
      return client.entry.record.mutate(input, options);
    }
    case 'entry.amend': {
      const { entry, confirmed, baseRevision } = command.input;
      const rest = { entryId, entry, confirmed: answers(confirmed), queued };
      const input = { garageId, commandId, baseRevision: baseRevision ?? 1, ...rest };
      return client.entry.amend.mutate(input, options);
    }
    case 'entry.remove': {
      const baseRevision = command.input.baseRevision ?? 1;
      return client.entry.remove.mutate({ garageId, commandId, entryId, baseRevision }, options);
    }
  }
}

type Answer = NonNullable<Parameters<Client['entry']['record']['mutate']>[0]['confirmed']>[number];

/** Only questions can be answered; the server's own list of them is its schema. */
const answers = (codes: readonly RefusalCode[]) => codes as readonly RefusalCode[] as Answer[];

/** @throws what `refusalWords` reads: a refusal, a server that failed, or no answer at all */
async function sendPhoto({ garageId, photoId, blob }: WaitingPhoto): Promise<void> {
  const response = await fetch(`/api/photo/${garageId}/${photoId}`, {
    method: 'POST',
    body: blob,
    headers: { 'content-type': blob.type || 'application/octet-stream' },
    ...limit(PHOTO_LIMIT_MS),
  });
  if (response.ok) return;
  const said: unknown = await response.json().catch(() => null);
  throw photoError(response.status, said);
}

function photoError(status: number, said: unknown): Error {
  const refusal = (said as { refusal?: Refusal } | null)?.refusal ?? null;
  if (refusal !== null) return failure(refusal.message, refusal);
  if (status >= 500) return failure('The server could not take the photo.', null);
  const message = `The photo was not taken by the server (status ${status}). Take it again, or leave it out.`;
  return failure(message, { code: 'badInput', field: 'entry.photos', message });
}

const failure = (message: string, refusal: Refusal | null) =>
  Object.assign(new Error(message), { data: { refusal } });
