'use client';

import { type QueryKey, useQueryClient } from '@tanstack/react-query';
import { useSubscription } from '@trpc/tanstack-react-query';
import { usePathname } from 'next/navigation';
import { useEffect, useRef } from 'react';
import { useToast } from '../components/index.ts';
import { refusalWords } from './refusal-words.ts';
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
  const toast = useToast();
  const here = usePathname();

  const anew = (queryKey: QueryKey) => void client.invalidateQueries({ queryKey });
  // a component's use is its car's, so news of a car may be news of it
  const besideTheCars = () => {
    anew(trpc.gear.pathKey());
    anew(trpc.event.pathKey());
    anew(trpc.spec.pathKey());
    anew(trpc.finding.pathKey());
    anew(trpc.due.pathKey());
    anew(trpc.forecast.pathKey());
    anew(trpc.oil.pathKey());
    anew(trpc.people.pathKey());
    anew(trpc.letter.pathKey());
  };
  const everything = () => {
    besideTheCars();
    anew(trpc.garage.pathKey());
    anew(trpc.car.pathKey());
    anew(trpc.entry.pathKey());
  };

  const { status } = useSubscription(
    trpc.live.changes.subscriptionOptions(
      { garageId },
      {
        enabled: visible,
        onData(event) {
          if (event.kind === 'resync') return everything();
          besideTheCars();
          anew(trpc.entry.pathKey());
          // a car's page shows the parts that are on it
          if (event.kind === 'garage') return anew(trpc.car.pathKey());
          const { carId } = event;
          anew(trpc.garage.overview.pathKey());
          anew(trpc.garage.urgent.pathKey());
          anew(trpc.car.view.queryKey({ garageId, carId }));
          anew(trpc.car.lastValues.queryKey({ garageId, carId }));
        },
        onError(error) {
          const { message, refusal } = refusalWords(error);
          const signIn = () => window.location.assign(`/sign-in?to=${encodeURIComponent(here)}`);
          toast({
            id: 'live-line',
            tone: 'alarm',
            words: 'This page no longer keeps up.',
            detail: message,
            ...(refusal?.code === 'signedOut' ? { undo: { words: 'Sign in', run: signIn } } : {}),
          });
        },
      },
    ),
  );

  useEffect(() => {
    if (visible && hidden.current) everything();
    hidden.current = !visible;
  });

  useLineWords(visible && status === 'connecting');
  return null;
}

const SILENCE_MS = 5000;

/** Says that the line is down once that has lasted, and that it is back. */
function useLineWords(down: boolean): void {
  const toast = useToast();
  const said = useRef(false);
  useEffect(() => {
    if (!down && said.current) {
      said.current = false;
      toast({ id: 'live-line', words: 'The line to the server is back.' });
    }
    if (!down) return;
    const timer = setTimeout(() => {
      said.current = true;
      toast({
        id: 'live-line',
        tone: 'alarm',
        words: 'No line to the server.',
        detail: 'What you see may be out of date. It is dialled again by itself.',
      });
    }, SILENCE_MS);
    return () => clearTimeout(timer);
  }, [down, toast]);
}
