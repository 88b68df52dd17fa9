'use client';

import { useSuspenseQuery } from '@tanstack/react-query';
import { useTRPC } from '../client/trpc.ts';
import { EventSheet } from './EventSheet.tsx';

type EventSheetScreenProps = { garageId: string; eventId: string };

/** The sheet as a page of the garage, as of the moment it was asked for. */
export function EventSheetScreen({ garageId, eventId }: EventSheetScreenProps) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.event.view.queryOptions({ garageId, eventId }));
  const ticks = new Map(data.ticks.map((tick) => [tick.line, tick]));
  return <EventSheet page={data} today={data.garage.today} ticks={ticks} />;
}
