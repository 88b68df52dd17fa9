'use client';

import type { Written } from '@quartermark/api/client';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useMemo } from 'react';
import { useAfterSave } from '../client/AfterSave.tsx';
import { useTRPC } from '../client/trpc.ts';
import type { EntryDoor, Sent } from './entry-door.ts';

const held = (written: Written): Sent => ({ at: 'server', written });

/** The door straight to the server. It stands inside `AfterSaveProvider`; other doors rest on it. */
export function useServerDoor(garageId: string): EntryDoor {
  const trpc = useTRPC();
  const client = useQueryClient();
  const afterSave = useAfterSave();
  const { mutateAsync: record } = useMutation(trpc.entry.record.mutationOptions());
  const { mutateAsync: amend } = useMutation(trpc.entry.amend.mutationOptions());
  const { mutateAsync: remove } = useMutation(trpc.entry.remove.mutationOptions());

  return useMemo(() => {
    const refresh = async (carId: string | null) => {
      if (carId !== null)
        await client.invalidateQueries({ queryKey: trpc.car.view.queryKey({ garageId, carId }) });
      void client.invalidateQueries({ queryKey: trpc.garage.overview.pathKey() });
      void client.invalidateQueries({ queryKey: trpc.gear.pathKey() });
    };
    return {
      record: async (input) => held(await record(input)),
      amend: async (input) => held(await amend(input)),
      remove: async (input) => held(await remove(input)),
      standing: (garage, entryId) =>
        client
          .fetchQuery({
            ...trpc.entry.one.queryOptions({ garageId: garage, entryId }),
            staleTime: 0,
          })
          // unreachable again: what was said stands, and the next press asks once more
          .catch(() => null),
      away({ carId, entryId, sent, undo, words }) {
        const back = async () => {
          await (sent.at === 'server' ? undo() : sent.undo());
          await refresh(carId);
        };
        if (sent.at === 'server') {
          const { revision, version } = sent.written;
          afterSave({
            carId,
            entryId,
            revision,
            version,
            undo: back,
            ...(words === undefined ? {} : { words }),
          });
        }
        void refresh(carId);
      },
    };
  }, [client, trpc, garageId, afterSave, record, amend, remove]);
}
