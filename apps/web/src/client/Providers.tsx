'use client';

import type { AppRouter } from '@quartermark/api/client';
import { isServer, type QueryClient, QueryClientProvider } from '@tanstack/react-query';
import {
  createTRPCClient,
  httpBatchLink,
  httpSubscriptionLink,
  splitLink,
  type TRPCClient,
} from '@trpc/client';
import { type ReactNode, useEffect, useState } from 'react';
import superjson from 'superjson';
import { ToastProvider } from '../components/index.ts';
import { makeQueryClient } from './query-client.ts';
import { TRPCProvider } from './trpc.ts';

const URL_MAX = 2000;

let inBrowser: QueryClient | undefined;

/** One cache per browser; on the server one per request. */
function queryClient(): QueryClient {
  if (isServer) return makeQueryClient();
  inBrowser ??= makeQueryClient();
  return inBrowser;
}

function makeClient(): TRPCClient<AppRouter> {
  const url = '/api/trpc';
  return createTRPCClient<AppRouter>({
    links: [
      splitLink({
        condition: (op) => op.type === 'subscription',
        true: httpSubscriptionLink({ url, transformer: superjson }),
        false: httpBatchLink({ url, transformer: superjson, maxURLLength: URL_MAX }),
      }),
    ],
  });
}

export function Providers({ children }: { children: ReactNode }) {
  const client = queryClient();
  const [trpcClient] = useState(makeClient);
  // the outermost effect runs last: from here on presses are heard
  useEffect(() => {
    document.documentElement.dataset.alive = '';
  }, []);
  return (
    <QueryClientProvider client={client}>
      <TRPCProvider trpcClient={trpcClient} queryClient={client}>
        <ToastProvider>{children}</ToastProvider>
      </TRPCProvider>
    </QueryClientProvider>
  );
}
