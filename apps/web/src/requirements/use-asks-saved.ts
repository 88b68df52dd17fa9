'use client';

import type { Written } from '@quartermark/api/client';
import { useQueryClient } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useAfterSave } from '../client/AfterSave.tsx';
import { useTRPC } from '../client/trpc.ts';

/** What follows once it is saved: it is said with the way back, and the settings open. */
export function useAsksSaved(garageId: string) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const router = useRouter();
  const afterSave = useAfterSave();
  const refresh = async () => {
    void client.invalidateQueries({ queryKey: trpc.event.pathKey() });
    await client.invalidateQueries({ queryKey: trpc.requirements.pathKey() });
  };
  const toSettings = () => router.push(`/g/${garageId}/settings` as Route);
  const saved = async ({ id, revision, version }: Written, undo: () => Promise<unknown>) => {
    const back = async () => {
      await undo();
      await refresh();
    };
    afterSave({ carId: null, entryId: id, revision, version, undo: back });
    await refresh();
    toSettings();
  };
  return { saved, toSettings };
}
