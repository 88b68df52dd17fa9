'use client';

import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef } from 'react';
import { useTRPC } from '../client/trpc.ts';
import { keeper } from './queue/keeper.ts';
import { useDoors } from './queue/use-doors.ts';
import { useLine } from './queue/use-line.ts';

/** Sends what waits in this browser, on whichever page there is signal; shows nothing. */
export function PocketLine() {
  const doors = useDoors();
  useEffect(() => keeper.start(doors), [doors]);

  const trpc = useTRPC();
  const cache = useQueryClient();
  const { commands } = useLine();
  const before = useRef(0);
  useEffect(() => {
    if (commands.length < before.current)
      for (const { pathKey } of [trpc.car, trpc.entry, trpc.event, trpc.garage])
        void cache.invalidateQueries({ queryKey: pathKey() });
    before.current = commands.length;
  }, [commands.length, cache, trpc]);
  return null;
}
