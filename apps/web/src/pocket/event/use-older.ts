'use client';

import type { EventPage } from '@quartermark/api/client';
import { useEffect, useState } from 'react';
import { isTick } from '../queue/command.ts';
import { pocketDb } from '../queue/store.ts';
import { useLine } from '../queue/use-line.ts';
import { lastRecorded } from '../sheet/last-recorded.ts';
import { isOlder } from './day-of.ts';

/** Whether something was recorded on this phone for the garage since the page was worked out. */
export function useOlder(page: EventPage, aheadMs: number): boolean {
  const { commands } = useLine();
  const garageId = page.garage.id;
  const [lastMs, setLastMs] = useState<number | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was recorded last changes with the line
  useEffect(() => {
    let gone = false;
    void readLast(garageId).then((ms) => {
      if (!gone) setLastMs(ms);
    });
    return () => {
      gone = true;
    };
  }, [garageId, commands]);
  const waiting = commands.filter((one) => !isTick(one) && one.garageId === garageId).length;
  return isOlder(page, { aheadMs, lastMs, waiting });
}

async function readLast(garageId: string): Promise<number | null> {
  try {
    return await lastRecorded(await pocketDb(), garageId);
  } catch {
    // a browser that keeps nothing has recorded nothing that the page does not know
    return null;
  }
}
