import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { PageAnswer } from '../../../../../components/index.ts';
import { AddEventForm } from '../../../../../event/AddEventForm.tsx';
import { Page } from '../../../../../frame/Page.tsx';
import { overviewPages } from '../../../../../garage/overview-pages.ts';
import { answers, ask, orNotFound, pageCache } from '../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Add an event' };

type AddEventProps = {
  params: Promise<{ garageId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export default async function AddEvent({ params, searchParams }: AddEventProps) {
  const { garageId } = await params;
  await Promise.all([
    orNotFound(
      pageCache().fetchInfiniteQuery(
        ask().garage.overview.infiniteQueryOptions({ garageId }, overviewPages),
      ),
    ),
    orNotFound(pageCache().fetchQuery(ask().event.list.queryOptions({ garageId }))),
    // with the page, so that nothing moves
    pageCache().prefetchQuery(ask().event.former.queryOptions({ garageId })),
    pageCache().prefetchQuery(ask().requirements.list.queryOptions({ garageId })),
  ]);
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer about="Events">Where to, and when?</PageAnswer>
        <AddEventForm garageId={garageId} address={await searchParams} />
      </Page>
    </HydrationBoundary>
  );
}
