'use client';

import type { Written } from '@quartermark/api/client';
import { useQueryClient } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useCallback } from 'react';
import { useAfterSave } from '../client/AfterSave.tsx';
import { refusalWords } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { useToast } from '../components/index.ts';
import { type Owned, type Owner, ownerId } from './owned.ts';

/** Where to go, and whose answers are old, once something of it was saved. */
type Place = { garage: { id: string }; owner: Owner; href: string };

/**
 * What follows once an item, a car or a piece of gear is saved: it is said, with the way back, its
 * answers are asked anew, and its page opens.
 *
 * @returns written: takes the server's answer and the way back; `stay` does the same and opens nothing;
 *   `refresh` asks its page anew
 */
export function useWritten({ garage, owner, href }: Place | Owned) {
  const garageId = garage.id;
  const trpc = useTRPC();
  const client = useQueryClient();
  const router = useRouter();
  const say = useSaid();
  const id = ownerId(owner);
  const ofCar = 'carId' in owner;

  const refresh = useCallback(async () => {
    if (!ofCar) return client.invalidateQueries({ queryKey: trpc.gear.pathKey() });
    await client.invalidateQueries({ queryKey: trpc.car.view.queryKey({ garageId, carId: id }) });
    void client.invalidateQueries({ queryKey: trpc.garage.overview.pathKey() });
  }, [client, trpc, garageId, ofCar, id]);

  const toOwner = useCallback(() => router.push(href as Route), [router, href]);

  const stay = useCallback(
    async (answer: Written, undo: () => Promise<unknown>) => {
      say(answer, ofCar ? id : null, async () => {
        await undo();
        await refresh();
      });
      await refresh();
    },
    [say, refresh, ofCar, id],
  );

  const written = useCallback(
    async (answer: Written, undo: () => Promise<unknown>) => {
      await stay(answer, undo);
      toOwner();
    },
    [stay, toOwner],
  );

  return { written, stay, refresh, toOwner };
}

/** A car's figures follow and are told when they come; those of gear are worked out as they are asked. */
function useSaid() {
  const afterSave = useAfterSave();
  const toast = useToast();
  return useCallback(
    ({ id, revision, version }: Written, carId: string | null, undo: () => Promise<void>) => {
      if (carId !== null) return afterSave({ carId, entryId: id, revision, version, undo });
      const name = `saved:${id}`;
      const run = async () => {
        try {
          await undo();
          toast({ id: `${name}:undone`, words: 'Undone.' });
        } catch (error) {
          const detail = refusalWords(error).message;
          toast({ id: `${name}:undone`, tone: 'alarm', words: 'Not undone.', detail });
        }
      };
      toast({ id: name, words: 'Saved.', undo: { run: () => void run() } });
    },
    [afterSave, toast],
  );
}
