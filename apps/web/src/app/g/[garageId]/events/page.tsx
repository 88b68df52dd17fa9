import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { EventsScreen } from '../../../../event/EventsScreen.tsx';
import { toldEvents } from '../../../../event/told-events.ts';
import { Page } from '../../../../frame/Page.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Events' };

type EventsProps = { params: Promise<{ garageId: string }> };

export default async function Events({ params }: EventsProps) {
  const { garageId } = await params;
  const list = await orNotFound(
    pageCache().fetchQuery(ask().event.list.queryOptions({ garageId })),
  );
  // with the page, so that nothing moves; one that fails is asked for again by the page itself
  await Promise.all([
    pageCache().prefetchQuery(ask().event.unrecorded.queryOptions({ garageId })),
    ...toldEvents(list).unasked.map((carId) =>
      pageCache().prefetchQuery(ask().forecast.atEvents.queryOptions({ garageId, carId })),
    ),
  ]);
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <EventsScreen garageId={garageId} />
      </Page>
    </HydrationBoundary>
  );
}
