import { defaultShouldDehydrateQuery, isServer, QueryClient } from '@tanstack/react-query';
import superjson from 'superjson';

const FRESH_MS = 30_000;

/** The cache of answers; the live line tells when one is old, so time hardly matters. */
export function makeQueryClient(): QueryClient {
  return new QueryClient({
    defaultOptions: {
      queries: { staleTime: FRESH_MS, retry: shouldRetry },
      // without signal a write says so at once, and the line takes it, instead of hanging until there is some
      mutations: { networkMode: 'always' },
      dehydrate: {
        serializeData: superjson.serialize,
        shouldDehydrateQuery: (query) =>
          defaultShouldDehydrateQuery(query) || query.state.status === 'pending',
      },
      hydrate: { deserializeData: superjson.deserialize },
    },
  });
}

/**
 * A refusal stays one however often it is asked; a server that did not answer may come back. A page that
 * is being rendered asks its own process, and nobody should wait for that to be tried again.
 */
function shouldRetry(failures: number, error: unknown): boolean {
  if (isServer) return false;
  const refused =
    typeof error === 'object' && error !== null && 'data' in error && Boolean(error.data);
  return !refused && failures < 3;
}
