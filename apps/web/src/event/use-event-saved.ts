'use client';

import type { Written } from '@quartermark/api/client';
import { useQueryClient } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useCallback } from 'react';
import { useAfterSave } from '../client/AfterSave.tsx';
import { useTRPC } from '../client/trpc.ts';

type Done = { undo: () => Promise<unknown>; words?: string };

/** What follows once the calendar was written: it is said with the way back, and the list opens. */
export function useEventSaved(garageId: string) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const router = useRouter();
  const afterSave = useAfterSave();
  const refresh = useCallback(
    () => client.invalidateQueries({ queryKey: trpc.event.pathKey() }),
    [client, trpc],
  );
  const toList = useCallback(
    () => router.push(`/g/${garageId}/events` as Route),
    [router, garageId],
  );
  const saved = useCallback(
    async ({ id, revision, version }: Written, { undo, words }: Done) => {
      afterSave({
        carId: null,
        entryId: id,
        revision,
        version,
        undo: async () => {
          await undo();
          await refresh();
        },
        ...(words === undefined ? {} : { words }),
      });
      await refresh();
      toList();
    },
    [afterSave, refresh, toList],
  );
  return { saved, toList };
}
