import { refusalOf } from '@quartermark/api/server';
import { dehydrate, type QueryClient } from '@tanstack/react-query';
import { createTRPCOptionsProxy } from '@trpc/tanstack-react-query';
import { headers } from 'next/headers';
import { notFound } from 'next/navigation';
import { cache } from 'react';
import { makeQueryClient } from '../client/query-client.ts';
import { env } from '../env.ts';
import { api } from './api.ts';

const context = cache(async () =>
  api().createContext(new Request(env().origin, { headers: await headers() })),
);

/** The cache of one page's answers; one per request. */
export const pageCache: () => QueryClient = cache(makeQueryClient);

/**
 * The api as a page asks it on the server: the same queries, without a round trip.
 *
 * @example
 * await pageCache().fetchQuery(ask().car.view.queryOptions({ garageId, carId }));
 */
export const ask = cache(() =>
  createTRPCOptionsProxy({
    ctx: context,
    router: api().appRouter,
    queryClient: pageCache,
  }),
);

/** What the page has asked so far, for `<HydrationBoundary state={answers()}>`. */
export function answers() {
  return dehydrate(pageCache());
}

/** Lets "no such thing, or not yours" become the page that says so; any other error goes on. */
export async function orNotFound<T>(asking: Promise<T>): Promise<T> {
  try {
    return await asking;
  } catch (error) {
    if (isNotFound(error)) notFound();
    throw error;
  }
}

function isNotFound(error: unknown): boolean {
  const refusal = refusalOf(error);
  // an id in the address that is none at all is as good as one that leads nowhere
  const noId =
    refusal?.code === 'badInput' &&
    /^(garage|car|gear|entry|item|event)Id$/.test(refusal.field ?? '');
  return refusal?.code === 'notFound' || noId;
}
