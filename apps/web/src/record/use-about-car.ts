'use client';

import { useQuery, useSuspenseQuery } from '@tanstack/react-query';
import { useTRPC } from '../client/trpc.ts';
import { type About, aboutCar } from './about.ts';

/** A car as its forms need it. What there is to choose from comes when it comes; the form does not wait. */
export function useAboutCar(where: { garageId: string; carId: string }): About {
  const trpc = useTRPC();
  const { garageId } = where;
  const { data: view } = useSuspenseQuery(trpc.car.view.queryOptions(where));
  const { data: gear } = useQuery(trpc.gear.list.queryOptions({ garageId }));
  const { data: events } = useQuery(trpc.event.list.queryOptions({ garageId }));
  return aboutCar(view, { gear: gear?.rows, events: events?.events ?? [] });
}
