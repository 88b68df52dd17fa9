'use client';

import { useQueries, useQuery } from '@tanstack/react-query';
import { useTRPC } from '../../client/trpc.ts';
import { carsOfFacts, type FactNames } from './fact-words.ts';

/** What the things are called that facts are about; null while it is being fetched. */
export function useFactNames(garageId: string, facts: readonly string[]): FactNames | null {
  const trpc = useTRPC();
  const calendar = useQuery(trpc.event.list.queryOptions({ garageId }));
  const cars = useQueries({
    queries: carsOfFacts(facts).map((carId) => ({
      ...trpc.car.view.queryOptions({ garageId, carId }),
      retry: false,
    })),
  });
  if (calendar.isPending || cars.some(({ isPending }) => isPending)) return null;
  const views = cars.flatMap(({ data }) => data ?? []);
  return {
    cars: Object.fromEntries(views.map(({ carId, car }) => [carId, car.name])),
    items: Object.fromEntries(
      views.flatMap(({ items }) => items.map(({ id, item }) => [id, item.name])),
    ),
    events: Object.fromEntries(
      (calendar.data?.events ?? []).map(({ eventId, event }) => [eventId, event.name]),
    ),
  };
}
