'use client';

import { useInfiniteQuery } from '@tanstack/react-query';
import { useTRPC } from '../client/trpc.ts';
import { overviewPages } from '../garage/overview-pages.ts';

/**
 * The garage's cars as far as their pages have come, by their id.
 *
 * @returns the pages' query, to have more of them, and the cars: `sold` as far as it is worked out
 */
export function useListedCars(garageId: string) {
  const trpc = useTRPC();
  const overview = useInfiniteQuery(
    trpc.garage.overview.infiniteQueryOptions({ garageId }, overviewPages),
  );
  const rows = overview.data?.pages.flatMap((page) => page.rows) ?? [];
  const cars = new Map(
    rows.map(({ carId, name, lane }) => [carId, { name, sold: lane?.status === 'sold' }] as const),
  );
  return { overview, cars };
}
