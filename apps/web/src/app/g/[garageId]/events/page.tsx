import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { EventsScreen } from '../../../../event/EventsScreen.tsx';
import { Page } from '../../../../frame/Page.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Events' };

type EventsProps = { params: Promise<{ garageId: string }> };

export default async function Events({ params }: EventsProps) {
  const { garageId } = await params;
  await orNotFound(pageCache().fetchQuery(ask().event.list.queryOptions({ garageId })));
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <EventsScreen garageId={garageId} />
      </Page>
    </HydrationBoundary>
  );
}
