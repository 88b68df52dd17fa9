'use client';

import type { Written } from '@quartermark/api/client';
import { useQueryClient } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useCallback } from 'react';
import { useAfterSave } from '../client/AfterSave.tsx';
import { useTRPC } from '../client/trpc.ts';

type Done = { carId: string; undo: () => Promise<unknown>; words?: string };

/**
 * What follows once a planned lay-up was written: it is said with the way back, and the page it was
 * asked for from opens.
 *
 * @param href of that page
 */
export function usePlanSaved(garageId: string, href: string) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const router = useRouter();
  const afterSave = useAfterSave();
  const refresh = useCallback(
    async (carId: string) => {
      void client.invalidateQueries({ queryKey: trpc.event.pathKey() });
      await client.invalidateQueries({ queryKey: trpc.car.view.queryKey({ garageId, carId }) });
    },
    [client, trpc, garageId],
  );
  const leave = useCallback(() => router.push(href as Route), [router, href]);
  const saved = useCallback(
    async ({ id, revision, version }: Written, { carId, undo, words }: Done) => {
      afterSave({
        carId,
        entryId: id,
        revision,
        version,
        undo: async () => {
          await undo();
          await refresh(carId);
        },
        ...(words === undefined ? {} : { words }),
      });
      await refresh(carId);
      leave();
    },
    [afterSave, refresh, leave],
  );
  return { saved, leave };
}
