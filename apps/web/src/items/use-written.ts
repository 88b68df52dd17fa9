'use client';

import type { Written } from '@quartermark/api/client';
import { useQueryClient } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useCallback } from 'react';
import { useAfterSave } from '../client/AfterSave.tsx';
import { useTRPC } from '../client/trpc.ts';

/**
 * What follows once an item or the car itself is saved: it is said, with the way back, the car is asked
 * anew, and its page opens.
 *
 * @returns written: takes the server's answer and the way back; `refresh` asks the car anew
 */
export function useWritten(garageId: string, carId: string) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const router = useRouter();
  const afterSave = useAfterSave();

  const refresh = useCallback(async () => {
    await client.invalidateQueries({ queryKey: trpc.car.view.queryKey({ garageId, carId }) });
    void client.invalidateQueries({ queryKey: trpc.garage.overview.pathKey() });
  }, [client, trpc, garageId, carId]);

  const toCar = useCallback(
    () => router.push(`/g/${garageId}/car/${carId}` as Route),
    [router, garageId, carId],
  );

  const written = useCallback(
    async ({ id, revision, version }: Written, undo: () => Promise<unknown>) => {
      afterSave({
        carId,
        entryId: id,
        revision,
        version,
        undo: async () => {
          await undo();
          await refresh();
        },
      });
      await refresh();
      toCar();
    },
    [afterSave, refresh, toCar, carId],
  );

  return { written, refresh, toCar };
}
