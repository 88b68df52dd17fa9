'use client';

import { type QueryKey, useQueryClient } from '@tanstack/react-query';
import { useSubscription } from '@trpc/tanstack-react-query';
import { useEffect, useRef } from 'react';
import { useTRPC } from './trpc.ts';
import { useVisible } from './use-visible.ts';

/**
 * Keeps what is on screen true: one line to the server per tab in sight. A tab out of sight hangs up,
 * since a browser allows only six lines to a server, and fetches anew when it comes back.
 */
export function LiveLine({ garageId }: { garageId: string }) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const visible = useVisible();
  const hidden = useRef(false);

  const anew = (queryKey: QueryKey) => void client.invalidateQueries({ queryKey });
  const everything = () => {
    anew(trpc.garage.pathKey());
    anew(trpc.car.pathKey());
    anew(trpc.entry.pathKey());
  };

  useSubscription(
    trpc.live.changes.subscriptionOptions(
      { garageId },
      {
        enabled: visible,
        onData(event) {
          if (event.kind === 'resync') return everything();
          const { carId } = event;
          anew(trpc.garage.overview.pathKey());
          anew(trpc.car.view.queryKey({ garageId, carId }));
          anew(trpc.car.lastValues.queryKey({ garageId, carId }));
          anew(trpc.entry.pathKey());
        },
      },
    ),
  );

  // biome-ignore lint/correctness/useExhaustiveDependencies: only coming back into sight counts
  useEffect(() => {
    if (visible && hidden.current) everything();
    hidden.current = !visible;
  }, [visible]);

  return null;
}
