'use client';

import type { EventPage } from '@quartermark/api/client';
import { daysBetween } from '@quartermark/engine/calendar';
import { useQuery } from '@tanstack/react-query';
import { useTRPC } from '../client/trpc.ts';

/** For so many days after it ended an event is asked about. */
const ASKED_DAYS = 60;

/** Cars of which nothing is on record and of which somebody said, on this page or before, that they did not go. */
export function useStayed({ garage, event: { eventId, event }, cars }: EventPage): string[] {
  const trpc = useTRPC();
  const { data } = useQuery(trpc.event.unrecorded.queryOptions({ garageId: garage.id }));
  const { end = event.start } = event;
  // of events that are on, or were too long ago, the list says nothing
  if (!data || end >= garage.today || daysBetween(end, garage.today) > ASKED_DAYS) return [];
  const open = data.events.find((one) => one.eventId === eventId)?.cars ?? [];
  return cars
    .filter(
      ({ carId, recorded }) => recorded.length === 0 && !open.some((one) => one.carId === carId),
    )
    .map(({ carId }) => carId);
}
