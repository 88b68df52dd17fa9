'use client';

import type { EntryInput } from '@quartermark/engine/log';
import { useQueryClient } from '@tanstack/react-query';
import { type ReactNode, useMemo } from 'react';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useToast } from '../components/index.ts';
import { type EntryDoor, EntryDoorContext, type Sent } from '../record/entry-door.ts';
import { useServerDoor } from '../record/use-server-door.ts';
import type { EntryAsk } from './queue/command.ts';
import { keeper } from './queue/keeper.ts';
import { takeOut, undoRecord } from './queue/line.ts';
import { noteRecorded } from './sheet/last-recorded.ts';

type LineEntryDoorProps = { garageId: string; children: ReactNode };

/** The door of a garage's pages: to the server, and where no answer comes, into the line on this phone. */
export function LineEntryDoor({ garageId, children }: LineEntryDoorProps) {
  const server = useServerDoor(garageId);
  const trpc = useTRPC();
  const cache = useQueryClient();
  const toast = useToast();
  const door = useMemo((): EntryDoor => {
    const noted = (sent: Sent) => noteRecorded(garageId).then(() => sent);
    const known = (entryId: string) =>
      cache.getQueryData(trpc.entry.one.queryKey({ garageId, entryId }))?.entry ?? null;
    return {
      ...server,
      record: (input) =>
        server.record(input).then(noted, (error: unknown) => {
          // the form's own schema has read it
          const entry = input.entry as EntryInput;
          return later(error, input, {
            verb: 'entry.record',
            input: { entry, confirmed: input.confirmed ?? [] },
          });
        }),
      amend: (input) =>
        server.amend(input).then(noted, (error: unknown) => {
          const { baseRevision, confirmed } = input;
          const entry = input.entry as EntryInput;
          return later(error, input, {
            verb: 'entry.amend',
            input: { entry, baseRevision, confirmed: confirmed ?? [] },
          });
        }),
      remove: (input) =>
        server.remove(input).then(noted, (error: unknown) => {
          const { baseRevision } = input;
          const entry = known(input.entryId);
          if (entry === null) throw error;
          return later(error, input, { verb: 'entry.remove', input: { entry, baseRevision } });
        }),
      away(gone) {
        server.away(gone);
        const { sent, entryId, words } = gone;
        if (sent.at === 'server') return;
        const id = `saved:${entryId}`;
        toast({
          id,
          words: 'Saved on this phone, waits for signal.',
          detail: words ?? 'It is sent once there is signal.',
          undo: {
            run: () =>
              void sent.undo().then(
                () => toast({ id, words: 'Undone.' }),
                () => toast({ id, words: 'Not undone.', tone: 'alarm' }),
              ),
          },
        });
      },
    };
  }, [server, trpc, cache, toast, garageId]);
  return <EntryDoorContext value={door}>{children}</EntryDoorContext>;
}

/**
 * Puts into the line what got no answer, under the same id, since it may be done. A refusal, and a server
 * that answered that it failed, are the person's to see.
 *
 * @throws the error itself where it is none of that, or where this browser keeps nothing
 */
async function later(
  error: unknown,
  { garageId, commandId }: { garageId: string; commandId: string },
  ask: EntryAsk,
): Promise<Sent> {
  const answered = typeof error === 'object' && error !== null && 'data' in error && error.data;
  const meta = (error as { meta?: { responseJSON?: unknown } } | null)?.meta;
  if (answered || meta?.responseJSON) throw error;
  const madeAt = new Date().toISOString();
  const { order } = await keeper
    .put({ ...ask, garageId, commandId, madeAt, mayBeDone: true })
    .catch(() => {
      throw error;
    });
  const { entry } = ask.input;
  const undoing = () => ({ commandId: newId(), garageId, madeAt: new Date().toISOString(), entry });
  const undo = () =>
    keeper.act(async (db) => {
      if (ask.verb === 'entry.record') await undoRecord(db, order, undoing());
      else await takeOut(db, order);
    });
  // where nothing answers for pages, going on would lose even this one
  const stay = !navigator.serviceWorker?.controller;
  return { at: 'device', undo, stay };
}
