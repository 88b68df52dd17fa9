'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import { refusalWords } from '../../client/refusal-words.ts';
import { useTRPCClient } from '../../client/trpc.ts';
import { pocketDb } from '../queue/store.ts';
import { useLine } from '../queue/use-line.ts';
import { rememberedCar } from './chosen-car.ts';
import { fetchSheet, type KeptSheet, keepSheet, readSheet } from './pocket-sheet.ts';

export type SheetState = {
  /** false until this browser's own copy was looked for */
  looked: boolean;
  kept: KeptSheet | null;
  /** how the last question to the server ended; null while none has */
  line: 'answered' | 'noAnswer' | 'signedOut' | null;
};

/**
 * What this browser knows of cars: its own copy at once, then the server's, and again whenever there may
 * be signal and something was sent.
 */
export function useSheet(): SheetState & { refresh: () => Promise<void> } {
  const client = useTRPCClient();
  const [state, setState] = useState<SheetState>({ looked: false, kept: null, line: null });
  const asking = useRef(false);

  const refresh = useCallback(async () => {
    if (asking.current) return;
    asking.current = true;
    try {
      const kept = await fetchSheet(client, rememberedCar());
      setState({ looked: true, kept, line: 'answered' });
      // a browser that keeps nothing still shows it
      await pocketDb()
        .then((db) => keepSheet(db, kept))
        .catch(() => {});
    } catch (error) {
      const signedOut = refusalWords(error).refusal?.code === 'signedOut';
      // a session that ran out in the paddock takes nobody's own copy away; signing out does
      setState(({ kept }) => ({ looked: true, kept, line: signedOut ? 'signedOut' : 'noAnswer' }));
    } finally {
      asking.current = false;
    }
  }, [client]);

  useEffect(() => {
    void ownCopy().then((kept) => {
      setState((now) => (now.kept ? now : { ...now, looked: kept !== null || now.looked, kept }));
      return refresh();
    });
    const seen = () => {
      if (document.visibilityState === 'visible') void refresh();
    };
    const online = () => void refresh();
    window.addEventListener('online', online);
    document.addEventListener('visibilitychange', seen);
    return () => {
      window.removeEventListener('online', online);
      document.removeEventListener('visibilitychange', seen);
    };
  }, [refresh]);

  const { commands, end } = useLine();
  const left = commands.length;
  const before = useRef(left);
  useEffect(() => {
    // what was sent is counted from now on
    if (end !== null && left < before.current) void refresh();
    before.current = left;
  }, [left, end, refresh]);

  return { ...state, refresh };
}

async function ownCopy(): Promise<KeptSheet | null> {
  try {
    return await readSheet(await pocketDb());
  } catch {
    // a private window, or a copy that cannot be read: the server's is all there is
    return null;
  }
}
