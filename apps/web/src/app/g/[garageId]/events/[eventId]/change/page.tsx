import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { PageAnswer } from '../../../../../../components/index.ts';
import { ChangeEventForm } from '../../../../../../event/ChangeEventForm.tsx';
import { spanWords, whenWords } from '../../../../../../event/event-words.ts';
import { Page } from '../../../../../../frame/Page.tsx';
import { overviewPages } from '../../../../../../garage/overview-pages.ts';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';

type EventProps = { params: Promise<{ garageId: string; eventId: string }> };

async function found({ params }: EventProps) {
  const { garageId, eventId } = await params;
  const { garage, events } = await orNotFound(
    pageCache().fetchQuery(ask().event.list.queryOptions({ garageId })),
  );
  const standing = events.find((one) => one.eventId === eventId);
  if (!standing) notFound();
  return { garage, eventId, event: standing.event };
}

export async function generateMetadata(props: EventProps): Promise<Metadata> {
  return { title: (await found(props)).event.name };
}

export default async function ChangeEvent(props: EventProps) {
  const { garage, eventId, event } = await found(props);
  const garageId = garage.id;
  await Promise.all([
    orNotFound(
      pageCache().fetchInfiniteQuery(
        ask().garage.overview.infiniteQueryOptions({ garageId }, overviewPages),
      ),
    ),
    // with the page, so that nothing moves
    pageCache().prefetchQuery(ask().requirements.list.queryOptions({ garageId })),
  ]);
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer about={event.name} beneath={spanWords(event)}>
          {event.name}: {whenWords(event, garage.today)}.
        </PageAnswer>
        <ChangeEventForm garageId={garageId} eventId={eventId} />
      </Page>
    </HydrationBoundary>
  );
}
