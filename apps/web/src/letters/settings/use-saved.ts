'use client';

import { useCallback } from 'react';
import { refusalWords } from '../../client/refusal-words.ts';
import { useToast } from '../../components/index.ts';

/**
 * What follows once something of the letters is saved: it is said, with the way back where there is one, and what
 * is shown of it is asked anew.
 */
export function useSaved() {
  const toast = useToast();
  return useCallback(
    async (
      id: string,
      undo: (() => Promise<unknown>) | null,
      refresh: () => Promise<unknown>,
      words = 'Saved.',
    ) => {
      const run = async () => {
        try {
          await undo?.();
          toast({ id: `${id}:undone`, words: 'Undone.' });
        } catch (error) {
          const detail = refusalWords(error).message;
          toast({ id: `${id}:undone`, tone: 'alarm', words: 'Not undone.', detail });
        }
        await refresh();
      };
      toast({ id, words, ...(undo === null ? {} : { undo: { run: () => void run() } }) });
      await refresh();
    },
    [toast],
  );
}
